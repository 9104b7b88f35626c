import type { Base } from './base.ts';
import { Dictionary } from './dictionary.ts';
import { absolute, type Int, multiply, negate } from './integer.ts';
import type { LinearForm, Row } from './programme.ts';

/** What stops the exchanges: a row that cannot hold, or a coordinate that improves for ever. */
export type End =
  | { readonly kind: 'stuck'; readonly row: number; readonly sign: 1 | -1 }
  | { readonly kind: 'endless'; readonly column: number; readonly sign: 1 | -1 };

/**
 * Rows and objectives of programmes with the same rows, in exchangeable coordinates.
 *
 * The method is least-index criss-cross (T. Terlaky, Optimization 16 (1985) 683-690): always
 * exchange the offender of least index. It needs no first phase and cannot cycle.
 */
export class Table {
  readonly base: Base;
  /** The programme's rows but for the base's. */
  readonly own: readonly Row[];
  /** The own rows' residuals, then the forms. */
  readonly dictionary: Dictionary;
  /** What stands at each row and coordinate: own row r's residual as r, variable v as ~v. */
  readonly rowLabel: number[] = [];
  readonly columnLabel: number[] = [];
  /** How many exchanges there have been. */
  exchanges = 0;

  constructor(columns: number, rows: readonly Row[], forms: readonly LinearForm[], base: Base) {
    this.base = base;
    this.own = rows.slice(base.rows.length);
    const kept = base.free.length;
    const width = kept + columns - base.columns;
    const cells: Int[][] = [];
    const scale: Int[] = [];
    const enter = (form: LinearForm, right: Int) => {
      const { coef, times } = base.reduce(form);
      const row: Int[] = [];
      for (let j = 0; j < width; j++) row.push(j < kept ? (coef[j] as Int) : 0);
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

  /**
   * Makes a coordinate of every equality's residual, which then stays at zero, and a row of
   * every variable of which some inequality speaks; then some point where all rows hold.
   */
  settle(): End | undefined {
    for (let i = 0; i < this.own.length; i++) {
      if (this.own[i]?.sense !== '=') continue;
      const column = this.freeColumn(i);
      if (column !== undefined) this.exchange(i, column);
      else if (this.constant(i) !== 0) {
        return { kind: 'stuck', row: i, sign: this.constant(i) < 0 ? 1 : -1 };
      }
    }
    for (let i = 0; i < this.own.length; i++) {
      if (!this.isInequality(this.rowLabel[i] as number)) continue;
      const column = this.freeColumn(i);
      if (column !== undefined) this.exchange(i, column);
    }
    return this.crissCross();
  }

  /**
   * Exchanges until every inequality holds and no coordinate improves the row `aim`, made small
   * (sign 1) or large (sign -1).
   */
  crissCross(aim?: number, sign: 1 | -1 = 1): End | undefined {
    const { rowLabel, columnLabel } = this;
    if (aim !== undefined) {
      for (let j = 0; j < columnLabel.length; j++) {
        const cell = this.cell(aim, j);
        if ((columnLabel[j] as number) >= 0 || cell === 0) continue;
        const improves = sign > 0 ? cell < 0 : cell > 0;
        return { kind: 'endless', column: j, sign: improves ? 1 : -1 };
      }
    }
    const constants = this.dictionary.width;
    for (;;) {
      const row = this.leastRow(constants);
      const column = aim === undefined ? -1 : this.leastColumn(aim, sign);
      if (row >= 0 && (column < 0 || (rowLabel[row] as number) < (columnLabel[column] as number))) {
        const enters = this.leastColumn(row, -1);
        if (enters < 0) return { kind: 'stuck', row, sign: 1 };
        this.exchange(row, enters);
      } else if (column >= 0) {
        const leaves = this.leastRow(column);
        if (leaves < 0) return { kind: 'endless', column, sign: 1 };
        this.exchange(leaves, column);
      } else {
        return undefined;
      }
    }
  }

  // Where the inequality of least index stands among the rows that are below zero in `column`, or -1.
  private leastRow(column: number): number {
    let best = -1;
    let least = Infinity;
    for (let i = 0; i < this.rowLabel.length; i++) {
      const label = this.rowLabel[i] as number;
      if (this.cell(i, column) >= 0) continue;
      if (label < least && this.isInequality(label)) [best, least] = [i, label];
    }
    return best;
  }

  // The same among the coordinates: those that are below zero in `row`, or with sign -1 above it.
  private leastColumn(row: number, sign: 1 | -1): number {
    let best = -1;
    let least = Infinity;
    for (let j = 0; j < this.columnLabel.length; j++) {
      const label = this.columnLabel[j] as number;
      const cell = this.cell(row, j);
      if (sign > 0 ? cell >= 0 : cell <= 0) continue;
      if (label < least && this.isInequality(label)) [best, least] = [j, label];
    }
    return best;
  }

  /** The coordinates that can move: variables, and residuals of inequalities. */
  movable(): number[] {
    return this.columnLabel.flatMap((label, j) => {
      return label < 0 || this.isInequality(label) ? [j] : [];
    });
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
    this.exchanges++;
    this.dictionary.pivot(row, column);
    const label = this.rowLabel[row] as number;
    this.rowLabel[row] = this.columnLabel[column] as number;
    this.columnLabel[column] = label;
  }

  private isInequality(label: number): boolean {
    return label >= 0 && this.own[label]?.sense === '>=';
  }

  cell(row: number, column: number): Int {
    return (this.dictionary.cells[row] as Int[])[column] as Int;
  }

  constant(row: number): Int {
    return this.cell(row, this.dictionary.width);
  }
}
