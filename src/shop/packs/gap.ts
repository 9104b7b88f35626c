import { compare, fraction, over, type Rational, times } from '../../engine/linear/index.ts';
import { type LengthUnit, UM_PER } from '../length/index.ts';
import { type Bounds, type Limited, readLength, verdictOf } from './bounds.ts';
import type { Remark } from './remark.ts';
import type { Selection, Sizes } from './selection.ts';

// What holds of every gap that has limits and a part from a shelf: a pack's, a shaft's.

/** Limits that can be judged by: not those without an end, nor those whose least is more than their most. */
export function usableBounds(bounds: Bounds | undefined): Limited | undefined {
  return bounds && isLimited(bounds) && !turnedRound(bounds) ? bounds : undefined;
}

function isLimited(bounds: Bounds): bounds is Limited {
  return bounds.least !== undefined || bounds.most !== undefined;
}

function turnedRound({ least, most }: Bounds): boolean {
  return least !== undefined && most !== undefined && compare(least.um, most.um) > 0;
}

/** The unit in which the same digits would be inside, where they are not in their own. */
export function unitMeant(um: Rational, limits: Limited): LengthUnit | undefined {
  const inch = over(UM_PER.in, UM_PER.mm);
  const bounds = closed(limits);
  if (verdictOf(times(um, inch), bounds) === 'inside') return 'in';
  return verdictOf(over(um, inch), bounds) === 'inside' ? 'mm' : undefined;
}

// Where one side is open everything beyond is inside: there only what is within five times the
// other side is taken for a wrong unit, which is off by 25.4. (The five is ours.)
function closed(limits: Limited): Limited {
  const { least, most } = limits;
  const five = fraction(5);
  if (least && !most) return { least, most: { ...least, um: times(least.um, five) } };
  if (most && !least) return { most, least: { ...most, um: over(most.um, five) } };
  return limits;
}

export function limitRemarks(bounds: Bounds | undefined): Remark[] {
  if (!bounds || !isLimited(bounds)) return [{ remark: 'no limit' }];
  if (turnedRound(bounds)) return [{ remark: 'limits turned round' }];
  return bounds.least && bounds.most ? [] : [{ remark: 'one limit' }];
}

export function shelfRemarks(shelf: Sizes | undefined, selection: Selection | undefined): Remark[] {
  if (!shelf) return [];
  const fitted = readLength(shelf.fitted);
  const known = shelf.sizes.some((size) => compare(readLength(size).um, fitted.um) === 0);
  return [
    ...(known ? [] : [{ remark: 'not on the shelf', size: fitted } as const]),
    ...(selection && selection.best.verdict !== 'inside'
      ? [{ remark: 'shelf too short' } as const]
      : []),
  ];
}
