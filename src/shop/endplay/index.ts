export { type EndPlayJudgement, judgeEndPlay } from './endplay.ts';
export type { PlayReadings } from './readings.ts';
export { type PlaysReading, readPlays } from './playsfile.ts';
