import type { Departure } from '../../engine/train/index.ts';
import {
  compare,
  fraction,
  minus,
  over,
  type Rational,
  signOf,
  times,
} from '../../engine/linear/index.ts';
import type { Length } from '../length/index.ts';
import { type Bounds, usableBounds, writtenAlike } from './bounds.ts';
import { sizeOf } from './mean.ts';

/**
 * How far a limit departs from another of the same; undefined where it may be meant. A revised
 * limit is seldom twice the old one; a slipped point makes it ten times, and an inch 25.4. (Asked
 * from five times on, or where the ends are more than four times as far apart: both are ours.)
 */
export function departure(its: Bounds, from: Bounds | undefined): Departure | undefined {
  if (!from || !usableBounds(its) || !usableBounds(from)) return undefined;
  const ends = (['most', 'least'] as const).flatMap((end) => {
    const [a, b] = [its[end], from[end]];
    const open = end === 'most' || (!its.most && !from.most);
    return (a && b && ofEnd(a, b, open)) ?? [];
  });
  return ends[0] ?? (isWide(its, from) ? 'wide' : undefined);
}

// A least of nothing beside a most is no slip: it leaves that side open.
function ofEnd(a: Length, b: Length, alone: boolean): Departure | undefined {
  const [x, y] = [a, b].map(({ um }) => sizeOf(um)) as [Rational, Rational];
  const [small, large] = compare(x, y) < 0 ? [x, y] : [y, x];
  if (signOf(small) === 0) return alone && signOf(large) > 0 ? 'far' : undefined;
  const ratio = over(large, small);
  if (compare(ratio, fraction(5)) < 0) return undefined;
  if (!writtenAlike(a, b) && between(ratio, 18, 36)) return 'unit';
  const slipped = [10, 100, 1000].some((ten) => {
    return between(ratio, (ten * 7) / 10, (ten * 14) / 10);
  });
  return slipped ? 'point' : between(ratio, 18, 36) ? 'unit' : 'far';
}

function between(ratio: Rational, least: number, most: number): boolean {
  return compare(ratio, fraction(least)) >= 0 && compare(ratio, fraction(most)) <= 0;
}

function isWide(a: Bounds, b: Bounds): boolean {
  const [its, from] = [widthOf(a), widthOf(b)];
  return Boolean(its && from && signOf(from) > 0 && compare(its, times(from, fraction(4))) > 0);
}

function widthOf({ least, most }: Bounds): Rational | undefined {
  return least && most && minus(most.um, least.um);
}
