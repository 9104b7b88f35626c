import { compare, equal, opposite, type Rational, times, ZERO } from '../linear/index.ts';

/** Where a number is not settled: from and to, null for "no limit". */
export interface Span {
  readonly from: Rational | null;
  readonly to: Rational | null;
}

/** A settled number, or how far it is free. */
export type Quantity = Rational | Span;

export function isSpan(quantity: Quantity): quantity is Span {
  return 'from' in quantity;
}

/** A number where both bounds meet, else a span. */
export function between(from: Rational | null, to: Rational | null): Quantity {
  return from && to && equal(from, to) ? from : { from, to };
}

/** The quantity times a number; a negative one turns a span round. */
export function stretched(quantity: Quantity, by: Rational): Quantity {
  if (!isSpan(quantity)) return times(quantity, by);
  const [from, to] = [
    quantity.from && times(quantity.from, by),
    quantity.to && times(quantity.to, by),
  ];
  return by.num < 0 ? between(to, from) : between(from, to);
}

/** Whether the quantity is settled, and zero. */
export function isZero(quantity: Quantity): boolean {
  return !isSpan(quantity) && quantity.num === 0;
}

/** The span of some numbers; throws on none. */
export function hull(numbers: readonly Rational[]): Quantity {
  const least = numbers.reduce((a, b) => (compare(a, b) <= 0 ? a : b));
  const greatest = numbers.reduce((a, b) => (compare(a, b) >= 0 ? a : b));
  return between(least, greatest);
}

/** How large the quantity is, whichever way it acts. */
export function sizeOf(quantity: Quantity): Quantity {
  if (!isSpan(quantity)) return quantity.num < 0 ? opposite(quantity) : quantity;
  const { from, to } = quantity;
  if (from && from.num >= 0) return quantity;
  if (to && to.num <= 0) return stretched(quantity, { num: -1, den: 1 });
  return between(ZERO, from && to && larger(opposite(from), to));
}

function larger(a: Rational, b: Rational): Rational {
  return compare(a, b) >= 0 ? a : b;
}
