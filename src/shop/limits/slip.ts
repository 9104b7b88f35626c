import {
  compare,
  fraction,
  over,
  type Rational,
  signOf,
  times,
} from '../../engine/linear/index.ts';

/** Two ends in one unit, of lengths or of torques; absent: open on that side. */
export interface Ends {
  readonly least?: Rational | undefined;
  readonly most?: Rational | undefined;
}

/**
 * What was meant where a point slipped: of a reading of five times the most, or more (of ten times
 * where the least is nothing or not told), a tenth, a hundredth or a thousandth; of one below a fifth
 * of the least, where there is no most, ten times as much, or more; whichever is inside. (The five
 * is ours: wear and wrong parts are seldom as far off.)
 */
export function slippedFrom(size: Rational, { least, most }: Ends): Rational | undefined {
  if (signOf(size) <= 0) return undefined;
  const inside = (its: Rational) =>
    !(least && compare(its, least) < 0) && !(most && compare(its, most) > 0);
  const tens = [10, 100, 1000].map((ten) => fraction(ten));
  const often = fraction(least && signOf(least) > 0 ? 5 : 10);
  if (most && compare(size, times(most, often)) >= 0) {
    return tens.map((ten) => over(size, ten)).find(inside);
  }
  if (least && !most && compare(size, over(least, fraction(5))) < 0) {
    return tens.map((ten) => times(size, ten)).find(inside);
  }
  return undefined;
}
