import { describe, expect, test } from 'vitest';
import { Base, type Programme, type Solution, solve, type Vector } from '../linear/index.ts';
import { areIndependent, doubtOf, prove, spansFreedom } from './index.ts';

// Minimise x + y where x + 2y ≥ 4, x − y = 1: at (2, 1), of price 2/3 and 1/3.
const programme: Programme = {
  columns: 2,
  rows: [
    { at: [0, 1], coef: [1, 2], sense: '>=', right: 4 },
    { at: [0, 1], coef: [1, -1], sense: '=', right: 1 },
  ],
  minimise: { at: [0, 1], coef: [1, 1] },
};
const impossible: Programme = {
  ...programme,
  rows: [...programme.rows, { at: [0], coef: [-1], sense: '>=', right: 0 }],
};
const endless: Programme = { ...programme, minimise: { at: [0], coef: [-1] } };
const none = new Base(2, []);

// The same vector with one more in entry k.
function spoilt({ nums, den }: Vector, k: number): Vector {
  return { nums: nums.map((n, at) => (at === k ? Number(n) + 1 : n)), den };
}

describe('what is proved passes', () => {
  test.each([
    ['optimal', programme],
    ['infeasible', impossible],
    ['unbounded', endless],
  ])('%s', (state, asked) => {
    const solution = solve(asked, none);
    expect(solution.state).toBe(state);
    expect(doubtOf(asked, solution)).toBeUndefined();
    expect(() => prove(asked, solution)).not.toThrow();
  });
});

describe('what is not proved is named', () => {
  const solved = solve(programme, none) as Extract<Solution, { state: 'optimal' }>;
  test('a point off a row', () => {
    const doubt = doubtOf(programme, { ...solved, point: spoilt(solved.point, 0) });
    expect(doubt).toBe('row 1 does not hold');
  });
  test('prices that do not add up', () => {
    const doubt = doubtOf(programme, { ...solved, prices: spoilt(solved.prices, 1) });
    expect(doubt).toBe('column 0 does not balance');
  });
  test('a row that pulls', () => {
    const prices = { nums: [-1, 1], den: 1 };
    expect(doubtOf(programme, { ...solved, prices })).toBe('row 0 pulls where it can only push');
  });
  test('a point that is not the least', () => {
    const point = { nums: [3, 2], den: 1 };
    expect(doubtOf(programme, { ...solved, point })).toBe('the point and its prices disagree');
  });
  test('a denominator of nothing', () => {
    expect(doubtOf(programme, { ...solved, point: { ...solved.point, den: 0 } })).toBe(
      'the point is not a point',
    );
  });
  test('a refusal that comes to nothing', () => {
    const proof = { nums: [0, 0, 0], den: 1 };
    expect(doubtOf(impossible, { state: 'infeasible', proof })).toBe('the proof comes to nothing');
  });
  test('a ray that leaves a row, and one that gains nothing', () => {
    const { point, ray } = solve(endless, none) as Extract<Solution, { state: 'unbounded' }>;
    const leaves = doubtOf(endless, { state: 'unbounded', point, ray: spoilt(ray, 0) });
    expect(leaves).toBe('the ray leaves row 1');
    const still = { nums: [0, 0], den: 1 };
    expect(doubtOf(endless, { state: 'unbounded', point, ray: still })).toBe(
      'the ray gains nothing',
    );
  });
  test('a rounded product: numbers beyond 2^53 are multiplied whole', () => {
    const huge = 2 ** 53 - 1;
    const rows = [{ at: [0], coef: [huge], sense: '=', right: 0 } as const];
    const point = { nums: [1], den: 1 };
    const asked = { columns: 1, rows, minimise: { at: [], coef: [] } };
    expect(doubtOf(asked, { state: 'optimal', point, prices: { nums: [0], den: 1 } })).toBe(
      'row 0 does not hold',
    );
    const near = {
      columns: 2,
      rows: [{ at: [0, 1], coef: [huge, -huge], sense: '=', right: 1 } as const],
      minimise: { at: [], coef: [] },
    };
    const almost = { nums: [huge, huge], den: 1 };
    expect(doubtOf(near, { state: 'optimal', point: almost, prices: { nums: [0], den: 1 } })).toBe(
      'row 0 does not hold',
    );
  });
});

describe('independence', () => {
  const form = (...coef: number[]) => ({ at: coef.map((_, k) => k), coef });
  test('of forms', () => {
    expect(areIndependent(3, [form(1, 2, 3), form(0, 1, 1)])).toBe(true);
    expect(areIndependent(3, [form(1, 2, 3), form(0, 1, 1), form(1, 3, 4)])).toBe(false);
    expect(areIndependent(3, [])).toBe(true);
  });
  test('a kernel must be whole, and keep the rows', () => {
    const rows = [{ ...form(1, 1, 0), sense: '=' as const, right: 5 }];
    const swap = { nums: [1, -1, 0], den: 1 };
    const last = { nums: [0, 0, 1], den: 1 };
    expect(spansFreedom(3, rows, [swap, last])).toBe(true);
    expect(spansFreedom(3, rows, [swap])).toBe(false);
    expect(spansFreedom(3, rows, [swap, swap])).toBe(false);
    expect(() => spansFreedom(3, rows, [last, { nums: [1, 0, 0], den: 1 }])).toThrow(
      'breaks a row',
    );
  });
});
