/**
 * Finds impulses λ between bounds, one a device, so that what slips is pushed against its slip with
 * all that the device has, and what does not slip with no more: with σ = q − W λ,
 * λ is at its most where σ > 0, at its least where σ < 0, and anything between only where σ = 0.
 *
 * With z above the least and y below the most this is a linear complementarity problem,
 *
 *     w = W z + p + (W·least − q) ≥ 0,   y = (most − least) − z ≥ 0,   w·z = 0,   y·p = 0,
 *
 * whose matrix [W I; −I 0] is positive semidefinite, for W is. Least-index criss-cross pivots end on
 * such a one (E. Klafszky and T. Terlaky, 1989; D. den Hertog, C. Roos and T. Terlaky, 1993; both
 * from memory), also where devices share a reaction and W is singular. Nothing is allocated.
 */
export class BoxedPivots {
  private readonly table: Float64Array;
  private readonly turned: Uint8Array; // whether z or p, not w or y, is basic
  private readonly index: Int32Array;
  private readonly upper: Int32Array;
  private readonly scale: Float64Array;
  private readonly width: number;

  constructor(devices: number) {
    this.width = 2 * devices + 1;
    this.table = new Float64Array(2 * devices * this.width);
    this.turned = new Uint8Array(2 * devices);
    this.index = new Int32Array(devices);
    this.upper = new Int32Array(devices);
    this.scale = new Float64Array(devices);
  }

  /**
   * Writes for each device whether it is at its LEAST, its MOST, or between (GRIPS); a most of
   * Infinity is none. `w` is symmetric, row after row. False where rounding hides what is 0, so
   * that nothing is written.
   */
  solve(
    w: Float64Array,
    q: Float64Array,
    least: Float64Array,
    most: Float64Array,
    into: Uint8Array,
  ): boolean {
    const size = this.fill(w, q, least, most);
    if (!this.pivotAll(size)) return false;
    for (let k = 0; k < q.length; k++) into[k] = LEAST;
    for (let i = 0; i < this.active; i++) {
      const device = this.index[i] as number;
      const up = this.upper[i] as number;
      if (this.turned[i] === 0) continue;
      into[device] = up >= 0 && this.turned[up] === 1 ? MOST : GRIPS;
    }
    return true;
  }

  private active = 0;

  // Rows scaled so that each device's own coefficient is 1; a device without a range is left out.
  private fill(w: Float64Array, q: Float64Array, least: Float64Array, most: Float64Array): number {
    const { table, index, upper, scale, width } = this;
    const devices = q.length;
    let active = 0;
    for (let k = 0; k < devices; k++) {
      const own = w[k * devices + k] as number;
      if (!((most[k] as number) > (least[k] as number)) || own <= 0) continue;
      index[active] = k;
      scale[active++] = 1 / Math.sqrt(own);
    }
    this.active = active;
    let size = active;
    for (let i = 0; i < active; i++) {
      upper[i] = most[index[i] as number] === Infinity ? -1 : size++;
    }
    table.fill(0, 0, size * width);
    this.turned.fill(0);
    for (let i = 0; i < active; i++) {
      const row = index[i] as number;
      let right = -(q[row] as number);
      for (let j = 0; j < devices; j++) {
        // What is left out of the pivots pushes at its least all the same.
        right += (w[row * devices + j] as number) * (least[j] as number);
      }
      for (let j = 0; j < active; j++) {
        const column = index[j] as number;
        table[i * width + j] =
          (w[row * devices + column] as number) * (scale[i] as number) * (scale[j] as number);
      }
      table[i * width + size] = right * (scale[i] as number);
      const up = upper[i] as number;
      if (up < 0) continue;
      table[i * width + up] = 1;
      table[up * width + i] = -1;
      table[up * width + size] =
        ((most[row] as number) - (least[row] as number)) / (scale[i] as number);
    }
    return size;
  }

  private pivotAll(size: number): boolean {
    const { table, width } = this;
    let largest = 0;
    for (let i = 0; i < size; i++) {
      largest = Math.max(largest, Math.abs(table[i * width + size] as number));
    }
    const below = -1e-13 * largest;
    for (let pivots = 0; pivots < MOST_PIVOTS; pivots++) {
      let k = 0;
      while (k < size && (table[k * width + size] as number) >= below) k++;
      if (k === size) return true;
      if ((table[k * width + k] as number) > ZERO) {
        this.exchange(size, k, k);
        this.turn(k);
        continue;
      }
      let l = 0;
      while (l < size && (l === k || (table[k * width + l] as number) <= ZERO)) l++;
      if (l === size) return false;
      this.exchange(size, k, l);
      this.exchange(size, l, k);
      this.swap(size, k, l);
      this.turn(k);
      this.turn(l);
    }
    return false;
  }

  private turn(k: number): void {
    this.turned[k] = 1 - (this.turned[k] as number);
  }

  // The basic variable of a row and the other of a column change places.
  private exchange(size: number, row: number, column: number): void {
    const { table, width } = this;
    const at = row * width;
    const unit = 1 / (table[at + column] as number);
    for (let j = 0; j <= size; j++) table[at + j] = -(table[at + j] as number) * unit;
    table[at + column] = unit;
    for (let i = 0; i < size; i++) {
      const other = i * width;
      const times = table[other + column] as number;
      if (i === row || times === 0) continue;
      table[other + column] = 0;
      for (let j = 0; j <= size; j++) {
        const is = table[other + j] as number;
        const by = times * (table[at + j] as number);
        // What is left of two equal and opposite numbers is rounding, and 0 without it.
        table[other + j] = Math.abs(is + by) < ROUNDING * Math.abs(by) ? 0 : is + by;
      }
    }
  }

  // After an exchange across, each pair stands again in the row and the column of one number.
  private swap(size: number, k: number, l: number): void {
    const { table, width } = this;
    for (let j = 0; j <= size; j++) {
      const kept = table[k * width + j] as number;
      table[k * width + j] = table[l * width + j] as number;
      table[l * width + j] = kept;
    }
    for (let i = 0; i < size; i++) {
      const kept = table[i * width + k] as number;
      table[i * width + k] = table[i * width + l] as number;
      table[i * width + l] = kept;
    }
  }
}

/** Where a device's impulse is: at its least, at its most, or between. */
export const LEAST = 0;
export const MOST = 1;
export const GRIPS = 2;

// Of entries that are 1 on the diagonal at first.
const ZERO = 1e-11;
const ROUNDING = 1e-12;
const MOST_PIVOTS = 1000;
