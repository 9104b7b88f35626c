export { buildSheet } from './build.ts';
export { chartSheet } from './chart.ts';
export {
  type Block,
  type Paper,
  PAPERS,
  type Printing,
  type Sheet,
  type Stamp,
} from './document.ts';
export { typstOf } from './typst.ts';
export { drawingSheet } from './drawing.ts';
export { jobCard } from './job.ts';
export { diagnosisSheet } from './diagnosis.ts';
export { capacitySheet } from './capacity.ts';
export { measureSheet } from './measure.ts';
export { oneWayCard } from './oneway.ts';
export { stripSheet } from './strip.ts';
export type { Caution } from './document.ts';
export type { Cell } from './document.ts';
export type { Column } from './document.ts';
export type { Field } from './document.ts';
export type { Fields } from './document.ts';
export type { Figure } from './document.ts';
export type { Lines } from './document.ts';
export type { Look } from './document.ts';
export type { Table } from './document.ts';
export type { Ticks } from './document.ts';
export type { Together } from './document.ts';
export type { SheetWords } from './document.ts';
