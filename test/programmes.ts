import fc from 'fast-check';
import { expect } from 'vitest';
import {
  type LinearForm,
  type Int,
  type Programme,
  programmeText,
  type Row,
  type Solution,
} from '../src/engine/linear/index.ts';

/** Coefficients and right sides by chance, from a few small whole numbers to many digits. */
export const small = fc.integer({ min: -3, max: 3 });
export const sparse = fc.oneof(
  { weight: 2, arbitrary: fc.constant(0) },
  { weight: 3, arbitrary: small },
);
export const wide = fc.oneof(
  sparse,
  fc.integer({ min: -1000, max: 1000 }),
  fc.bigInt(-(2n ** 70n), 2n ** 70n).map(safe),
);

/** Programmes of up to `columns` columns; with `right` zero throughout, degenerate ones. */
export function programmes(
  columns: number,
  coefficient: fc.Arbitrary<Int>,
  right: fc.Arbitrary<Int>,
) {
  return fc.integer({ min: 1, max: columns }).chain((width) => {
    const coefs = fc.array(coefficient, { minLength: width, maxLength: width });
    const row = fc
      .tuple(coefs, fc.constantFrom('=' as const, '>=' as const, '>=' as const), right)
      .map(([coef, sense, bound]): Row => ({ ...form(coef), sense, right: bound }));
    const base = fc.array(coefs, { maxLength: 3 });
    return fc
      .tuple(base, fc.array(row, { maxLength: width + 4 }), coefs)
      .map(([meshes, rows, objective]) => ({
        meshes: meshes.map((coef): Row => ({ ...form(coef), sense: '=', right: 0 })),
        own: rows,
        width,
        minimise: form(objective),
      }));
  });
}

/** The form with these coefficients, a column each. */
export function form(coefs: readonly Int[]): LinearForm {
  const at = [...coefs.keys()].filter((column) => coefs[column] !== 0);
  return { at, coef: at.map((column) => coefs[column] as Int) };
}

/**
 * Multiplies out the proof that a solution carries: in BigInt, row by row, and with no code of
 * the engine's. Fails the test where it is none.
 */
export function proved(programme: Programme, solution: Solution): void {
  const text = programmeText(programme);
  if (solution.state !== 'infeasible') {
    const { nums, den } = solution.point;
    expect(den > 0, text).toBe(true);
    for (const row of programme.rows) {
      const excess = dot(row, nums) - BigInt(row.right) * BigInt(den);
      expect(row.sense === '=' ? excess === 0n : excess >= 0n, text).toBe(true);
    }
  }
  if (solution.state === 'unbounded') {
    for (const row of programme.rows) {
      const change = dot(row, solution.ray.nums);
      expect(row.sense === '=' ? change === 0n : change >= 0n, text).toBe(true);
    }
    expect(solution.ray.den > 0 && dot(programme.minimise, solution.ray.nums) < 0n, text).toBe(
      true,
    );
    return;
  }
  // Prices: Σ y·row is the objective (or nothing), y ≥ 0 on every ≥ row, and Σ y·right is the
  // optimum (or more than nothing).
  const { nums, den } = solution.state === 'optimal' ? solution.prices : solution.proof;
  expect(den > 0 && nums.length === programme.rows.length, text).toBe(true);
  const sums = Array.from({ length: programme.columns }, () => 0n);
  let worth = 0n;
  programme.rows.forEach((row, r) => {
    const price = BigInt(nums[r] as Int);
    expect(row.sense === '=' || price >= 0n, text).toBe(true);
    row.at.forEach(
      (column, k) => (sums[column] = (sums[column] as bigint) + price * BigInt(row.coef[k] as Int)),
    );
    worth += price * BigInt(row.right);
  });
  if (solution.state === 'infeasible') {
    expect(sums.every((sum) => sum === 0n) && worth > 0n, text).toBe(true);
    return;
  }
  const { minimise } = programme;
  minimise.at.forEach(
    (column, k) =>
      (sums[column] = (sums[column] as bigint) - BigInt(den) * BigInt(minimise.coef[k] as Int)),
  );
  expect(
    sums.every((sum) => sum === 0n),
    text,
  ).toBe(true);
  expect(worth * BigInt(solution.point.den), text).toBe(
    dot(minimise, solution.point.nums) * BigInt(den),
  );
}

export function dot({ at, coef }: LinearForm, nums: readonly Int[]): bigint {
  return at.reduce(
    (sum, column, k) => sum + BigInt(coef[k] as Int) * BigInt(nums[column] as Int),
    0n,
  );
}

/** The one form that a whole number has in the engine. */
export function safe(big: bigint): Int {
  const near = Number(big);
  return Number.isSafeInteger(near) ? near : big;
}
