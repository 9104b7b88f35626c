export { judgeWear, type WearJudgement } from './judge.ts';
export type { WearReadings } from './readings.ts';
export { readWear, type WearReading } from './wearfile.ts';
