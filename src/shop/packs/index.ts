export type { Again } from './again.ts';
export {
  type Bounds,
  boundsOf,
  type Limited,
  middleOf,
  readLength,
  thickening,
  type Verdict,
  verdictOf,
} from './bounds.ts';
export { type ClearanceWay, meanGap, type MeanGap, type Measured } from './clearance.ts';
export { limitRemarks, shelfRemarks, unitMeant, usableBounds } from './gap.ts';
export type { Gauge } from './gauge.ts';
export { judgePack, type PackJudgement } from './judge.ts';
export { readNamed } from './named.ts';
export type { PackReadings } from './readings.ts';
export { readReadings, type ReadingsReading } from './readingsfile.ts';
export type { Remark } from './remark.ts';
export { type Chosen, select, type Selection } from './selection.ts';
export type { Wear } from './wear.ts';
