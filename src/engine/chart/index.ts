export type { Chart, ChartGear, GearName, Shift } from './answer.ts';
export { chart, MOST_DEVICES } from './chart.ts';
export { STATES, sweep, sweeper } from './sweep.ts';
