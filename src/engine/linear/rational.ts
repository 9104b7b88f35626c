import { type Int, combine, demote, gcd, multiply, negate, quotient, sign } from './integer.ts';

/** An exact fraction in lowest terms; `den` is positive, and zero is 0/1. */
export interface Rational {
  readonly num: Int;
  readonly den: Int;
}

export const ZERO: Rational = { num: 0, den: 1 };
export const ONE: Rational = { num: 1, den: 1 };

/** num / den in lowest terms; throws a RangeError where `den` is 0. */
export function fraction(num: Int, den: Int = 1): Rational {
  if (den === 0) throw new RangeError('a fraction has no denominator 0');
  const common = gcd(num, den);
  const divisor = den < 0 ? negate(common) : common;
  return { num: quotient(num, divisor), den: quotient(den, divisor) };
}

export function plus(a: Rational, b: Rational): Rational {
  return fraction(combine(a.num, b.den, b.num, a.den), multiply(a.den, b.den));
}

export function minus(a: Rational, b: Rational): Rational {
  return plus(a, opposite(b));
}

export function times(a: Rational, b: Rational): Rational {
  return fraction(multiply(a.num, b.num), multiply(a.den, b.den));
}

/** a / b; throws a RangeError where `b` is 0. */
export function over(a: Rational, b: Rational): Rational {
  return fraction(multiply(a.num, b.den), multiply(a.den, b.num));
}

export function opposite(a: Rational): Rational {
  return { num: negate(a.num), den: a.den };
}

/** -1, 0 or 1. */
export function signOf(a: Rational): -1 | 0 | 1 {
  return sign(a.num);
}

/** Negative, 0 or positive as a is less than, equal to or greater than b. */
export function compare(a: Rational, b: Rational): -1 | 0 | 1 {
  return sign(combine(a.num, b.den, negate(b.num), a.den));
}

export function equal(a: Rational, b: Rational): boolean {
  return a.num === b.num && a.den === b.den;
}

/** The nearest float64; ±Infinity only where the value itself is beyond float64. */
export function toNumber(a: Rational): number {
  if (typeof a.num === 'number' && typeof a.den === 'number') return a.num / a.den;
  // Shift so that the quotient keeps 64 significant bits, then scale back.
  const [num, den] = [BigInt(a.num), BigInt(a.den)];
  const size = num < 0n ? -num : num;
  const shift = 64 - (size.toString(2).length - den.toString(2).length);
  const scaled = shift >= 0 ? (num << BigInt(shift)) / den : num / (den << BigInt(-shift));
  return Number(scaled) * 2 ** -shift;
}

/** "p/q", or "p" for a whole number: the form of every exact number in JSON. */
export function toText(a: Rational): string {
  return a.den === 1 ? String(a.num) : `${a.num}/${a.den}`;
}

/** Exactly what a float64 is written as: of 0.1 a tenth, of 1e-7 too. Throws where it is not finite. */
export function fromNumber(value: number): Rational {
  const match = /^(-?)(\d+)(?:\.(\d+))?(?:e([+-]\d+))?$/.exec(String(value));
  if (!match) throw new RangeError(`${value} is no fraction`);
  const [, minusSign = '', whole = '', decimals = '', exponent = '0'] = match;
  const digits = BigInt(`${minusSign}${whole}${decimals}`);
  const places = decimals.length - Number(exponent);
  return places > 0
    ? fraction(demote(digits), demote(10n ** BigInt(places)))
    : fraction(demote(digits * 10n ** BigInt(-places)));
}

/**
 * Reads "p", "p/q" or a plain decimal such as "-2.45", exactly.
 * Returns undefined for anything else, for a zero denominator, and beyond 40 characters.
 */
export function fromText(text: string): Rational | undefined {
  const match = /^\s*([+\u2212-]?)(\d+)(?:\/(\d+)|\.(\d+))?\s*$/.exec(text);
  if (!match || text.length > 40) return undefined;
  const [, minusSign, whole = '0', den, decimals = ''] = match;
  const bottom = den === undefined ? 10n ** BigInt(decimals.length) : BigInt(den);
  if (bottom === 0n) return undefined;
  const top = BigInt(whole + decimals) * (minusSign === '' || minusSign === '+' ? 1n : -1n);
  return fraction(top, bottom);
}
