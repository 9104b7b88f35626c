import {
  compare,
  fraction,
  minus,
  over,
  plus,
  type Rational,
  times,
} from '../../engine/linear/index.ts';
import { quantityFrom } from '../../engine/quantity/index.ts';
import type { TorqueLimit } from '../../engine/train/index.ts';
import type { Length } from '../length/index.ts';
import type { Verdict } from '../limits/index.ts';

/** A torque as somebody wrote or measured it, exactly, with the last digit that was told. */
export interface Torque {
  readonly nm: Rational;
  readonly stepNm: Rational;
  /** As it was written; absent: it was reckoned. */
  readonly written?: string;
}

/** A torque of a file, whose form has been checked. */
export function readTorque(text: string): Torque {
  const read = quantityFrom(text, 'torque');
  if (!read) throw new Error(`no torque: ${text}`);
  return { nm: read.size, stepNm: read.step, written: text };
}

/** A force, whose form has been checked, on a cord that leaves a hub at a radius. */
export function pulled(force: string, radius: Length): Torque {
  const read = quantityFrom(force, 'force');
  if (!read) throw new Error(`no force: ${force}`);
  const metres = over(radius.um, fraction(1_000_000));
  return { nm: times(read.size, metres), stepNm: times(read.step, metres) };
}

/** The middle of all, and the one that is farthest from it; throws where there are none. */
export function meanTorque(all: readonly Torque[]): {
  readonly mean: Torque;
  readonly spreadNm: Rational;
} {
  const sorted = all.toSorted((a, b) => compare(a.nm, b.nm));
  const [least, most] = [sorted[0] as Torque, sorted.at(-1) as Torque];
  const stepNm = all.map((its) => its.stepNm).reduce((a, b) => (compare(a, b) < 0 ? b : a));
  const nm = over(all.map((its) => its.nm).reduce(plus), fraction(all.length));
  return { mean: { nm, stepNm }, spreadNm: minus(most.nm, least.nm) };
}

/** A limit with its torques read; undefined where it tells no end, or has them reversed. */
export interface TorqueBounds {
  readonly least?: Torque;
  readonly most?: Torque;
  readonly source?: string;
  readonly by?: string;
}

export function torqueBounds({ least, most, ...origin }: TorqueLimit): TorqueBounds | undefined {
  const ends = {
    ...(least !== undefined && { least: readTorque(least) }),
    ...(most !== undefined && { most: readTorque(most) }),
  };
  if (!ends.least && !ends.most) return undefined;
  if (ends.least && ends.most && compare(ends.least.nm, ends.most.nm) > 0) return undefined;
  return { ...ends, ...origin };
}

/** Exactly; too small is too loose. */
export function torqueVerdict(nm: Rational, { least, most }: TorqueBounds): Verdict {
  if (least && compare(nm, least.nm) < 0) return 'too small';
  return most && compare(nm, most.nm) > 0 ? 'too big' : 'inside';
}

/** The unit in which the same number would be right, where it is not in its own. */
export function torqueUnitMeant(
  { written = '' }: Torque,
  bounds: TorqueBounds,
): string | undefined {
  const number = /^[0-9.,]+/u.exec(written)?.[0];
  if (number === undefined || torqueVerdict(readTorque(written).nm, bounds) === 'inside')
    return undefined;
  return ['Nm', 'lbf in', 'lbf ft', 'kgf cm', 'Ncm'].find((unit) => {
    const read = quantityFrom(`${number} ${unit}`, 'torque');
    return read && torqueVerdict(read.size, bounds) === 'inside';
  });
}
