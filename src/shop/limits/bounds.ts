import type { Departure, FileLimit } from '../../engine/train/index.ts';
import {
  compare,
  fraction,
  minus,
  over,
  plus,
  type Rational,
  signOf,
  times,
} from '../../engine/linear/index.ts';
import { type Length, lengthFrom } from '../length/index.ts';
import { sizeOf } from './mean.ts';

/** A limit with its lengths read. Absent: none on that side. */
export interface Bounds {
  readonly least?: Length;
  readonly most?: Length;
  /** Absent: unsourced. */
  readonly source?: string;
  readonly by?: string;
  /** How it departs from another of the same: nothing is judged by it. */
  readonly doubted?: Departure;
}

/** Bounds that tell an end at least: nothing is ever inside none. */
export type Limited = Bounds & ({ readonly least: Length } | { readonly most: Length });

export type Verdict = 'inside' | 'too small' | 'too big';

export function boundsOf({ least, most, ...origin }: FileLimit): Bounds {
  return {
    ...(least !== undefined && { least: readLength(least) }),
    ...(most !== undefined && { most: readLength(most) }),
    ...origin,
  };
}

/** A length of a train file, whose form has been checked. */
export function readLength(text: string): Length {
  const length = lengthFrom(text);
  if (!length) throw new Error(`no length: ${text}`);
  return length;
}

/** Limits that can be judged by: not those without an end, nor reversed ones, nor doubted ones. */
export function usableBounds(bounds: Bounds | undefined): Limited | undefined {
  const usable = bounds && isLimited(bounds) && !turnedRound(bounds) && !bounds.doubted;
  return usable ? bounds : undefined;
}

export function isLimited(bounds: Bounds): bounds is Limited {
  return bounds.least !== undefined || bounds.most !== undefined;
}

export function turnedRound({ least, most }: Bounds): boolean {
  return least !== undefined && most !== undefined && compare(least.um, most.um) > 0;
}

export function verdictOf(um: Rational, { least, most }: Limited): Verdict {
  if (least && compare(um, least.um) < 0) return 'too small';
  return most && compare(um, most.um) > 0 ? 'too big' : 'inside';
}

/**
 * The verdict of a reading. A reading in inches that is the limit in millimetres to the last digit
 * of both, or the other way round, is the limit: 0.002 in is 0.05 mm. All else is exact.
 */
export function verdictOfReading(reading: Length, { least, most }: Limited): Verdict {
  if (least && compare(reading.um, least.um) < 0 && !sameAs(reading, least)) return 'too small';
  return most && compare(reading.um, most.um) > 0 && !sameAs(reading, most) ? 'too big' : 'inside';
}

/** Whether one end is in millimetres and the other in inches: so one of them was mistaken. */
export function inTwoUnits({ least, most }: Bounds): boolean {
  return least !== undefined && most !== undefined && !writtenAlike(least, most);
}

export function writtenAlike(a: Length, b: Length): boolean {
  return !a.written || !b.written || METRIC.has(a.written) === METRIC.has(b.written);
}

function sameAs(a: Length, b: Length): boolean {
  if (writtenAlike(a, b)) return false;
  const twice = times(sizeOf(minus(a.um, b.um)), fraction(2));
  return compare(twice, a.stepUm) < 0 && compare(twice, b.stepUm) < 0;
}

const METRIC: ReadonlySet<string> = new Set(['mm', 'um']);

/**
 * A length as finely told as keeps it apart from a limit that it is not: a mean of 0.0533 mm is
 * not "0.05 mm, too big" where at most 0.05 mm is allowed.
 */
export function toldApart(length: Length, { least, most }: Bounds): Length {
  const near = [least, most].flatMap((limit) =>
    limit ? [sizeOf(minus(length.um, limit.um))] : [],
  );
  let { stepUm } = length;
  const hidden = (gap: Rational) => signOf(gap) > 0 && compare(times(gap, fraction(2)), stepUm) < 0;
  while (near.some(hidden)) stepUm = over(stepUm, fraction(10));
  return { ...length, stepUm };
}

/** The middle between two limits; undefined where one of them is not there. */
export function middleOf({ least, most }: Bounds): Rational | undefined {
  return least && most && over(plus(least.um, most.um), fraction(2));
}

/**
 * How much thicker a part must become to bring a gap inside: from `least` to `most`, below 0
 * for thinner. Undefined without both limits.
 */
export function thickening(
  gapUm: Rational,
  { least, most }: Bounds,
): { readonly leastUm: Rational; readonly mostUm: Rational } | undefined {
  return least && most && { leastUm: minus(gapUm, most.um), mostUm: minus(gapUm, least.um) };
}
