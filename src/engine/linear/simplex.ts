import type { Base } from './base.ts';
import { Dictionary } from './dictionary.ts';
import { type Int, absolute, combine, lcm, multiply, negate, quotient } from './integer.ts';
import type { Form, Programme, Row, Solution, Vector } from './programme.ts';

/**
 * Solves `programme` exactly, with its proof. `base` is the solved form of its first rows;
 * the programme may have columns beyond the base's.
 *
 * The least-index criss-cross method (T. Terlaky, Optimization 16 (1985) 683-690): always
 * exchange the offender of least index. It needs no first phase and cannot cycle.
 */
export function solve(programme: Programme, base: Base): Solution {
  const table = new Table(programme, base);
  const outcome = table.settleEqualities() ?? table.crissCross();
  switch (outcome.kind) {
    case 'optimal':
      return { state: 'optimal', point: table.point(), prices: table.multipliers(outcome) };
    case 'infeasible':
      return { state: 'infeasible', proof: table.multipliers(outcome) };
    case 'improving': {
      const ray = table.ray(outcome);
      table.forgetObjective();
      const feasibility = table.crissCross();
      return feasibility.kind === 'infeasible'
        ? { state: 'infeasible', proof: table.multipliers(feasibility) }
        : { state: 'unbounded', point: table.point(), ray };
    }
  }
}

// A row that proves something (the objective's, or one that cannot be met), taken `sign` times.
type Proof = { kind: 'optimal' | 'infeasible'; row: number; sign: 1 | -1 };
// A coordinate that improves the objective for ever when it moves `sign`-wards.
type Direction = { kind: 'improving'; column: number; sign: 1 | -1 };

class Table {
  private readonly base: Base;
  private readonly own: readonly Row[]; // the programme's rows but for the base's
  private readonly minimise: Form;
  private readonly dictionary: Dictionary; // the own rows' residuals, then the objective
  private readonly objective: number; // the objective's row
  // What stands at each row and coordinate: own row r's residual as r, variable v as ~v.
  private readonly rowLabel: number[] = [];
  private readonly columnLabel: number[] = [];

  constructor({ columns, rows, minimise }: Programme, base: Base) {
    this.base = base;
    this.own = rows.slice(base.rows.length);
    this.minimise = minimise;
    this.objective = this.own.length;
    const kept = base.free.length;
    const width = kept + columns - base.columns;
    const cells: Int[][] = [];
    const scale: Int[] = [];
    const enter = (form: Form, right: Int) => {
      const { coef, times } = base.reduce(form);
      const row = coef.slice();
      while (row.length < width) row.push(0);
      form.at.forEach((column, k) => {
        if (column < base.columns) return;
        row[kept + column - base.columns] = multiply(times, form.coef[k] as Int);
      });
      row.push(negate(multiply(times, right)));
      cells.push(row);
      scale.push(times);
      this.rowLabel.push(cells.length - 1);
    };
    for (const row of this.own) enter(row, row.right);
    enter(minimise, 0);
    for (let j = 0; j < width; j++) this.columnLabel.push(~j);
    this.dictionary = new Dictionary(width, cells, scale);
  }

  /**
   * Makes a coordinate of every equality's residual, which then stays at zero, and a row of
   * every variable that some inequality speaks of. Returns the equality that cannot be met.
   */
  settleEqualities(): Proof | undefined {
    for (let i = 0; i < this.own.length; i++) {
      if (this.own[i]?.sense !== '=') continue;
      const column = this.freeColumn(i);
      if (column !== undefined) this.exchange(i, column);
      else if (this.constant(i) !== 0) {
        return { kind: 'infeasible', row: i, sign: this.constant(i) < 0 ? 1 : -1 };
      }
    }
    for (let i = 0; i < this.own.length; i++) {
      if (!this.isInequality(this.rowLabel[i] as number)) continue;
      const column = this.freeColumn(i);
      if (column !== undefined) this.exchange(i, column);
    }
    return undefined;
  }

  /** Exchanges inequalities until the dictionary proves something. */
  crissCross(): Proof | Direction {
    for (let j = 0; j < this.columnLabel.length; j++) {
      const gain = this.cell(this.objective, j);
      if ((this.columnLabel[j] as number) < 0 && gain !== 0) {
        return { kind: 'improving', column: j, sign: gain < 0 ? 1 : -1 };
      }
    }
    for (;;) {
      const { row, column, least } = this.offender();
      if (least === Infinity) return { kind: 'optimal', row: this.objective, sign: 1 };
      if (row !== undefined) {
        const enters = this.leastColumn((j) => this.cell(row, j) > 0);
        if (enters === undefined) return { kind: 'infeasible', row, sign: 1 };
        this.exchange(row, enters);
      } else {
        const leaves = this.leastRow((i) => this.cell(i, column as number) < 0);
        if (leaves === undefined) return { kind: 'improving', column: column as number, sign: 1 };
        this.exchange(leaves, column as number);
      }
    }
  }

  /** The values of all columns where every coordinate is zero. */
  point(): Vector {
    return this.lift((row) => this.constant(row), () => 0);
  }

  /** The change of all columns as one coordinate moves. */
  ray({ column, sign }: Direction): Vector {
    const along = (cell: Int) => (sign > 0 ? cell : negate(cell));
    return this.lift((row) => along(this.cell(row, column)), (j) => (j === column ? sign : 0));
  }

  /** The multipliers, one a row of the programme, that make the form of a proving row. */
  multipliers({ kind, row, sign }: Proof): Vector {
    // scale · form = Σ cell·residual + constant: the cells are the multipliers of the others,
    // and a row that cannot be met stands for itself with -scale.
    const own: Int[] = this.own.map(() => 0);
    this.columnLabel.forEach((label, j) => {
      if (label >= 0) own[label] = this.cell(row, j);
    });
    const den = this.dictionary.scale[row] as Int;
    if (kind === 'infeasible') {
      own[this.rowLabel[row] as number] = negate(den);
      own.forEach((y, r) => (own[r] = sign > 0 ? negate(y) : y));
    }
    // What the own rows leave of the objective is the base rows' to make.
    const gradient: Int[] = Array.from({ length: this.base.columns }, () => 0);
    const spend = (form: Form, times: Int) => {
      form.at.forEach((column, k) => {
        if (column >= this.base.columns) return;
        gradient[column] = this.sum(gradient[column] as Int, times, form.coef[k] as Int);
      });
    };
    if (kind === 'optimal') spend(this.minimise, den);
    own.forEach((y, r) => y !== 0 && spend(this.own[r] as Row, negate(y)));
    const base = this.base.multipliers(gradient, den);
    const factor = quotient(base.den, den);
    return { nums: [...base.nums, ...own.map((y) => multiply(y, factor))], den: base.den };
  }

  forgetObjective(): void {
    this.dictionary.cells[this.objective]?.fill(0);
  }

  // All columns from those that the dictionary holds.
  private lift(atRow: (row: number) => Int, atColumn: (column: number) => Int): Vector {
    let den: Int = 1;
    this.rowLabel.forEach((label, i) => {
      if (label < 0) den = lcm(den, this.dictionary.scale[i] as Int);
    });
    const held: Int[] = this.columnLabel.map(() => 0);
    this.rowLabel.forEach((label, i) => {
      if (label >= 0) return;
      held[~label] = multiply(atRow(i), quotient(den, this.dictionary.scale[i] as Int));
    });
    this.columnLabel.forEach((label, j) => {
      if (label < 0) held[~label] = multiply(atColumn(j), den);
    });
    const kept = this.base.free.length;
    const { nums, den: whole } = this.base.expand(held.slice(0, kept), den);
    const factor = quotient(whole, den);
    return { nums: [...nums, ...held.slice(kept).map((n) => multiply(n, factor))], den: whole };
  }

  // The inequality of least index whose residual or whose price is negative.
  private offender(): { row?: number; column?: number; least: number } {
    let least = Infinity;
    let row: number | undefined;
    let column: number | undefined;
    this.rowLabel.forEach((label, i) => {
      if (label < least && this.isInequality(label) && this.constant(i) < 0) {
        [least, row] = [label, i];
      }
    });
    this.columnLabel.forEach((label, j) => {
      if (label < least && this.isInequality(label) && this.cell(this.objective, j) < 0) {
        [least, row, column] = [label, undefined, j];
      }
    });
    return { row, column, least } as { row?: number; column?: number; least: number };
  }

  private leastColumn(fits: (column: number) => boolean): number | undefined {
    return leastLabel(this.columnLabel, (label, j) => this.isInequality(label) && fits(j));
  }

  private leastRow(fits: (row: number) => boolean): number | undefined {
    return leastLabel(this.rowLabel, (label, i) => this.isInequality(label) && fits(i));
  }

  private freeColumn(row: number): number | undefined {
    let best: number | undefined;
    this.columnLabel.forEach((label, j) => {
      if (label >= 0 || this.cell(row, j) === 0) return;
      if (best === undefined || absolute(this.cell(row, j)) < absolute(this.cell(row, best))) best = j;
    });
    return best;
  }

  private exchange(row: number, column: number): void {
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

  private sum(total: Int, times: Int, coef: Int): Int {
    return combine(1, total, times, coef);
  }
}

function leastLabel(labels: readonly number[], fits: (label: number, at: number) => boolean) {
  let best: number | undefined;
  labels.forEach((label, at) => {
    if (fits(label, at) && (best === undefined || label < (labels[best] as number))) best = at;
  });
  return best;
}
