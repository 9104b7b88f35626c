export type { Chart, ChartGear, Step } from './answer.ts';
export { chart, MOST_DEVICES } from './chart.ts';
export { STATES, type Sweep, sweep, sweeper } from './sweep.ts';
