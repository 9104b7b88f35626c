import type { Base } from './base.ts';
import type { Int } from './integer.ts';
import type { LinearForm } from './programme.ts';

/** Thrown where float64 cannot tell a number from zero: ask the exact solver. */
export class Unsure extends Error {}

/**
 * Forms as rows of float64 cells in exchangeable coordinates, with a bound on their error.
 *
 * Cells start as whole numbers and rows are combined without dividing, so that nothing is
 * rounded below 2^53: `error`, a bound on the error of each cell of a row, is then 0 and a
 * zero is a zero. Beyond, the bound grows, and a cell that is not larger than it is Unsure.
 */
export class FloatRows {
  height = 0;
  width = 0;
  readonly cells: Float64Array; // a row is `stride` long; its constant stands first
  readonly stride: number;
  private readonly error: Float64Array;
  private readonly size: Float64Array; // the largest cell of each row, its scale among them
  private readonly scale: Float64Array; // how often the row holds what it is named for
  protected readonly rowLabel: Int32Array; // an inequality's index, or -1
  protected readonly columnLabel: Int32Array; // the same; -1: a variable free to move

  constructor(rows: number, columns: number) {
    this.stride = columns + 1;
    this.cells = new Float64Array(rows * this.stride);
    this.error = new Float64Array(rows);
    this.size = new Float64Array(rows);
    this.scale = new Float64Array(rows);
    this.rowLabel = new Int32Array(rows);
    this.columnLabel = new Int32Array(columns);
  }

  /** Empties the table and gives it free variables as its columns. */
  reset(width: number): void {
    this.height = 0;
    this.width = width;
    this.columnLabel.fill(-1, 0, width);
  }

  /** Becomes the first `height` rows of another table of the same width. */
  copy(other: FloatRows, height: number): void {
    this.height = height;
    this.width = other.width;
    const { cells, stride } = this;
    for (let k = 0; k < this.width; k++) this.columnLabel[k] = other.columnLabel[k] as number;
    for (let r = 0; r < height; r++) {
      const [at, from] = [r * stride, r * other.stride];
      for (let k = 0; k <= this.width; k++) cells[at + k] = other.cells[from + k] as number;
      this.error[r] = other.error[r] as number;
      this.size[r] = other.size[r] as number;
      this.scale[r] = other.scale[r] as number;
      this.rowLabel[r] = other.rowLabel[r] as number;
    }
  }

  /** Adds a whole number to what a row's form comes to. */
  shift(row: number, by: number): void {
    const at = row * this.stride;
    const scale = this.scale[row] as number;
    const constant = (this.cells[at] as number) + by * scale;
    this.cells[at] = constant;
    this.size[row] = Math.max(this.size[row] as number, Math.abs(constant));
  }

  /** Enters a form as a row, named for an inequality (its index) or for nothing (-1); tells which row. */
  addForm(form: LinearForm, base: Base, label = -1): number {
    const { coef, times } = base.reduce(form);
    const row = this.height++;
    const at = row * this.stride;
    this.cells.fill(0, at, at + this.width + 1);
    coef.forEach((c, j) => (this.cells[at + 1 + j] = asFloat(c)));
    const scale = asFloat(times);
    form.at.forEach((column, k) => {
      const beyond = column - base.columns;
      if (beyond < 0) return;
      this.cells[at + 1 + base.free.length + beyond] = scale * asFloat(form.coef[k] as Int);
    });
    this.scale[row] = scale;
    this.error[row] = 0;
    this.rowLabel[row] = label;
    let size = scale;
    for (let k = 0; k <= this.width; k++)
      size = Math.max(size, Math.abs(this.cells[at + k] as number));
    this.size[row] = size;
    return row;
  }

  /** -1, 0 or 1; throws Unsure. */
  sign(row: number, column: number): -1 | 0 | 1 {
    const cell = this.cells[row * this.stride + column] as number;
    const error = this.error[row] as number;
    if (cell > error) return 1;
    if (-cell > error) return -1;
    if (error !== 0) throw new Unsure();
    return 0;
  }

  /** The value of a row's form where every column is zero. */
  value(row: number): number {
    return (this.cells[row * this.stride] as number) / (this.scale[row] as number);
  }

  /** Exchanges the form of a row and a column. */
  pivot(row: number, column: number): void {
    const { cells, stride, width } = this;
    const start = row * stride;
    const pivot = cells[start + column] as number;
    const pivotSize = Math.abs(pivot);
    const pivotError = this.error[row] as number;
    const flip = pivot > 0 ? -1 : 1;
    for (let k = 0; k <= width; k++) cells[start + k] = (cells[start + k] as number) * flip;
    const own = this.scale[row] as number;
    cells[start + column] = -flip * own;
    this.scale[row] = pivotSize;
    const rowSize = this.size[row] as number;
    for (let r = 0; r < this.height; r++) {
      const at = r * stride;
      const factor = cells[at + column] as number;
      if (r === row || (factor === 0 && this.error[r] === 0)) continue;
      cells[at + column] = 0;
      const scale = (this.scale[r] as number) * pivotSize;
      let size = scale;
      for (let k = 0; k <= width; k++) {
        const cell = pivotSize * (cells[at + k] as number) + factor * (cells[start + k] as number);
        cells[at + k] = cell;
        if (cell > size) size = cell;
        else if (-cell > size) size = -cell;
      }
      this.settleError(r, pivotSize, pivotError, Math.abs(factor), rowSize);
      this.scale[r] = scale;
      this.size[r] = size;
      if (size > COARSE) this.reduce(r);
    }
    const label = this.rowLabel[row] as number;
    this.rowLabel[row] = this.columnLabel[column - 1] as number;
    this.columnLabel[column - 1] = label;
  }

  // Products and sums below 2^53 are exact; of the others each rounds by less than 2^-52 of
  // the bound on their size. Errors of both rows are carried through the products.
  private settleError(r: number, p: number, pivotError: number, f: number, rowSize: number): void {
    const bound = p * (this.size[r] as number) + f * rowSize;
    const own = this.error[r] as number;
    if (own === 0 && pivotError === 0 && bound <= EXACT) return;
    const carried =
      (p + rowSize + pivotError) * own + ((this.size[r] as number) + f + own) * pivotError;
    this.error[r] = carried + bound * 2 ** -51;
  }

  // Divides a row by what its cells have in common, or where it is no longer exact by a power
  // of two.
  private reduce(r: number): void {
    const { cells, stride, width } = this;
    const at = r * stride;
    let common = this.scale[r] as number;
    if (this.error[r] === 0) {
      for (let k = 0; k <= width && common !== 1; k++) {
        common = gcd(common, Math.abs(cells[at + k] as number));
      }
    } else {
      common = 2 ** Math.max(0, Math.floor(Math.log2(this.size[r] as number)) - 20);
      this.error[r] = (this.error[r] as number) / common;
    }
    if (common === 1) return;
    for (let k = 0; k <= width; k++) cells[at + k] = (cells[at + k] as number) / common;
    this.scale[r] = (this.scale[r] as number) / common;
    this.size[r] = (this.size[r] as number) / common;
  }

  /** Forgets a column whose coordinate stays at zero. */
  protected dropColumn(column: number): void {
    const last = this.width--;
    if (column === last) return;
    for (let r = 0; r < this.height; r++) {
      const at = r * this.stride;
      this.cells[at + column] = this.cells[at + last] as number;
    }
    this.columnLabel[column - 1] = this.columnLabel[last - 1] as number;
  }
}

function asFloat(value: Int): number {
  if (typeof value === 'bigint') throw new Unsure();
  return value;
}

function gcd(a: number, b: number): number {
  while (b !== 0) [a, b] = [b, a % b];
  return a;
}

const EXACT = 2 ** 53;
const COARSE = 2 ** 25; // sums of two products of such cells stay exact
