import fc from 'fast-check';
import { expect, test } from 'vitest';
import { demote } from './integer.ts';
import * as exact from './rational.ts';
import type { Rational } from './rational.ts';
import { Tally } from '../../../test/tally.ts';

const part = fc.oneof(
  fc.bigInt({ min: -30n, max: 30n }),
  fc.bigInt({ min: -(2n ** 54n), max: 2n ** 54n }),
  fc.bigInt({ min: -(2n ** 120n), max: 2n ** 120n }),
);
const rational = fc
  .tuple(
    part,
    part.filter((den) => den !== 0n),
  )
  .map(([num, den]) => exact.fraction(demote(num), demote(den)));

/** num/den of a value, as BigInts. */
function parts({ num, den }: Rational): [bigint, bigint] {
  return [BigInt(num), BigInt(den)];
}

// Equal to num/den, in lowest terms, with a positive denominator.
function holds(found: Rational, num: bigint, den: bigint): void {
  const [n, d] = parts(found);
  expect(n * den).toBe(num * d);
  expect(d > 0n).toBe(true);
  let [a, b] = [n < 0n ? -n : n, d];
  while (b !== 0n) [a, b] = [b, a % b];
  expect(a).toBe(1n);
}

test('sums, differences, products and quotients are exact and in lowest terms', () => {
  fc.assert(
    fc.property(rational, rational, (a, b) => {
      const [an, ad] = parts(a);
      const [bn, bd] = parts(b);
      holds(exact.plus(a, b), an * bd + bn * ad, ad * bd);
      holds(exact.minus(a, b), an * bd - bn * ad, ad * bd);
      holds(exact.times(a, b), an * bn, ad * bd);
      holds(exact.opposite(a), -an, ad);
      if (bn === 0n) expect(() => exact.over(a, b)).toThrow(RangeError);
      else holds(exact.over(a, b), an * bd, ad * bn);
    }),
    { numRuns: 2000 },
  );
});

test('comparison and equality agree with cross-multiplication', () => {
  fc.assert(
    fc.property(rational, rational, (a, b) => {
      const [an, ad] = parts(a);
      const [bn, bd] = parts(b);
      const difference = an * bd - bn * ad;
      expect(exact.compare(a, b)).toBe(difference > 0n ? 1 : difference < 0n ? -1 : 0);
      expect(exact.equal(a, b)).toBe(difference === 0n);
      expect(exact.signOf(a)).toBe(an > 0n ? 1 : an < 0n ? -1 : 0);
      expect(exact.compare(a, a)).toBe(0);
    }),
    { numRuns: 2000 },
  );
});

test('what toText writes, fromText reads', () => {
  fc.assert(
    fc.property(rational, (a) => {
      const text = exact.toText(a);
      if (text.length <= 40) expect(exact.fromText(text)).toEqual(a);
      else expect(exact.fromText(text)).toBeUndefined();
    }),
    { numRuns: 2000 },
  );
});

test('a float is the value itself to within a part in 2^52', () => {
  const tally = new Tally({ nothing: 2, something: 450 });
  fc.assert(
    fc.property(rational, (a) => {
      const float = exact.toNumber(a);
      const [num, den] = parts(a);
      tally.met(num === 0n ? 'nothing' : 'something');
      if (num === 0n) {
        expect(float).toBe(0);
        return;
      }
      // The float's own fraction, exactly: halving and doubling never round.
      let [mantissa, power] = [float, 0];
      for (; !Number.isInteger(mantissa); power++) mantissa *= 2;
      const error = BigInt(mantissa) * den - num * 2n ** BigInt(power);
      const size = (num < 0n ? -num : num) * 2n ** BigInt(power);
      expect((error < 0n ? -error : error) * 2n ** 52n <= size).toBe(true);
    }),
    { numRuns: 500 },
  );
  tally.enough();
});

test('decimals are read exactly', () => {
  expect(exact.toText(exact.fromText('-2.45') as Rational)).toBe('-49/20');
  expect(exact.toText(exact.fromText(' +0.10 ') as Rational)).toBe('1/10');
  expect(exact.toText(exact.fromText('6/4') as Rational)).toBe('3/2');
});

test.each(['', 'three', '1/0', '1.2.3', '--1', '1e9', '0x10', '1/-2', '.5', '9'.repeat(41)])(
  'reads no number from %j',
  (text) => expect(exact.fromText(text)).toBeUndefined(),
);

test('there is no fraction over nothing', () => {
  expect(() => exact.fraction(1, 0)).toThrow(RangeError);
});

test('a float64 becomes exactly what it is written as', () => {
  expect(exact.toText(exact.fromNumber(0.1))).toBe('1/10');
  expect(exact.toText(exact.fromNumber(1e-7))).toBe('1/10000000');
  expect(exact.toText(exact.fromNumber(-2.5e21))).toBe('-2500000000000000000000');
  expect(() => exact.fromNumber(Number.NaN)).toThrow(RangeError);
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
      expect(exact.toNumber(exact.fromNumber(value))).toBeCloseTo(value, 12);
    }),
  );
});
