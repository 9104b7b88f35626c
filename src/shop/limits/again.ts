import { compare, fraction, minus, over, plus } from '../../engine/linear/index.ts';
import type { Gap, Length } from '../length/index.ts';
import { type Limited, type Verdict, verdictOfReading } from './bounds.ts';
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
  /** Whether it lies where it was predicted, at worst. */
  readonly agrees?: boolean;
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
  return {
    fitted,
    measured,
    ...(bounds && { verdict: verdictOfReading(measured.clearance, bounds) }),
    ...(gap &&
      allowed && {
        predicted: gap,
        agrees: compare(sizeOf(minus(um, gap.um)), allowed) <= 0,
      }),
  };
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
  return again?.agrees === false ? [{ remark: 'not as predicted' }] : [];
}
