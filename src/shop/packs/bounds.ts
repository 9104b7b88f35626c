import type { Limit, Pack } from '../../engine/train/index.ts';
import {
  compare,
  fraction,
  minus,
  over,
  plus,
  type Rational,
  times,
} from '../../engine/linear/index.ts';
import { type Length, lengthFrom } from '../length/index.ts';

/** A limit with its lengths read. Absent: none on that side. */
export interface Bounds {
  readonly least?: Length;
  readonly most?: Length;
  /** Absent: unsourced. */
  readonly source?: string;
  readonly by?: string;
}

/** Bounds that tell an end at least: nothing is ever inside none. */
export type Limited = Bounds & ({ readonly least: Length } | { readonly most: Length });

export type Verdict = 'inside' | 'too small' | 'too big';

export function boundsOf({ least, most, ...origin }: Limit): Bounds {
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

/** The limit of a pack's clearance: its own, or that of each friction times their number. */
export function clearanceBounds({ plates, limits }: Pack): Bounds | undefined {
  if (limits?.clearance) return boundsOf(limits.clearance);
  const each = limits?.['each friction'];
  if (!each) return undefined;
  const frictions = plates.filter(({ kind }) => kind === 'friction').length;
  if (frictions === 0) return undefined;
  const count = fraction(frictions);
  const { least, most, ...origin } = boundsOf(each);
  const all = ({ um, stepUm }: Length) => ({ um: times(um, count), stepUm });
  return { ...(least && { least: all(least) }), ...(most && { most: all(most) }), ...origin };
}

export function verdictOf(um: Rational, { least, most }: Limited): Verdict {
  if (least && compare(um, least.um) < 0) return 'too small';
  return most && compare(um, most.um) > 0 ? 'too big' : 'inside';
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
