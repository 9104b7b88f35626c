import { compare, fraction, minus, over, signOf, times } from '../../engine/linear/index.ts';
import { type Length, UM_PER_WRITTEN, type WrittenUnit } from '../length/index.ts';
import {
  type Bounds,
  isLimited,
  type Limited,
  readLength,
  turnedRound,
  verdictOf,
  verdictOfReading,
} from './bounds.ts';
import type { MeanGap } from './mean.ts';
import type { GapRemark } from './remark.ts';
import { fittedIn, type Selection, type Sizes } from './selection.ts';
import { slippedFrom } from './slip.ts';
import { swappedDigits } from './swapped.ts';

// What holds of every gap that has limits and a part from a shelf: a pack's, a shaft's.

/**
 * Readings whose point has slipped. Two that say the same stand by it: a tool that is read twice
 * seldom slips twice.
 */
function slips(places: readonly Length[], { least, most }: Limited): GapRemark[] {
  const ends = { least: least?.um, most: most?.um };
  const meant = places.map(({ um }) => slippedFrom(um, ends));
  if (places.length > 1 && meant.every(Boolean)) return [];
  return meant.flatMap((um, i): GapRemark[] => {
    const read = places[i] as Length;
    const stepUm = (least ?? most)?.stepUm ?? read.stepUm;
    return um ? [{ remark: 'point slipped', read, meant: { um, stepUm }, place: i + 1 }] : [];
  });
}

/** What speaks against single readings: their unit, else their point. */
export function digitRemarks(places: readonly Length[], limits: Limited): GapRemark[] {
  const units = unitRemarks(places, limits);
  if (units.length > 0) return units;
  return [...slips(places, limits), ...impossible(places, limits)];
}

/**
 * Readings of more than ten times the most, or less than a twentieth of the least and yet
 * something: no wear makes the one, and no feeler reads the other. (Ten and twenty are ours.)
 */
function impossible(places: readonly Length[], { least, most }: Limited): GapRemark[] {
  return places.flatMap((read, i): GapRemark[] => {
    if (slippedFrom(read.um, { least: least?.um, most: most?.um })) return [];
    const place = i + 1;
    if (most && signOf(most.um) > 0 && compare(read.um, times(most.um, fraction(10))) > 0)
      return [{ remark: 'not possible', read, limit: most, place }];
    if (!least || signOf(read.um) <= 0) return [];
    return compare(read.um, over(least.um, fraction(20))) < 0
      ? [{ remark: 'not possible', read, limit: least, place }]
      : [];
  });
}

// Readings that lie outside, and whose digits in another unit would be inside.
function unitRemarks(places: readonly Length[], limits: Limited): GapRemark[] {
  const all = places.map((place) => unitMeant(place, limits));
  const [meant] = all;
  if (meant && all.every((its) => its === meant)) return [{ remark: 'other unit', meant }];
  return all.flatMap((its, i): GapRemark[] => {
    return its ? [{ remark: 'other unit', meant: its, place: i + 1 }] : [];
  });
}

/**
 * The unit in which the same digits would be inside, where they are not in their own. A unit is
 * believed only of digits that its tools tell: tools in millimetres tell hundredths at most, tools
 * in inches thousandths at least (common practice, no source). So 0.028 mm may have been inches, and
 * 0.12 mm is not; 0.70 in may have been millimetres, and 0.012 in is not.
 */
export function unitMeant(
  { um, stepUm, written }: Length,
  limits: Limited,
): WrittenUnit | undefined {
  const bounds = closed(limits);
  if (!written || verdictOfReading({ um, stepUm, written }, bounds) === 'inside') return undefined;
  const size = UM_PER_WRITTEN[written];
  const step = over(stepUm, size);
  return (Object.keys(UM_PER_WRITTEN) as WrittenUnit[]).find((unit) => {
    if (unit === written || step.num !== 1 || !TOLD_AS[unit].includes(Number(step.den)))
      return false;
    return verdictOf(times(over(um, size), UM_PER_WRITTEN[unit]), bounds) === 'inside';
  });
}

// So many of the last digit make one of the unit.
const TOLD_AS: Readonly<Record<WrittenUnit, readonly number[]>> = {
  mm: [1, 10, 100],
  in: [1000, 10_000],
  thou: [1],
  um: [1],
};

// Where one side is open everything beyond is inside: there a reading is looked at that is more
// than five times on the other side of its limit; a wrong unit is off by 25. (The five is ours.)
function closed(limits: Limited): Limited {
  const { least, most } = limits;
  const five = fraction(5);
  if (least && !most) return { least, most: { ...least, um: times(least.um, five) } };
  if (most && !least) return { most, least: { ...most, um: over(most.um, five) } };
  return limits;
}

/**
 * Readings of one gap that differ by more than a quarter of what its limits allow (the quarter is
 * ours). Beyond the whole of it no part can bring all of them inside.
 */
export function unevenness(
  { spreadUm, clearance: { stepUm } }: MeanGap,
  { least, most }: Bounds,
  where: 'round' | 'again' | 'teeth',
): GapRemark[] {
  if (!least || !most) return [];
  const widthUm = minus(most.um, least.um);
  if (compare(times(spreadUm, fraction(4)), widthUm) <= 0) return [];
  const beyond = compare(spreadUm, widthUm) > 0;
  const width = { um: widthUm, stepUm: least.stepUm };
  return [{ remark: 'uneven', where, spread: { um: spreadUm, stepUm }, width, beyond }];
}

/**
 * What is to be looked at before readings of one gap are believed: their unit, then their digits,
 * then their spread. `asRead`: the gaps are what the tool told, and were not reckoned from it.
 */
export function readingRemarks(
  measured: MeanGap,
  limits: Limited | undefined,
  where: 'round' | 'again' | 'teeth',
  asRead = true,
): GapRemark[] {
  if (!limits) return [];
  const digits = digitRemarks(measured.places, limits);
  if (digits.length > 0) return digits;
  const swapped = asRead ? swappedDigits(measured.places, limits) : [];
  return swapped.length > 0 ? swapped : unevenness(measured, limits, where);
}

/** Places that are outside though the mean is inside. */
export function placesOutside({ places, clearance }: MeanGap, limits: Limited): GapRemark[] {
  if (verdictOfReading(clearance, limits) !== 'inside') return [];
  return places.flatMap((place, i): GapRemark[] => {
    const inside = verdictOfReading(place, limits) === 'inside';
    return inside ? [] : [{ remark: 'place outside', place: i + 1 }];
  });
}

export function limitRemarks(bounds: Bounds | undefined): GapRemark[] {
  if (!bounds || !isLimited(bounds)) return [{ remark: 'no limit' }];
  if (bounds.doubted) return [{ remark: 'limit doubted', by: bounds.doubted }];
  if (turnedRound(bounds)) return [{ remark: 'limits turned round' }];
  return bounds.least && bounds.most ? [] : [{ remark: 'one limit' }];
}

export function shelfRemarks(
  shelf: Sizes | undefined,
  selection: Selection | undefined,
): GapRemark[] {
  if (!shelf) return [];
  const fitted = fittedIn(shelf);
  const known = shelf.sizes.some((size) => compare(readLength(size).um, fitted.um) === 0);
  return [
    ...(known ? [] : [{ remark: 'not on the shelf', size: fitted } as const]),
    ...(selection && selection.best.verdict !== 'inside'
      ? [{ remark: 'shelf too short' } as const]
      : []),
  ];
}

/**
 * Whether nothing may be chosen, nor called right, before what is remarked has been looked at: a
 * wrong unit, a plate too many or too few, readings that no part can bring inside.
 */
export function speakAgainst(remarks: readonly { readonly remark: string }[]): boolean {
  return remarks.some((its) => AGAINST.has(its.remark) || isBeyond(its));
}

/**
 * Whether a reading is not what was meant, or cannot be, or the readings of one gap differ by more
 * than its limits allow: then no verdict is told either, of any one of them or of their mean.
 */
export function isMisread(remarks: readonly { readonly remark: string }[]): boolean {
  return remarks.some((its) => MISREAD.has(its.remark) || isBeyond(its));
}

function isBeyond(its: { readonly remark: string }): boolean {
  return its.remark === 'uneven' && 'beyond' in its && its.beyond === true;
}

const MISREAD: ReadonlySet<string> = new Set([
  'other unit',
  'point slipped',
  'digits swapped',
  'not possible',
]);

const AGAINST: ReadonlySet<string> = new Set([
  'limit doubted',
  'limits turned round',
  'other unit',
  'point slipped',
  'digits swapped',
  'not possible',
  'sizes apart',
  'other unit of a plate',
  'no gap',
  'no slack',
  'gap hidden',
  'other torque unit',
  'uneven torque',
  'torque slipped',
  'not as predicted',
  'plates spent',
  'plate missing',
  'plate doubled',
]);
