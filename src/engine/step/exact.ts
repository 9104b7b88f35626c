import {
  fraction,
  fromNumber,
  minus,
  ONE,
  opposite,
  over,
  plus,
  type Rational,
  signOf,
  times,
  toNumber,
  ZERO,
} from '../linear/index.ts';
import { GRIPS, LEAST, MOST } from './boxed.ts';
import type { Coupling } from './coupling.ts';

/**
 * The problem of `BoxedPivots` in fractions, for the step in which rounding hides what is 0: the
 * same pivots, which are proved to end, on numbers that are exact. Seldom needed, and slow.
 */
export class ExactPivots {
  private readonly slips: readonly (readonly Rational[])[];
  private readonly mutual: readonly (readonly Rational[])[];
  private readonly roots: readonly number[];

  constructor({ exact: { slips, d } }: Coupling) {
    this.slips = slips;
    this.roots = d.map((one) => Math.sqrt(toNumber(one)));
    const answers = slips.map((row) => row.map((part, i) => over(part, d[i] as Rational)));
    this.mutual = slips.map((row) => answers.map((answer) => dot(row, answer)));
  }

  /** As `BoxedPivots.solve`, with the coordinates `u` that the train would have without its devices. */
  solve(u: Float64Array, least: Float64Array, most: Float64Array, into: Uint8Array): void {
    const active = [...into.keys()].filter((k) => (most[k] as number) > (least[k] as number));
    const bounded = active.filter((k) => most[k] !== Infinity);
    // Where the pair of each upper bound stands: behind those of the lower ones.
    const upper = new Map(bounded.map((k, b) => [k, active.length + b]));
    const freely = [...u].map((it, i) => fromNumber(it / (this.roots[i] as number)));
    const low = [...least].map((value) => fromNumber(value));
    const size = active.length + bounded.length;
    const table = square(size, () => ZERO).map((row) => [...row, ZERO]);
    for (const [i, k] of active.entries()) {
      const row = table[i] as Rational[];
      const mutual = this.mutual[k] as readonly Rational[];
      for (const [j, other] of active.entries()) row[j] = mutual[other] as Rational;
      row[size] = minus(dot(mutual, low), dot(this.slips[k] as readonly Rational[], freely));
      const up = upper.get(k);
      if (up === undefined) continue;
      row[up] = ONE;
      const above = table[up] as Rational[];
      above[i] = fraction(-1);
      above[size] = minus(fromNumber(most[k] as number), low[k] as Rational);
    }
    const turned = pivoted(table, size);
    into.fill(LEAST);
    for (const [i, k] of active.entries()) {
      const up = upper.get(k);
      if (turned[i]) into[k] = up !== undefined && turned[up] ? MOST : GRIPS;
    }
  }
}

// Which pairs have turned when no row is negative.
function pivoted(table: Rational[][], size: number): boolean[] {
  const turned = Array.from({ length: size }, () => false);
  const numbers = [...turned.keys()];
  const cell = (i: number, j: number) => (table[i] as Rational[])[j] as Rational;
  const turn = (k: number) => (turned[k] = !turned[k]);
  for (;;) {
    const k = numbers.find((i) => signOf(cell(i, size)) < 0);
    if (k === undefined) return turned;
    if (signOf(cell(k, k)) > 0) {
      exchange(table, k, k);
      turn(k);
      continue;
    }
    const l = numbers.find((j) => signOf(cell(k, j)) > 0);
    if (l === undefined) throw new Error('a step without a solution: its bounds are not bounds');
    exchange(table, k, l);
    exchange(table, l, k);
    [table[k], table[l]] = [table[l] as Rational[], table[k] as Rational[]];
    for (const row of table) [row[k], row[l]] = [row[l] as Rational, row[k] as Rational];
    turn(k);
    turn(l);
  }
}

function exchange(table: Rational[][], at: number, column: number): void {
  const row = table[at] as Rational[];
  const by = over(ONE, row[column] as Rational);
  table[at] = row.map((value, j) => (j === column ? by : opposite(times(value, by))));
  const made = table[at];
  for (const [i, other] of table.entries()) {
    const factor = other[column] as Rational;
    if (i === at || signOf(factor) === 0) continue;
    table[i] = other.map((value, j) => {
      const add = times(factor, made[j] as Rational);
      return j === column ? add : plus(value, add);
    });
  }
}

function square<T>(size: number, cell: () => T): T[][] {
  return Array.from({ length: size }, () => Array.from({ length: size }, cell));
}

function dot(a: readonly Rational[], b: readonly Rational[]): Rational {
  return a.reduce((sum, value, k) => plus(sum, times(value, b[k] as Rational)), ZERO);
}
