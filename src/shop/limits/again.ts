import { compare, fraction, minus, over, plus, ZERO } from '../../engine/linear/index.ts';
import type { Gap, Length } from '../length/index.ts';
import { type Limited, readLength, type Verdict, verdictOfReading } from './bounds.ts';
import { meanGap, type MeanGap, sizeOf } from './mean.ts';
import type { GapRemark } from './remark.ts';
import { predicted, type Sizes } from './selection.ts';

/** What was read once another part was in: the readings that close it, or do not. */
export interface AgainReadings {
  readonly fitted: Length;
  readonly read: readonly Length[];
}

export interface Again {
  readonly fitted: Length;
  readonly measured: MeanGap;
  readonly verdict?: Verdict;
  /** Absent where nothing was read before, or no part is told. */
  readonly predicted?: Gap;
  /** Whether it lies where it was predicted, at worst, and not where another part would have it. */
  readonly agrees?: boolean;
  /** Another part of the shelf, which would have left what was read: that one may be in. */
  readonly like?: Length;
}

/** Measures again: `before` are the readings with the shelf's fitted part. */
export function measuredAgain(
  { fitted, read }: AgainReadings,
  before: MeanGap | undefined,
  shelf: Sizes | undefined,
  bounds: Limited | undefined,
): Again {
  const measured = meanGap(read, undefined);
  const { um, stepUm } = measured.clearance;
  const gap = before && shelf && predicted(fitted, before, shelf);
  // The second reading is no finer than its own tool.
  const allowed = gap && plus(gap.worstUm, over(stepUm, fraction(2)));
  const like = gap && before && shelf && likeAnother(measured.clearance, gap, before, shelf);
  return {
    fitted,
    measured,
    ...(like && { like }),
    ...(bounds && { verdict: verdictOfReading(measured.clearance, bounds) }),
    ...(gap &&
      allowed && {
        predicted: gap,
        agrees: !like && compare(sizeOf(minus(um, gap.um)), allowed) <= 0,
      }),
  };
}

/**
 * The part whose gap is the one that was read: it lies three quarters of the way to it or more (the
 * three quarters are ours), and farther off than tools and parts allow. That the first readings were
 * uneven excuses no step of a shelf.
 */
function likeAnother(
  { um, stepUm }: Length,
  gap: Gap,
  before: MeanGap,
  shelf: Sizes,
): Length | undefined {
  const off = minus(um, gap.um);
  const even = predicted(readLength(shelf.sizes[0] ?? ''), { ...before, spreadUm: ZERO }, shelf);
  const allowed = plus(even.worstUm, over(stepUm, fraction(2)));
  if (compare(sizeOf(off), allowed) <= 0) return undefined;
  const far = (size: Length) => sizeOf(minus(um, predicted(size, before, shelf).um));
  const [nearest] = shelf.sizes.map(readLength).toSorted((a, b) => compare(far(a), far(b)));
  if (!nearest) return undefined;
  const step = sizeOf(minus(predicted(nearest, before, shelf).um, gap.um));
  const most = over(step, fraction(4));
  return compare(far(nearest), most) <= 0 && compare(step, ZERO) > 0 ? nearest : undefined;
}

/**
 * What stands after all readings: with the part that was read again in, where there is one. Its
 * shelf has that part fitted.
 */
export function standingOf(
  measured: MeanGap | undefined,
  shelf: Sizes | undefined,
  again: Again | undefined,
): { readonly measured: MeanGap | undefined; readonly shelf: Sizes | undefined } {
  if (!again) return { measured, shelf };
  const fitted = again.fitted;
  return { measured: again.measured, shelf: shelf && { ...shelf, fitted } };
}

/** Whether it is read again, inside and as predicted: there is nothing left to choose. */
export function isClosed(again: Again | undefined): boolean {
  return again?.verdict === 'inside' && again.agrees !== false;
}

export function againRemarks(again: Again | undefined): GapRemark[] {
  if (again?.agrees !== false) return [];
  return [{ remark: 'not as predicted', ...(again.like && { like: again.like }) }];
}
