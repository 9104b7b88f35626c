import {
  fraction,
  type Int,
  minus,
  multiply,
  ONE,
  over,
  plus,
  type Rational,
  signOf,
  times,
} from '../../engine/linear/index.ts';
import { quantityFrom } from '../../engine/quantity/index.ts';

/**
 * A length as somebody wrote or measured it. It is exact: whole micrometres where it came in
 * millimetres, and a fraction of them where it came in inches.
 */
export interface Length {
  readonly um: Rational;
  /** The last digit that the tool told, in micrometres, above 0: 10 for "0.42 mm". */
  readonly stepUm: Rational;
  /** The unit in which it was written; absent: it was reckoned, of several. */
  readonly written?: WrittenUnit;
}

export type WrittenUnit = 'mm' | 'um' | 'in' | 'thou';

export type LengthUnit = 'mm' | 'in';

/** Micrometres in a unit. The inch is 25.4 mm exactly. */
export const UM_PER: Readonly<Record<LengthUnit, Rational>> = {
  mm: fraction(1000),
  in: fraction(25400),
};

/** Micrometres in a unit as people write it. */
export const UM_PER_WRITTEN: Readonly<Record<WrittenUnit, Rational>> = {
  ...UM_PER,
  thou: over(UM_PER.in, fraction(1000)),
  um: fraction(1),
};

/**
 * Reads "0.42 mm", "420 um", "0.017 in", "17 thou", "1/64 in", "1 3/16 in", with a sign before
 * it or without; a comma may stand for the point. Undefined for all else: a bare number too,
 * for nobody knows its unit.
 */
export function lengthFrom(text: string): Length | undefined {
  const read = quantityFrom(text, 'length');
  return read && { um: read.size, stepUm: read.step, written: read.unit as WrittenUnit };
}

/** The coarser of the steps: a sum tells no more than the coarsest tool in it. */
function coarsest(steps: readonly Rational[]): Rational {
  return steps.reduce((a, b) => (signOf(minus(a, b)) < 0 ? b : a));
}

// The unit of all, where they have one.
function writtenAlike(lengths: readonly Length[]): Pick<Length, 'written'> {
  const [first, ...others] = lengths.map(({ written }) => written);
  return first && others.every((its) => its === first) ? { written: first } : {};
}

/** The sum of lengths, as coarse as the coarsest of them; throws where there are none. */
export function sumOf(lengths: readonly Length[]): Length {
  return {
    um: lengths.map(({ um }) => um).reduce(plus),
    stepUm: coarsest(lengths.map(({ stepUm }) => stepUm)),
    ...writtenAlike(lengths),
  };
}

/** a - b, which may be below 0. */
export function less(a: Length, b: Length): Length {
  const stepUm = coarsest([a.stepUm, b.stepUm]);
  return { um: minus(a.um, b.um), stepUm, ...writtenAlike([a, b]) };
}

/** The middle of all; throws where there are none. */
export function meanOf(lengths: readonly Length[]): Length {
  const sum = sumOf(lengths);
  return { ...sum, um: over(sum.um, fraction(lengths.length)) };
}

/**
 * "0.42" of a length, with the fewest decimals that keep apart what the tool could: no digit
 * is invented beyond that. Halves are rounded away from 0.
 */
export function digitsIn({ um, stepUm }: Length, unit: LengthUnit): string {
  return digitsOf(over(um, UM_PER[unit]), over(stepUm, UM_PER[unit]));
}

/** "0.42 mm", "17 thou": in the unit in which it was written; of several, in millimetres. */
export function asWritten({ um, stepUm, written = 'mm' }: Length): string {
  const size = UM_PER_WRITTEN[written];
  return `${digitsOf(over(um, size), over(stepUm, size))} ${written}`;
}

/** The same of any number and the last digit that was told of it. */
export function digitsOf(value: Rational, step: Rational): string {
  let decimals = 0;
  let scale: Int = 1;
  while (signOf(minus(times(step, fraction(scale)), ONE)) < 0 && decimals < MOST_DECIMALS) {
    decimals += 1;
    scale = multiply(scale, 10);
  }
  const { num, den } = times(value, fraction(scale));
  const [top, bottom] = [BigInt(num), BigInt(den)];
  const rounded = ((top < 0n ? -top : top) * 2n + bottom) / (2n * bottom);
  const digits = `${rounded}`.padStart(decimals + 1, '0');
  const point = digits.length - decimals;
  const text = decimals === 0 ? digits : `${digits.slice(0, point)}.${digits.slice(point)}`;
  return top < 0n && rounded > 0n ? `-${text}` : text;
}

const MOST_DECIMALS = 9;
