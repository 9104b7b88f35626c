export { judgePreload, type PreloadJudgement, type PreloadRemark } from './judge.ts';
export { type PreloadReading, readPreloads } from './preloadfile.ts';
export type { PreloadReadings } from './readings.ts';
export type { Torque, TorqueBounds } from './torque.ts';
