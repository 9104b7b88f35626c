/**
 * A whole number of any size. It is a `number` where it is a safe integer and a `bigint`
 * only where it is not, so that equal values are always `===`.
 */
export type Int = number | bigint;

const LIMIT = Number.MAX_SAFE_INTEGER;

/** The canonical form of `big`: a `number` if it is safe as one. */
export function demote(big: bigint): Int {
  return big >= -9007199254740991n && big <= 9007199254740991n ? Number(big) : big;
}

/** p·a + q·b, exactly: the one operation that pivoting needs. */
export function combine(p: Int, a: Int, q: Int, b: Int): Int {
  if (typeof p === 'number' && typeof a === 'number') {
    if (typeof q === 'number' && typeof b === 'number') {
      const left = p * a;
      const right = q * b;
      const sum = left + right;
      // A product of two safe integers that rounds is never smaller than the limit, so
      // three comparisons are proof that nothing was rounded. (+ 0 turns -0 into 0.)
      if (Math.abs(left) <= LIMIT && Math.abs(right) <= LIMIT && Math.abs(sum) <= LIMIT) {
        return sum + 0;
      }
    }
  }
  return demote(BigInt(p) * BigInt(a) + BigInt(q) * BigInt(b));
}

export function multiply(a: Int, b: Int): Int {
  return combine(a, b, 0, 0);
}

export function add(a: Int, b: Int): Int {
  return combine(1, a, 1, b);
}

export function negate(a: Int): Int {
  return typeof a === 'number' ? 0 - a : demote(-a);
}

export function absolute(a: Int): Int {
  return a < 0 ? negate(a) : a;
}

/** -1, 0 or 1. */
export function sign(a: Int): -1 | 0 | 1 {
  return a > 0 ? 1 : a < 0 ? -1 : 0;
}

/** a / b where b is known to divide a; throws where it does not. */
export function quotient(a: Int, b: Int): Int {
  if (typeof a === 'number' && typeof b === 'number') {
    const result = a / b;
    if (!Number.isInteger(result)) throw new Error(`${b} does not divide ${a}`);
    return result + 0;
  }
  const [dividend, divisor] = [BigInt(a), BigInt(b)];
  if (dividend % divisor !== 0n) throw new Error(`${b} does not divide ${a}`);
  return demote(dividend / divisor);
}

/** The greatest common divisor, never negative; gcd(0, 0) is 0. */
export function gcd(a: Int, b: Int): Int {
  while (typeof a === 'bigint' || typeof b === 'bigint') {
    if (b === 0) return absolute(a);
    [a, b] = [b, demote(BigInt(a) % BigInt(b))];
  }
  let larger = Math.abs(a);
  let smaller = Math.abs(b);
  if (larger <= SMALL && smaller <= SMALL) return gcdOfSmall(larger, smaller);
  while (smaller !== 0) {
    const rest = larger % smaller;
    larger = smaller;
    smaller = rest;
  }
  return larger;
}

const SMALL = 2 ** 31 - 1;

// Nearly all are so small that the processor can divide them as they are: the rest is what costs.
function gcdOfSmall(a: number, b: number): number {
  let larger = a | 0;
  let smaller = b | 0;
  while (smaller !== 0) {
    const rest = (larger % smaller) | 0;
    larger = smaller;
    smaller = rest;
  }
  return larger;
}

/** The least common multiple of two positive integers. */
export function lcm(a: Int, b: Int): Int {
  return multiply(quotient(a, gcd(a, b)), b);
}
