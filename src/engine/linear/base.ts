import { Dictionary } from './dictionary.ts';
import { type Int, absolute, combine, gcd, lcm, multiply, quotient } from './integer.ts';
import type { Form, Row, Vector } from './programme.ts';

/** A form in the coordinates that a base leaves free: times · form = Σ coef[j] · free_j. */
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
  private readonly dictionary: Dictionary;
  private readonly rowOf: (number | undefined)[]; // column -> the dictionary row that gives it
  private readonly residualAt: (number | undefined)[]; // base row -> the coordinate it became
  private readonly reductions = new WeakMap<Form, Reduced>();

  constructor(columns: number, rows: readonly Row[]) {
    this.columns = columns;
    this.rows = rows;
    this.rowOf = Array.from({ length: columns });
    this.residualAt = rows.map(() => undefined);
    const cells = rows.map((row) => {
      const cell: Int[] = Array.from({ length: columns + 1 }, () => 0);
      row.at.forEach((column, k) => (cell[column] = row.coef[k] as Int));
      return cell;
    });
    const dictionary = new Dictionary(columns, cells);
    const taken = new Set<number>();
    rows.forEach((_, i) => {
      const column = smallestCell(dictionary.cells[i] as Int[], columns, taken);
      if (column === undefined) return; // the row says what others say already
      dictionary.pivot(i, column);
      taken.add(column);
      this.rowOf[column] = i;
      this.residualAt[i] = column;
    });
    this.dictionary = dictionary;
    this.free = Array.from({ length: columns }, (_, c) => c).filter((c) => !taken.has(c));
  }

  /** `form`, less what it holds of columns beyond the base's, in the free coordinates. */
  reduce(form: Form): Reduced {
    const known = this.reductions.get(form);
    if (known) return known;
    let times: Int = 1;
    for (const column of form.at) times = lcm(times, this.scaleOf(column));
    const coef: Int[] = this.free.map(() => 0);
    form.at.forEach((column, k) => {
      if (column >= this.columns) return;
      const weight = multiply(form.coef[k] as Int, quotient(times, this.scaleOf(column)));
      for (let j = 0; j < coef.length; j++) {
        coef[j] = combine(1, coef[j] as Int, weight, this.cell(column, this.free[j] as number));
      }
    });
    const common = coef.reduce(gcd, times);
    const reduced = { coef: coef.map((c) => quotient(c, common)), times: quotient(times, common) };
    this.reductions.set(form, reduced);
    return reduced;
  }

  /** Every column's value from the values of the free ones, over one denominator. */
  expand(free: readonly Int[], den: Int): Vector {
    let common: Int = 1;
    for (let c = 0; c < this.columns; c++) common = lcm(common, this.scaleOf(c));
    const nums: Int[] = [];
    for (let c = 0; c < this.columns; c++) {
      let sum: Int = 0;
      this.free.forEach((f, j) => (sum = combine(1, sum, this.cell(c, f), free[j] as Int)));
      nums.push(multiply(sum, quotient(common, this.scaleOf(c))));
    }
    return { nums, den: multiply(den, common) };
  }

  /**
   * Multipliers y with Σ y·row = `gradient` for the base's own rows. The gradient must vanish
   * on every motion that the base allows; a redundant row gets 0.
   */
  multipliers(gradient: readonly Int[], den: Int): Vector {
    // With x = N·free + M·residuals, gradient·x = (gradient·M)·residuals: so y = gradient·M.
    let common: Int = 1;
    for (let c = 0; c < this.columns; c++) {
      if (gradient[c] !== 0) common = lcm(common, this.scaleOf(c));
    }
    const weights = gradient.slice(0, this.columns).map((g, c) => {
      return g === 0 ? 0 : multiply(g as Int, quotient(common, this.scaleOf(c)));
    });
    const nums = this.residualAt.map((coordinate) => {
      let sum: Int = 0;
      if (coordinate === undefined) return sum;
      weights.forEach((w, c) => {
        if (w !== 0) sum = combine(1, sum, w, this.cell(c, coordinate));
      });
      return sum;
    });
    return { nums, den: multiply(den, common) };
  }

  private scaleOf(column: number): Int {
    const row = this.rowOf[column]; // undefined, too, for columns beyond the base's
    return row === undefined ? 1 : (this.dictionary.scale[row] as Int);
  }

  // How much of `coordinate` there is in scaleOf(column) · column.
  private cell(column: number, coordinate: number): Int {
    const row = this.rowOf[column];
    if (row === undefined) return column === coordinate ? 1 : 0;
    return this.dictionary.cells[row]?.[coordinate] as Int;
  }
}

// The column of the smallest cell that is not zero: small pivots keep the numbers small.
function smallestCell(cells: readonly Int[], width: number, taken: Set<number>) {
  let best: number | undefined;
  for (let column = width - 1; column >= 0; column--) {
    if (taken.has(column) || cells[column] === 0) continue;
    const size = absolute(cells[column] as Int);
    if (best === undefined || size < absolute(cells[best] as Int)) best = column;
  }
  return best;
}
