export { type EndPlayJudgement, judgeEndPlay } from './endplay.ts';
export { type PlaysReading, readPlays } from './playsfile.ts';
