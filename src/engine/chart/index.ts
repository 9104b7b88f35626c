export type { Chart, ChartGear, Step } from './answer.ts';
export { chart, MOST_DEVICES } from './chart.ts';
export { STATES, type Sweep, sweeper } from './sweep.ts';
