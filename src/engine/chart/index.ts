export type { Chart, ChartGear, Step } from './answer.ts';
