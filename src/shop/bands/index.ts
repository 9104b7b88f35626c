export { type BandsReading, readBands } from './bandsfile.ts';
export { type BackOff, type BandJudgement, bandTravelBounds, judgeBand } from './judge.ts';
export type { BandReadings } from './readings.ts';
