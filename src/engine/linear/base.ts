import { Dictionary } from './dictionary.ts';
import { type Int, absolute, combine, gcd, lcm, multiply, quotient } from './integer.ts';
import type { LinearForm, Row, Vector } from './programme.ts';

/** A form, less what it holds of columns beyond a base's: times · form = Σ coef[j] · free_j. */
export interface Reduced {
  readonly coef: readonly Int[];
  readonly times: Int;
}

/**
 * The homogeneous equalities that many programmes begin with, solved once: which columns stay
 * free, and every other column as a form in them. A train's meshes are its base; each
 * question adds a few rows of its own.
 */
export class Base {
  readonly columns: number;
  readonly rows: readonly Row[];
  /** The columns that stay free coordinates. */
  readonly free: readonly number[];
  // Column c = Σ_j kernel[c][j] · free_j where the rows hold; and for each row r that is not
  // redundant, it has also recovery[r][c] times what r's form comes to.
  private readonly kernel: Matrix;
  private readonly recovery: Matrix;
  private readonly reductions = new WeakMap<LinearForm, Reduced>();

  constructor(columns: number, rows: readonly Row[]) {
    this.columns = columns;
    this.rows = rows;
    const { dictionary, rowOf, residualAt } = eliminate(columns, rows);
    this.free = numbersTo(columns).filter((column) => rowOf[column] === undefined);
    const den = rowOf.reduce((common: Int, row) => {
      return row === undefined ? common : lcm(common, dictionary.scale[row] as Int);
    }, 1);
    // What den · column c holds of a coordinate.
    const cell = (column: number, coordinate: number): Int => {
      const row = rowOf[column];
      if (row === undefined) return column === coordinate ? den : 0;
      const factor = quotient(den, dictionary.scale[row] as Int);
      return multiply(dictionary.cells[row]?.[coordinate] as Int, factor);
    };
    const all = numbersTo(columns);
    this.kernel = lowest(
      all.map((column) => this.free.map((free) => cell(column, free))),
      den,
    );
    this.recovery = lowest(
      residualAt.map((at) => all.map((column) => (at === undefined ? 0 : cell(column, at)))),
      den,
    );
  }

  /** `form` in the free coordinates; remembered for each form. */
  reduce(form: LinearForm): Reduced {
    const known = this.reductions.get(form);
    if (known) return known;
    const coef: Int[] = this.free.map(() => 0);
    for (let k = 0; k < form.at.length; k++) {
      const kernel = this.kernel.rows[form.at[k] as number];
      if (!kernel) continue; // a column beyond the base's
      const weight = form.coef[k] as Int;
      for (let j = 0; j < coef.length; j++) {
        coef[j] = combine(1, coef[j] as Int, weight, kernel[j] as Int);
      }
    }
    const common = coef.reduce(gcd, this.kernel.den);
    const reduced = {
      coef: coef.map((c) => quotient(c, common)),
      times: quotient(this.kernel.den, common),
    };
    this.reductions.set(form, reduced);
    return reduced;
  }

  /** Every column's value from the values of the free ones, over one denominator. */
  expand(free: readonly Int[], den: Int): Vector {
    if (this.rows.length === 0) return { nums: free, den }; // every column is free
    const nums = this.kernel.rows.map((kernel) => dot(kernel, free));
    return { nums, den: multiply(den, this.kernel.den) };
  }

  /**
   * Multipliers y with Σ y·row = `gradient` for the base's own rows. The gradient must vanish
   * on every motion that the base allows; a redundant row gets 0.
   */
  multipliers(gradient: readonly Int[], den: Int): Vector {
    // Along the motions the gradient is nothing, so it is what it makes of the residuals.
    const nums = this.recovery.rows.map((recovery) => dot(recovery, gradient));
    return { nums, den: multiply(den, this.recovery.den) };
  }
}

interface Matrix {
  readonly rows: readonly (readonly Int[])[];
  readonly den: Int;
}

// The same numbers over the smallest denominator.
function lowest(rows: readonly (readonly Int[])[], den: Int): Matrix {
  let common = den;
  for (const row of rows) {
    for (let k = 0; k < row.length && common !== 1; k++) common = gcd(common, row[k] as Int);
  }
  if (common === 1) return { rows, den };
  return {
    rows: rows.map((row) => row.map((n) => quotient(n, common))),
    den: quotient(den, common),
  };
}

// Exchanges each row's residual with a column: which dictionary row then gives which column,
// and which coordinate each row's residual became (none for a row that others imply).
function eliminate(columns: number, rows: readonly Row[]) {
  const cells = rows.map((row) => {
    const cell: Int[] = Array.from({ length: columns + 1 }, () => 0);
    row.at.forEach((column, k) => (cell[column] = row.coef[k] as Int));
    return cell;
  });
  const dictionary = new Dictionary(columns, cells);
  const rowOf: (number | undefined)[] = Array.from({ length: columns });
  const residualAt = rows.map((_, i) => {
    const column = smallestCell(dictionary.cells[i] as Int[], rowOf);
    if (column === undefined) return undefined;
    dictionary.pivot(i, column);
    rowOf[column] = i;
    return column;
  });
  return { dictionary, rowOf, residualAt };
}

// The untaken column of the smallest cell that is not zero: small pivots keep numbers small.
function smallestCell(cells: readonly Int[], taken: readonly (number | undefined)[]) {
  let best: number | undefined;
  let least: Int = 0;
  for (let column = taken.length - 1; column >= 0; column--) {
    const size = absolute(cells[column] as Int);
    if (size === 0 || taken[column] !== undefined) continue;
    if (best === undefined || size < least) [best, least] = [column, size];
  }
  return best;
}

function dot(a: readonly Int[], b: readonly Int[]): Int {
  let sum: Int = 0;
  for (let k = 0; k < a.length; k++) {
    const weight = b[k] as Int;
    if (weight !== 0) sum = combine(1, sum, a[k] as Int, weight);
  }
  return sum;
}

function numbersTo(count: number): number[] {
  return Array.from({ length: count }, (_, k) => k);
}
