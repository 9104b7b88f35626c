import { type Int, absolute, combine, gcd, multiply, negate, quotient } from './integer.ts';

/**
 * Linear forms written in one set of coordinates, which can be exchanged.
 *
 * Row i reads   scale[i] · basic_i = Σ_j cells[i][j] · coordinate_j + cells[i][width]
 * in whole numbers, scale[i] > 0; the last cell is the constant. A pivot on (i, j) makes
 * coordinate j and the form of row i change places. No cell is ever rounded.
 */
export class Dictionary {
  readonly cells: Int[][];
  readonly scale: Int[];
  readonly width: number;

  constructor(width: number, cells: Int[][], scale: Int[] = cells.map(() => 1)) {
    this.width = width;
    this.cells = cells;
    this.scale = scale;
  }

  /** Exchanges the form of row `i` and coordinate `j`; throws where the cell is zero. */
  pivot(i: number, j: number): void {
    const row = this.cells[i] as Int[];
    const pivot = row[j] as Int;
    if (pivot === 0) throw new Error('a pivot must not be zero');
    // From  s·b = … + p·n + …  follows  |p|·n = ±(s·b − …), with the sign of p.
    const positive = pivot > 0;
    if (positive) for (let k = 0; k <= this.width; k++) row[k] = negate(row[k] as Int);
    row[j] = positive ? (this.scale[i] as Int) : negate(this.scale[i] as Int);
    const size = absolute(pivot);
    this.scale[i] = size;
    for (let r = 0; r < this.cells.length; r++) {
      if (r !== i) this.substitute(r, row, j, size);
    }
  }

  // Puts the pivot row (of scale `size`) in place of coordinate j in row r.
  private substitute(r: number, pivotRow: readonly Int[], j: number, size: Int): void {
    const row = this.cells[r] as Int[];
    const factor = row[j] as Int;
    if (factor === 0) return;
    const common = gcd(size, factor);
    const own = common === 1 ? size : quotient(size, common);
    const other = common === 1 ? factor : quotient(factor, common);
    row[j] = 0;
    let large = false;
    for (let k = 0; k <= this.width; k++) {
      const change = pivotRow[k] as Int;
      if (change === 0 && own === 1) continue;
      const value = combine(own, row[k] as Int, other, change);
      row[k] = value;
      if (value > COARSE || value < -COARSE) large = true;
    }
    if (own !== 1) this.scale[r] = multiply(own, this.scale[r] as Int);
    if (large || (this.scale[r] as Int) > COARSE) this.reduce(r);
  }

  // Divides row r by what its cells have in common.
  private reduce(r: number): void {
    const row = this.cells[r] as Int[];
    let common = this.scale[r] as Int;
    for (let k = 0; k <= this.width && common !== 1; k++) common = gcd(common, row[k] as Int);
    if (common === 1) return;
    for (let k = 0; k <= this.width; k++) row[k] = quotient(row[k] as Int, common);
    this.scale[r] = quotient(this.scale[r] as Int, common);
  }
}

// Rows are reduced to lowest terms only when a cell has outgrown this: a gcd costs more than
// a few digits, and products of two cells below it stay far inside the safe integers.
const COARSE = 2 ** 20;
