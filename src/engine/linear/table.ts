import type { Base } from './base.ts';
import { Dictionary } from './dictionary.ts';
import { type Int, absolute, combine, lcm, multiply, negate, quotient } from './integer.ts';
import type { Form, Row, Solution, Vector } from './programme.ts';

/**
 * Rows and objectives of programmes with the same rows, in exchangeable coordinates.
 *
 * The method is least-index criss-cross (T. Terlaky, Optimization 16 (1985) 683-690): always
 * exchange the offender of least index. It needs no first phase and cannot cycle.
 */
export class Table {
  private readonly base: Base;
  private readonly own: readonly Row[]; // the programme's rows but for the base's
  private readonly forms: readonly Form[];
  private readonly dictionary: Dictionary; // the own rows' residuals, then the forms
  // What stands at each row and coordinate: own row r's residual as r, variable v as ~v.
  private readonly rowLabel: number[] = [];
  private readonly columnLabel: number[] = [];
  private lastPoint: Vector | undefined; // of the coordinates as they are

  constructor(columns: number, rows: readonly Row[], forms: readonly Form[], base: Base) {
    this.base = base;
    this.own = rows.slice(base.rows.length);
    this.forms = forms;
    const kept = base.free.length;
    const width = kept + columns - base.columns;
    const cells: Int[][] = [];
    const scale: Int[] = [];
    const enter = (form: Form, right: Int) => {
      const { coef, times } = base.reduce(form);
      const row = coef.slice();
      while (row.length < width) row.push(0);
      for (let k = 0; k < form.at.length; k++) {
        const beyond = (form.at[k] as number) - base.columns;
        if (beyond >= 0) row[kept + beyond] = multiply(times, form.coef[k] as Int);
      }
      row.push(negate(multiply(times, right)));
      this.rowLabel.push(cells.length);
      cells.push(row);
      scale.push(times);
    };
    for (const row of this.own) enter(row, row.right);
    for (const form of forms) enter(form, 0);
    for (let j = 0; j < width; j++) this.columnLabel.push(~j);
    this.dictionary = new Dictionary(width, cells, scale);
  }

  /** Finds some point where every row holds; returns the proof if there is none. */
  settle(): Solution | undefined {
    // Every equality's residual becomes a coordinate, which then stays at zero; and every
    // variable of which some inequality speaks becomes a row.
    for (let i = 0; i < this.own.length; i++) {
      if (this.own[i]?.sense !== '=') continue;
      const column = this.freeColumn(i);
      if (column !== undefined) this.exchange(i, column);
      else if (this.constant(i) > 0) return this.infeasible(i, -1);
      else if (this.constant(i) < 0) return this.infeasible(i, 1);
    }
    for (let i = 0; i < this.own.length; i++) {
      if (!this.isInequality(this.rowLabel[i] as number)) continue;
      const column = this.freeColumn(i);
      if (column !== undefined) this.exchange(i, column);
    }
    const end = this.crissCross();
    return end?.kind === 'stuck' ? this.infeasible(end.row, 1) : undefined;
  }

  /** The form that is minimised by `minimise(k, sign)`. */
  aim(k: number, sign: 1 | -1): Form {
    const form = this.forms[k] as Form;
    return sign > 0 ? form : { at: form.at, coef: form.coef.map(negate) };
  }

  /**
   * The least of form k and the least of its opposite. Where no coordinate that could move
   * is in the form, both have one point and opposite prices.
   */
  extremes(k: number): [least: Solution, ofOpposite: Solution] {
    const least = this.minimise(k, 1);
    if (least.state !== 'optimal' || this.canMove(this.own.length + k)) {
      return [least, this.minimise(k, -1)];
    }
    const prices = { nums: least.prices.nums.map(negate), den: least.prices.den };
    return [least, { ...least, prices }];
  }

  /** Minimises form k, or with sign -1 its opposite. Call `settle` first. */
  minimise(k: number, sign: 1 | -1): Solution {
    const aim = this.own.length + k;
    const end = this.crissCross(aim, sign);
    switch (end?.kind) {
      case undefined:
        return { state: 'optimal', point: this.point(), prices: this.prices(aim, k, sign) };
      case 'stuck':
        return this.infeasible(end.row, 1);
      case 'endless': {
        const ray = this.ray(end.column, end.sign);
        this.crissCross(); // back to a point where every row holds
        return { state: 'unbounded', point: this.point(), ray };
      }
    }
  }

  /** A basis of the changes of all columns that keep every equality. */
  freedom(): Vector[] {
    return this.columnLabel.flatMap((label, j) => {
      return label < 0 || this.isInequality(label) ? [this.ray(j, 1)] : [];
    });
  }

  private canMove(row: number): boolean {
    return this.columnLabel.some((label, j) => {
      return (label < 0 || this.isInequality(label)) && this.cell(row, j) !== 0;
    });
  }

  // Exchanges until every inequality holds and no coordinate improves the aim (undefined), or
  // a row shows that some inequality cannot hold, or a coordinate improves the aim for ever.
  private crissCross(aim?: number, sign: 1 | -1 = 1): End | undefined {
    const gain = (j: number): Int => {
      if (aim === undefined) return 0;
      return sign > 0 ? this.cell(aim, j) : negate(this.cell(aim, j));
    };
    const { rowLabel, columnLabel } = this;
    for (let j = 0; j < columnLabel.length; j++) {
      if ((columnLabel[j] as number) >= 0 || gain(j) === 0) continue;
      return { kind: 'endless', column: j, sign: gain(j) < 0 ? 1 : -1 };
    }
    for (;;) {
      const row = this.least(rowLabel, (i) => this.constant(i) < 0);
      const column = this.least(columnLabel, (j) => gain(j) < 0);
      const rowFirst = (rowLabel[row] ?? Infinity) < (columnLabel[column] ?? Infinity);
      if (rowFirst) {
        const enters = this.least(columnLabel, (j) => this.cell(row, j) > 0);
        if (enters < 0) return { kind: 'stuck', row };
        this.exchange(row, enters);
      } else if (column >= 0) {
        const leaves = this.least(rowLabel, (i) => this.cell(i, column) < 0);
        if (leaves < 0) return { kind: 'endless', column, sign: 1 };
        this.exchange(leaves, column);
      } else {
        return undefined;
      }
    }
  }

  // Where the inequality of least index stands among `labels` of those that fit, or -1.
  private least(labels: readonly number[], fits: (at: number) => boolean): number {
    let best = -1;
    for (let at = 0; at < labels.length; at++) {
      const label = labels[at] as number;
      if (best >= 0 && label > (labels[best] as number)) continue;
      if (this.isInequality(label) && fits(at)) best = at;
    }
    return best;
  }

  // scale·residual of the row = Σ cell·(residual of a coordinate) + a constant that it must
  // not have: the multipliers are the scale and, turned round, the cells.
  private infeasible(row: number, sign: 1 | -1): Solution {
    const own = this.residualCells(row).map((cell) => (sign > 0 ? negate(cell) : cell));
    const den = this.dictionary.scale[row] as Int;
    own[this.rowLabel[row] as number] = sign > 0 ? den : negate(den);
    return { state: 'infeasible', proof: this.withBase(own, den) };
  }

  // The cells of the aim's row are the prices of the coordinates' residuals.
  private prices(aim: number, k: number, sign: 1 | -1): Vector {
    const own = this.residualCells(aim).map((cell) => (sign > 0 ? cell : negate(cell)));
    return this.withBase(own, this.dictionary.scale[aim] as Int, this.aim(k, sign));
  }

  private residualCells(row: number): Int[] {
    const cells: Int[] = this.own.map(() => 0);
    this.columnLabel.forEach((label, j) => {
      if (label >= 0) cells[label] = this.cell(row, j);
    });
    return cells;
  }

  // What the own rows' multipliers leave of the form (or of nothing) is the base rows' to make.
  private withBase(own: readonly Int[], den: Int, form?: Form): Vector {
    const rest: Int[] = Array.from({ length: this.base.columns }, () => 0);
    const spend = ({ at, coef }: Form, times: Int) => {
      for (let k = 0; k < at.length; k++) {
        const column = at[k] as number;
        if (column >= rest.length) continue;
        rest[column] = combine(1, rest[column] as Int, times, coef[k] as Int);
      }
    };
    if (form) spend(form, den);
    own.forEach((y, r) => y !== 0 && spend(this.own[r] as Row, negate(y)));
    const { nums, den: whole } = this.base.multipliers(rest, den);
    const factor = quotient(whole, den);
    return { nums: [...nums, ...own.map((y) => multiply(y, factor))], den: whole };
  }

  // The values of all columns where every coordinate is zero.
  private point(): Vector {
    this.lastPoint ??= this.lift(
      (row) => this.constant(row),
      () => 0,
    );
    return this.lastPoint;
  }

  // The change of all columns as one coordinate moves.
  private ray(column: number, sign: 1 | -1): Vector {
    const along = (cell: Int) => (sign > 0 ? cell : negate(cell));
    return this.lift(
      (row) => along(this.cell(row, column)),
      (j) => (j === column ? sign : 0),
    );
  }

  // All columns from the variables that the dictionary holds.
  private lift(atRow: (row: number) => Int, atColumn: (column: number) => Int): Vector {
    const { scale } = this.dictionary;
    let den: Int = 1;
    this.rowLabel.forEach((label, i) => {
      if (label < 0) den = lcm(den, scale[i] as Int);
    });
    const held: Int[] = this.columnLabel.map(() => 0);
    this.rowLabel.forEach((label, i) => {
      if (label < 0) held[~label] = multiply(atRow(i), quotient(den, scale[i] as Int));
    });
    this.columnLabel.forEach((label, j) => {
      if (label < 0) held[~label] = multiply(atColumn(j), den);
    });
    const kept = this.base.free.length;
    const { nums, den: whole } = this.base.expand(held.slice(0, kept), den);
    const factor = quotient(whole, den);
    return { nums: [...nums, ...held.slice(kept).map((n) => multiply(n, factor))], den: whole };
  }

  // The variable of smallest cell that can leave for a row, or undefined.
  private freeColumn(row: number): number | undefined {
    let best: number | undefined;
    let size: Int = 0;
    for (let j = 0; j < this.columnLabel.length; j++) {
      const cell = absolute(this.cell(row, j));
      if (cell === 0 || (this.columnLabel[j] as number) >= 0) continue;
      if (best === undefined || cell < size) [best, size] = [j, cell];
    }
    return best;
  }

  private exchange(row: number, column: number): void {
    this.lastPoint = undefined;
    this.dictionary.pivot(row, column);
    const label = this.rowLabel[row] as number;
    this.rowLabel[row] = this.columnLabel[column] as number;
    this.columnLabel[column] = label;
  }

  private isInequality(label: number): boolean {
    return label >= 0 && this.own[label]?.sense === '>=';
  }

  private cell(row: number, column: number): Int {
    return (this.dictionary.cells[row] as Int[])[column] as Int;
  }

  private constant(row: number): Int {
    return this.cell(row, this.dictionary.width);
  }
}

// A row that cannot hold, or a coordinate that improves the aim for ever.
type End = { kind: 'stuck'; row: number } | { kind: 'endless'; column: number; sign: 1 | -1 };
