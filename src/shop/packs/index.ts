export { clearanceBounds, type ClearanceWay, type Measured } from './clearance.ts';
export { gapByCount } from './counted.ts';
export type { Gauge } from './gauge.ts';
export { judgePack, type PackJudgement } from './judge.ts';
export type { PackReadings } from './readings.ts';
export { readReadings, type ReadingsReading } from './readingsfile.ts';
export type { PackRemark } from './remark.ts';
export type { Wear } from './wear.ts';
