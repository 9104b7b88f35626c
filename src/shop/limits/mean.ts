import { compare, minus, type Rational, signOf, ZERO } from '../../engine/linear/index.ts';
import { type Length, meanOf } from '../length/index.ts';

/** A gap as it was read in one place or several. */
export interface MeanGap {
  /** The mean. */
  readonly clearance: Length;
  /** A place each, in their order, the squash taken off. */
  readonly places: readonly Length[];
  /** The largest less the smallest. */
  readonly spreadUm: Rational;
  /** Which place, from 0, is farthest from the middle of the limits, or else from the mean. */
  readonly worst: number;
}

/** Mean, spread and worst place; `wantedUm` is what each place should read, if anybody knows. */
export function meanGap(places: readonly Length[], wantedUm: Rational | undefined): MeanGap {
  const sorted = places.map(({ um }) => um).toSorted(compare);
  const spreadUm = minus(sorted.at(-1) as Rational, sorted[0] as Rational);
  const clearance = meanOf(places);
  const off = places.map(({ um }) => sizeOf(minus(um, wantedUm ?? clearance.um)));
  const most = off.toSorted(compare).at(-1) as Rational;
  const worst = off.findIndex((its) => compare(its, most) === 0);
  return { clearance, places, spreadUm, worst };
}

export function sizeOf(um: Rational): Rational {
  return signOf(um) < 0 ? minus(ZERO, um) : um;
}
