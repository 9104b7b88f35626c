export {
  type Again,
  type AgainReadings,
  againRemarks,
  isClosed,
  measuredAgain,
  standingOf,
} from './again.ts';
export { AGAIN, againOf } from './againfile.ts';
export { departure } from './beside.ts';
export {
  type Bounds,
  boundsOf,
  inTwoUnits,
  type Limited,
  middleOf,
  readLength,
  thickening,
  toldApart,
  turnedRound,
  usableBounds,
  type Verdict,
  verdictOf,
  verdictOfReading,
} from './bounds.ts';
export {
  digitRemarks,
  isMisread,
  limitRemarks,
  placesOutside,
  readingRemarks,
  shelfRemarks,
  speakAgainst,
  unevenness,
  unitMeant,
} from './against.ts';
export { meanGap, type MeanGap, sizeOf } from './mean.ts';
export type { GapRemark } from './remark.ts';
export { slippedFrom } from './slip.ts';
export { type Chosen, select, type Selection } from './selection.ts';
