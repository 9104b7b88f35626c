import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as int from './integer.ts';
import type { Int } from './integer.ts';

// Small, on the edge of the safe integers, and far beyond it: the three regimes of `Int`.
const whole = fc.oneof(
  fc.bigInt({ min: -20n, max: 20n }),
  fc.bigInt({ min: -5n, max: 5n }).map((near) => BigInt(Number.MAX_SAFE_INTEGER) + near),
  fc.bigInt({ min: -5n, max: 5n }).map((near) => -BigInt(Number.MAX_SAFE_INTEGER) + near),
  fc.bigInt({ min: -(2n ** 40n), max: 2n ** 40n }),
  fc.bigInt({ min: -(2n ** 200n), max: 2n ** 200n }),
);

/** The one form that an `Int` of this value may have. */
function canonical(big: bigint): Int {
  const small = Number(big);
  return Number.isSafeInteger(small) ? small : big;
}

// vitest's toBe tells 0 from -0, and a number from a bigint of the same value.
function agrees(property: (...bigs: bigint[]) => [found: Int, wanted: bigint]): void {
  fc.assert(
    fc.property(whole, whole, whole, whole, (...bigs) => {
      const [found, wanted] = property(...bigs);
      expect(found).toBe(canonical(wanted));
    }),
    { numRuns: 2000 },
  );
}

describe('whole numbers agree with BigInt and keep their one form', () => {
  test('combine', () =>
    agrees((p, a, q, b) => {
      const [p1, a1, q1, b1] = [p, a, q, b].map(canonical) as [Int, Int, Int, Int];
      return [int.combine(p1, a1, q1, b1), p! * a! + q! * b!];
    }));
  test('multiply', () => agrees((a, b) => [int.multiply(canonical(a!), canonical(b!)), a! * b!]));
  test('add', () => agrees((a, b) => [int.add(canonical(a!), canonical(b!)), a! + b!]));
  test('negate', () => agrees((a) => [int.negate(canonical(a!)), -a!]));
  test('absolute', () => agrees((a) => [int.absolute(canonical(a!)), a! < 0n ? -a! : a!]));
  test('quotient of a product', () =>
    agrees((a, b) => {
      const divisor = b === 0n ? 7n : b!;
      return [int.quotient(canonical(a! * divisor), canonical(divisor)), a!];
    }));
  test('gcd', () => agrees((a, b) => [int.gcd(canonical(a!), canonical(b!)), euclid(a!, b!)]));
  test('lcm', () =>
    agrees((a, b) => {
      const [m, n] = [magnitude(a!) + 1n, magnitude(b!) + 1n];
      return [int.lcm(canonical(m), canonical(n)), (m * n) / euclid(m, n)];
    }));
  test('sign', () => agrees((a) => [int.sign(canonical(a!)), a! > 0n ? 1n : a! < 0n ? -1n : 0n]));
});

test('a quotient that is not whole is a broken promise', () => {
  expect(() => int.quotient(7, 2)).toThrow('2 does not divide 7');
  expect(() => int.quotient(2n ** 70n + 1n, 2)).toThrow('does not divide');
  expect(() => int.quotient(5, 0)).toThrow();
});

function euclid(a: bigint, b: bigint): bigint {
  return b === 0n ? magnitude(a) : euclid(b, a % b);
}

function magnitude(a: bigint): bigint {
  return a < 0n ? -a : a;
}
