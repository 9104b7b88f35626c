export { buildSheet } from './build.ts';
export { chartSheet } from './chart.ts';
export {
  type SheetBlock,
  type Paper,
  PAPERS,
  type Printing,
  type Sheet,
  type Stamp,
  type Caution,
  type SheetCell,
  type SheetColumn,
  type SheetField,
  type SheetFields,
  type SheetFigure,
  type SheetLines,
  type SheetLook,
  type SheetTable,
  type Ticks,
  type Together,
  type SheetWords,
} from './document.ts';
export { typstOf } from './typst.ts';
export { drawingSheet, pictureSheet } from './drawing.ts';
export { jobCard } from './job.ts';
export { diagnosedOf, type Diagnosed, diagnosisSheet } from './diagnosis.ts';
export { capacitySheet } from './capacity.ts';
export { measureSheet } from './measure.ts';
export { oneWayCard } from './oneway.ts';
export { stripSheet } from './strip.ts';
export { htmlOf, PAPER_MM } from './html.ts';
export { HTML_STYLE } from './htmlstyle.ts';
export { kindsInSet, printingOf, SHEET_KINDS, type SheetKind, sheetOf } from './made.ts';
