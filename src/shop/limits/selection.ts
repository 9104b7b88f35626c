import type { Shelf } from '../../engine/train/index.ts';
import { compare, fraction, minus, over, plus, type Rational } from '../../engine/linear/index.ts';
import { type Gap, type Length, stackUp } from '../length/index.ts';
import { type Limited, middleOf, readLength, type Verdict, verdictOf } from './bounds.ts';
import { type MeanGap, sizeOf } from './mean.ts';

/** The sizes of a part that can be had, and the one that is in. */
export type Sizes = Omit<Shelf, 'part' | 'fitted'> & {
  /** As it was written, or as it was read when it had been exchanged. */
  readonly fitted: string | Length;
  /** A thicker one makes the gap larger: a spacer between two bearings. */
  readonly opens?: boolean;
};

/** A part from the shelf, and the clearance that it should give. */
export interface Chosen {
  readonly size: Length;
  readonly predicted: Gap;
  readonly verdict: Verdict;
  /** It is the size that is fitted already. */
  readonly stays: boolean;
  /** Inside even with every tolerance at its worst. */
  readonly safe: boolean;
}

export interface Selection {
  readonly best: Chosen;
  /** The next best of another size. */
  readonly second?: Chosen;
  /** What each part of the shelf would give, in its order. */
  readonly each: readonly Chosen[];
}

/**
 * The part that brings the clearance nearest to the middle of its limits: a new part takes its
 * thickness from the gap, and the fitted one gives its own back. Of two that are as near, the
 * thicker: new paper beds in. Undefined without both limits.
 */
export function select(measured: MeanGap, shelf: Sizes, bounds: Limited): Selection | undefined {
  const middle = middleOf(bounds);
  if (!middle) return undefined;
  const off = ({ predicted: gap }: Chosen) => sizeOf(minus(gap.um, middle));
  const each = shelf.sizes.map((size) => fitted(readLength(size), measured, shelf, bounds));
  const [best, ...others] = each.toSorted((a, b) => {
    return compare(off(a), off(b)) || compare(b.size.um, a.size.um);
  });
  if (!best) return undefined;
  const second = others.find(({ size }) => compare(size.um, best.size.um) !== 0);
  return { best, ...(second && { second }), each };
}

function fitted(size: Length, measured: MeanGap, shelf: Sizes, bounds: Limited): Chosen {
  const gap = predicted(size, measured, shelf);
  const verdict = verdictOf(gap.um, bounds);
  const ends = [minus(gap.um, gap.worstUm), plus(gap.um, gap.worstUm)];
  const safe = ends.every((end) => verdictOf(end, bounds) === 'inside');
  const stays = compare(size.um, fittedIn(shelf).um) === 0;
  return { size, predicted: gap, verdict, stays, safe };
}

/** The gap that a part of another size should leave, and how far it may be off. */
export function predicted(size: Length, measured: MeanGap, shelf: Sizes): Gap {
  const old = fittedIn(shelf);
  const { um, stepUm } = measured.clearance;
  // Half the spread, and no less than half of the tool's last digit.
  const spread = compare(measured.spreadUm, stepUm) > 0 ? measured.spreadUm : stepUm;
  const tolOf = (length: Length) => {
    return shelf.tolerance === undefined ? half(length.stepUm) : readLength(shelf.tolerance).um;
  };
  const stays = compare(size.um, old.um) === 0;
  return stackUp([
    { adds: 1, um, tolUm: half(spread) },
    // A part that stays is not exchanged, so its thickness plays no part.
    ...(stays
      ? []
      : [
          { adds: shelf.opens ? (-1 as const) : (1 as const), um: old.um, tolUm: tolOf(old) },
          { adds: shelf.opens ? (1 as const) : (-1 as const), um: size.um, tolUm: tolOf(size) },
        ]),
  ]);
}

/** The thickness of the part that is in. */
export function fittedIn({ fitted: its }: Sizes): Length {
  return typeof its === 'string' ? readLength(its) : its;
}

function half(um: Rational): Rational {
  return over(um, fraction(2));
}
