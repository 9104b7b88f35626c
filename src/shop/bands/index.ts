export { type BandsReading, readBands } from './bandsfile.ts';
export {
  type BackOff,
  type BandJudgement,
  type BandRemark,
  bandTravelBounds,
  judgeBand,
} from './judge.ts';
export type { BandReadings } from './readings.ts';
