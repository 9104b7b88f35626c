import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  dot,
  form,
  programmes,
  proved,
  safe,
  small,
  sparse,
  wide,
} from '../../../test/programmes.ts';
import { Base } from './base.ts';
import type { Int } from './integer.ts';
import {
  entry,
  type LinearForm,
  type Programme,
  programmeText,
  type Row,
  type Solution,
} from './programme.ts';
import { toNumber, toText } from './rational.ts';
import { extremes, solve } from './simplex.ts';
import { Tally } from '../../../test/tally.ts';

test.each([
  [
    'Beale, Cycling in the dual simplex algorithm, Naval Research Logistics Quarterly 2 (1955), as textbooks print it, from memory',
    [
      [-3, 4],
      [150, 1],
      [-1, 50],
      [6, 1],
    ],
    [
      [[1, 4], [-60, 1], [-1, 25], [9, 1], 0],
      [[1, 2], [-90, 1], [-1, 50], [3, 1], 0],
      [0, 0, [1, 1], 0, 1],
    ],
    '-1/20',
  ],
  [
    'Kuhn, printed by Balinski and Tucker, SIAM Review 11 (1969), from memory',
    [
      [-2, 1],
      [-3, 1],
      [1, 1],
      [12, 1],
    ],
    [
      [[-2, 1], [-9, 1], [1, 1], [9, 1], 0],
      [[1, 3], [1, 1], [-1, 3], [-2, 1], 0],
      [[2, 1], [3, 1], [-1, 1], [-12, 1], 2],
    ],
    '-2',
  ],
] as const)('ends where other pivot rules cycle: %s', (_, objective, limits, best) => {
  const fractions = (list: readonly (0 | readonly [number, number])[]) =>
    list.map((f) => (f === 0 ? 0 : (300 * f[0]) / f[1]));
  // Rows are multiplied by 300 to be whole; so is the objective.
  const rows = limits.map((limit) => {
    const coef = fractions(limit.slice(0, 4) as (0 | [number, number])[]);
    return atMost(coef, 300 * (limit[4] as number));
  });
  const programme = {
    columns: 4,
    rows: [...rows, ...positive(4)],
    minimise: form(fractions(objective)),
  };
  const solution = checked(programme);
  expect(solution.state).toBe('optimal');
  if (solution.state !== 'optimal') return;
  expect(toText(worthOf(programme, solution.point, 300))).toBe(best);
});

test.each([2, 3, 5, 8])(
  'the cube in %i dimensions of Klee and Minty, How good is the simplex algorithm? (1972), in the form of Chvátal, Linear Programming (1983), from memory',
  (n) => {
    // Maximise Σ 10^(n-j) x_j with 2 Σ_{j<i} 10^(i-j) x_j + x_i ≤ 100^(i-1): the best is 100^(n-1).
    const rows = Array.from({ length: n }, (_, i) => {
      const coef = Array.from({ length: n }, (__, j) =>
        j < i ? 2 * 10 ** (i - j) : j === i ? 1 : 0,
      );
      return atMost(coef, 100 ** i);
    });
    const objective = Array.from({ length: n }, (_, j) => -(10 ** (n - 1 - j)));
    const programme = { columns: n, rows: [...rows, ...positive(n)], minimise: form(objective) };
    const solution = checked(programme);
    expect(solution.state).toBe('optimal');
    if (solution.state !== 'optimal') return;
    expect(toNumber(worthOf(programme, solution.point, 1))).toBe(-(100 ** (n - 1)));
  },
);

describe('every solution proves itself, whatever the programme', () => {
  const tally = new Tally({ optimal: 600, infeasible: 600, unbounded: 600 });
  test.each([
    ['small', programmes(6, sparse, small)],
    ['degenerate', programmes(7, fc.integer({ min: -1, max: 1 }), fc.constant(0))],
    [
      'nearly degenerate',
      programmes(6, fc.integer({ min: -2, max: 2 }), fc.constantFrom(0, 0, 0, 1)),
    ],
    ['with numbers beyond float64', programmes(4, wide, wide)],
  ])('%s programmes', (_, arbitrary) => {
    const property = fc.property(arbitrary, ({ meshes, own, width, minimise }) => {
      const programme = { columns: width, rows: [...meshes, ...own], minimise };
      const plain = checked(programme);
      // The same programme in three cuts: no base, all its equalities at the start as the
      // base, and a base that does not know the last column.
      const based = checked(programme, meshes);
      expect(based.state, programmeText(programme)).toBe(plain.state);
      if (plain.state === 'optimal' && based.state === 'optimal') {
        expect(worthOf(programme, based.point, 1)).toEqual(worthOf(programme, plain.point, 1));
      }
      const known = meshes.filter((row) => row.at.every((column) => column < width - 1));
      const extended = {
        ...programme,
        rows: [...known, ...meshes.filter((row) => !known.includes(row)), ...own],
      };
      expect(checked(extended, known, width - 1).state, programmeText(extended)).toBe(plain.state);
      tally.met(plain.state);
    });
    fc.assert(property, { numRuns: 1000 });
  });
  test('and all three outcomes were met', () => tally.enough());
});

describe('the extremes of several forms over the same rows', () => {
  test('are the least and the greatest value, or no limit', () => {
    const rows: Row[] = [
      { at: [0, 1], coef: [1, 1], sense: '=', right: 10 },
      { at: [0], coef: [1], sense: '>=', right: 3 },
    ];
    const [first, second] = extremes(
      2,
      rows,
      [
        { at: [0], coef: [1] },
        { at: [1], coef: [2] },
      ],
      new Base(2, []),
    );
    const states = [first, second].map((ends) => [
      ends?.least.solution.state,
      ends?.greatest.solution.state,
    ]);
    expect(states).toEqual([
      ['optimal', 'unbounded'],
      ['unbounded', 'optimal'],
    ]);
    const greatest = second?.greatest.solution;
    expect(greatest?.state === 'optimal' && toText(entry(greatest.point, 1))).toBe('7');
  });

  // One table answers all the forms, one after the other: none may spoil the next.
  test('are what each form alone comes to, each with its proof', () => {
    const tally = new Tally({ optimal: 600, infeasible: 600, unbounded: 600 });
    const property = fc.property(
      programmes(5, sparse, small),
      fc.array(fc.array(sparse, { minLength: 5, maxLength: 5 }), { minLength: 1, maxLength: 4 }),
      ({ meshes, own, width }, objectives) => {
        const rows = [...meshes, ...own];
        const forms = objectives.map((coefs) => form(coefs.slice(0, width)));
        const base = new Base(width, meshes);
        extremes(width, rows, forms, base).forEach(({ least, greatest }, k) => {
          const { at, coef } = forms[k] as LinearForm;
          const opposite = { at, coef: coef.map((c) => (typeof c === 'bigint' ? -c : 0 - c)) };
          for (const [bound, minimise] of [
            [least, { at, coef }],
            [greatest, opposite],
          ] as const) {
            expect(bound.programme).toEqual({ columns: width, rows, minimise });
            proved(bound.programme, bound.solution);
            const alone = solve(bound.programme, base);
            expect(bound.solution.state, programmeText(bound.programme)).toBe(alone.state);
            tally.met(alone.state);
          }
        });
      },
    );
    fc.assert(property, { numRuns: 1000 });
    tally.enough();
  });
});

function atMost(coef: readonly number[], most: number): Row {
  return { ...form(coef.map((c) => 0 - c)), sense: '>=', right: 0 - most };
}

function positive(columns: number): Row[] {
  return Array.from({ length: columns }, (_, c) => ({ at: [c], coef: [1], sense: '>=', right: 0 }));
}

function worthOf(
  { minimise }: Programme,
  point: { nums: readonly Int[]; den: Int },
  scale: number,
) {
  const sum = dot(minimise, point.nums);
  return entry({ nums: [safe(sum)], den: safe(BigInt(point.den) * BigInt(scale)) }, 0);
}

/** The solution, its proof multiplied out. */
function checked(
  programme: Programme,
  meshes: readonly Row[] = [],
  known = programme.columns,
): Solution {
  const solution = solve(programme, new Base(known, meshes));
  proved(programme, solution);
  return solution;
}
