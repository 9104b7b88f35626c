import { FloatRows, Unsure } from './floatrows.ts';

/** The float64 twin of the exact table: the same rows, the same method, no certificates. */
export class FloatTable extends FloatRows {
  /** Makes a row's form zero, and drops the free column that this takes; false if it has none. */
  settleEquality(row: number): boolean {
    const column = this.freeColumn(row);
    if (column === 0) return false;
    this.pivot(row, column);
    this.rowLabel[row] = -1;
    this.dropColumn(column);
    return true;
  }

  /** Makes the last row's form zero, if it can be anything else, and forgets the row. */
  settleLast(): void {
    this.settleEquality(this.height - 1);
    this.height--;
  }

  /** Brings every free variable of which an inequality speaks into a row. */
  settleVariables(): void {
    for (let row = 0; row < this.height; row++) {
      if ((this.rowLabel[row] as number) < 0) continue;
      const column = this.freeColumn(row);
      if (column !== 0) this.pivot(row, column);
    }
  }

  /**
   * Least-index criss-cross, as in the exact table; `aim` is the row to be made small (sign 1)
   * or large (sign -1), or -1 for any point where every inequality holds.
   */
  crissCross(aim: number, sign: 1 | -1): 'optimal' | 'stuck' | 'endless' {
    const { rowLabel, columnLabel } = this;
    if (aim >= 0) {
      for (let j = 1; j <= this.width; j++) {
        if ((columnLabel[j - 1] as number) < 0 && this.sign(aim, j) !== 0) return 'endless';
      }
    }
    for (let guard = 0; ; guard++) {
      if (guard > MOST_PIVOTS) throw new Unsure();
      let row = -1;
      let column = 0;
      let least = Infinity;
      for (let i = 0; i < this.height; i++) {
        const label = rowLabel[i] as number;
        if (label >= 0 && label < least && this.sign(i, 0) < 0) [row, least] = [i, label];
      }
      for (let j = 1; j <= (aim < 0 ? 0 : this.width); j++) {
        const label = columnLabel[j - 1] as number;
        if (label >= 0 && label < least && this.sign(aim, j) * sign < 0) {
          [row, column, least] = [-1, j, label];
        }
      }
      if (least === Infinity) return 'optimal';
      if (row >= 0) {
        column = this.leastColumn(row);
        if (column === 0) return 'stuck';
      } else {
        row = this.leastRow(column);
        if (row < 0) return 'endless';
      }
      this.pivot(row, column);
    }
  }

  // The free column of the smallest cell that is not zero, or 0.
  private freeColumn(row: number): number {
    let best = 0;
    let size = Infinity;
    for (let j = 1; j <= this.width; j++) {
      if ((this.columnLabel[j - 1] as number) >= 0 || this.sign(row, j) === 0) continue;
      const cell = Math.abs(this.cells[row * this.stride + j] as number);
      if (cell < size) [best, size] = [j, cell];
    }
    return best;
  }

  private leastColumn(row: number): number {
    let best = 0;
    let least = Infinity;
    for (let j = 1; j <= this.width; j++) {
      const label = this.columnLabel[j - 1] as number;
      if (label >= 0 && label < least && this.sign(row, j) > 0) [best, least] = [j, label];
    }
    return best;
  }

  private leastRow(column: number): number {
    let best = -1;
    let least = Infinity;
    for (let i = 0; i < this.height; i++) {
      const label = this.rowLabel[i] as number;
      if (label >= 0 && label < least && this.sign(i, column) < 0) [best, least] = [i, label];
    }
    return best;
  }
}

const MOST_PIVOTS = 1000; // rounding could make the method cycle; exact numbers cannot
