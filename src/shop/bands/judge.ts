import {
  compare,
  fraction,
  fromNumber,
  minus,
  over,
  type Rational,
  signOf,
  times,
  toNumber,
} from '../../engine/linear/index.ts';
import type { BandSetting } from '../../engine/train/index.ts';
import type { Length } from '../length/index.ts';
import {
  type Bounds,
  boundsOf,
  type GapRemark,
  limitRemarks,
  type Limited,
  meanGap,
  type MeanGap,
  middleOf,
  isMisread,
  readingRemarks,
  readLength,
  select,
  type Selection,
  shelfRemarks,
  sizeOf,
  speakAgainst,
  usableBounds,
  type Verdict,
  verdictOf,
  verdictOfReading,
} from '../limits/index.ts';
import type { BandReadings } from './readings.ts';

/** What must be told of a band before its numbers are believed. */
export type BandRemark =
  | GapRemark
  /** Turns were read, and nobody wrote how far one turn moves the screw. */
  | { readonly remark: 'no pitch' }
  /** Turns and travel of one band that do not agree to within a quarter of the limits' width. */
  | { readonly remark: 'turns and travel differ' };

/** What the readings of a band say. */
export interface BandJudgement {
  readonly band: BandSetting;
  /** As they were read. */
  readonly turns?: Rational;
  readonly by?: 'travel' | 'turns';
  /** Of the screw or the rod; by turns it is told to an eighth of one. */
  readonly travel?: MeanGap;
  /** At the drum: what the band's end can move. */
  readonly clearance?: Length;
  /** The same, spread evenly round the drum; absent where nobody wrote how far the band goes. */
  readonly allRound?: Length;
  /** Of the travel; from those of the clearance by the lever, where only they are told. */
  readonly bounds?: Bounds;
  readonly verdict?: Verdict;
  /** By how many turns to back off, where there is a screw and both limits. */
  readonly backOff?: BackOff;
  readonly selection?: Selection;
  readonly remarks: readonly BandRemark[];
}

/** Turns from where the drum is held; the best is a whole number of eighths where one is inside. */
export interface BackOff {
  readonly least: Rational;
  readonly most: Rational;
  readonly best: Rational;
}

/**
 * A band by its readings. Its end moves by turns × pitch × lever ratio. `wrapDegrees`: how far
 * the band goes round its drum; what the end gives is spread over that arc, so that the drum is
 * free by it over the arc in radians.
 */
export function judgeBand(
  band: BandSetting,
  { turns, travel }: Omit<BandReadings, 'device'>,
  wrapDegrees?: number,
): BandJudgement {
  const pitch = band.pitch === undefined ? undefined : readLength(band.pitch);
  const bounds = bandTravelBounds(band);
  const usable = usableBounds(bounds);
  const wanted = usable && middleOf(usable);
  const byTurns = turns && pitch && meanGap([turned(pitch, turns)], wanted);
  const byTravel = travel && travel.length > 0 ? meanGap(travel, wanted) : undefined;
  const measured = byTravel ?? byTurns;
  const um = measured?.clearance.um;
  // A pitch in the wrong unit is as likely as a travel: its digits are the written ones.
  const written =
    byTravel ??
    (byTurns && pitch && { ...byTurns, places: [{ ...pitch, um: byTurns.clearance.um }] });
  const slack = um && signOf(um) > 0;
  const against: BandRemark[] = [
    ...(um && !slack ? [{ remark: 'no slack' } as const] : []),
    ...(written && slack ? readingRemarks(written, usable, 'again') : []),
  ];
  const verdict =
    measured && usable && !isMisread(against)
      ? verdictOfReading(measured.clearance, usable)
      : undefined;
  const sound = measured && usable && !speakAgainst(against) ? { measured, usable } : undefined;
  const selection = sound && band.shelf && select(sound.measured, band.shelf, sound.usable);
  const backOff = pitch && usable && backOffOf(pitch, usable);
  const clearance = measured && atDrum(measured.clearance, band);
  return {
    band,
    ...(turns && { turns }),
    ...(measured && { by: byTravel ? 'travel' : 'turns', travel: measured }),
    ...(clearance && { clearance }),
    ...(clearance && wrapDegrees && { allRound: spread(clearance, wrapDegrees) }),
    ...(bounds && { bounds }),
    ...(verdict && { verdict }),
    ...(backOff && { backOff }),
    ...(selection && { selection }),
    remarks: [
      ...(turns && !pitch ? [{ remark: 'no pitch' } as const] : []),
      ...(measured || turns ? [] : [{ remark: 'nothing read' } as const]),
      ...against,
      ...limitRemarks(bounds),
      ...(byTurns && byTravel && usable ? agreement(byTurns, byTravel, usable) : []),
      ...shelfRemarks(band.shelf, selection),
    ],
  };
}

function leverOf({ lever = 1 }: BandSetting): Rational {
  return fromNumber(lever);
}

function atDrum({ um, stepUm }: Length, band: BandSetting): Length {
  const lever = leverOf(band);
  return { um: times(um, lever), stepUm: times(stepUm, lever) };
}

/** The limits of a band's travel: its own, or those of the clearance by the lever. */
export function bandTravelBounds(band: BandSetting): Bounds | undefined {
  const { travel, clearance } = band.limits ?? {};
  if (travel) return boundsOf(travel);
  if (!clearance) return undefined;
  const lever = leverOf(band);
  const { least, most, ...origin } = boundsOf(clearance);
  const back = ({ um, stepUm }: Length) => ({ um: over(um, lever), stepUm: over(stepUm, lever) });
  return { ...(least && { least: back(least) }), ...(most && { most: back(most) }), ...origin };
}

// A hand tells an eighth of a turn; common practice, no source.
const EIGHTH = fraction(1, 8);

function turned(pitch: Length, turns: Rational): Length {
  return { um: times(pitch.um, turns), stepUm: times(pitch.um, EIGHTH) };
}

// As a fraction, for a length is one.
const DEGREES_PER_RADIAN = fromNumber(180 / Math.PI);

function spread({ um, stepUm }: Length, wrapDegrees: number): Length {
  const radians = over(fromNumber(wrapDegrees), DEGREES_PER_RADIAN);
  return { um: over(um, radians), stepUm: over(stepUm, radians) };
}

function backOffOf({ um }: Length, bounds: Limited): BackOff | undefined {
  const { least, most } = bounds;
  const middle = middleOf(bounds);
  if (!least || !most || !middle || signOf(um) === 0) return undefined;
  const exact = over(middle, um);
  const rounded = fraction(Math.round(toNumber(over(exact, EIGHTH))), 8);
  const inside = verdictOf(times(rounded, um), bounds) === 'inside';
  return {
    least: over(least.um, um),
    most: over(most.um, um),
    best: inside ? rounded : exact,
  };
}

function agreement(a: MeanGap, b: MeanGap, { least, most }: Bounds): BandRemark[] {
  if (!least || !most) return [];
  const size = sizeOf(minus(a.clearance.um, b.clearance.um));
  const allowed = over(minus(most.um, least.um), fraction(4));
  return compare(size, allowed) > 0 ? [{ remark: 'turns and travel differ' }] : [];
}
