import { combine, gcd, type Int, lcm, multiply, negate, quotient } from './integer.ts';
import type { LinearForm, Row, Vector } from './programme.ts';
import type { Table } from './table.ts';

/** Reads off a table, as it stands, what proves its answers for the whole programme. */
export class Certificate {
  private readonly table: Table;
  private lastPoint: Vector | undefined;
  private exchanges = -1; // of the table, when the last point was read off

  constructor(table: Table) {
    this.table = table;
  }

  /** The multipliers that show that a row cannot hold. */
  // scale·residual of the row = Σ cell·(residual of a coordinate) + a constant that it must
  // not have: the multipliers are the scale and, turned round, the cells.
  refusal(row: number, sign: 1 | -1): Vector {
    const own = this.residualCells(row).map((cell) => (sign > 0 ? negate(cell) : cell));
    const den = this.table.dictionary.scale[row] as Int;
    own[this.table.rowLabel[row] as number] = sign > 0 ? den : negate(den);
    return this.withBase(own, den);
  }

  /** The prices of the rows where row `aim` is least (sign 1) or greatest (-1) as `form`. */
  // They are its cells at the rows' residuals.
  prices(aim: number, form: LinearForm, sign: 1 | -1): Vector {
    const own = this.residualCells(aim).map((cell) => (sign > 0 ? cell : negate(cell)));
    return this.withBase(own, this.table.dictionary.scale[aim] as Int, form);
  }

  private residualCells(row: number): Int[] {
    const cells = zeros(this.table.own.length);
    const { columnLabel } = this.table;
    for (let j = 0; j < columnLabel.length; j++) {
      const label = columnLabel[j] as number;
      if (label >= 0) cells[label] = this.table.cell(row, j);
    }
    return cells;
  }

  // What the own rows' multipliers leave of the form (or of nothing) is the base rows' to make.
  private withBase(cells: readonly Int[], scale: Int, form?: LinearForm): Vector {
    const made = lowest(cells, scale);
    if (this.table.base.rows.length === 0) return made;
    const { nums: own, den } = made;
    const rest = zeros(this.table.base.columns);
    const spend = ({ at, coef }: LinearForm, times: Int) => {
      for (let k = 0; k < at.length; k++) {
        const column = at[k] as number;
        if (column >= rest.length) continue;
        rest[column] = combine(1, rest[column] as Int, times, coef[k] as Int);
      }
    };
    if (form) spend(form, den);
    for (let r = 0; r < own.length; r++) {
      const y = own[r] as Int;
      if (y !== 0) spend(this.table.own[r] as Row, negate(y));
    }
    const { nums, den: whole } = this.table.base.multipliers(rest, den);
    return lowest(joined(nums, own, quotient(whole, den)), whole);
  }

  /** The values of all columns where every coordinate is zero. */
  point(): Vector {
    if (!this.lastPoint || this.exchanges !== this.table.exchanges) {
      this.exchanges = this.table.exchanges;
      this.lastPoint = this.lift(
        (row) => this.table.constant(row),
        () => 0,
      );
    }
    return this.lastPoint;
  }

  /** The change of all columns as one coordinate moves. */
  ray(column: number, sign: 1 | -1): Vector {
    const along = (cell: Int) => (sign > 0 ? cell : negate(cell));
    return this.lift(
      (row) => along(this.table.cell(row, column)),
      (j) => (j === column ? sign : 0),
    );
  }

  // All columns from the variables that the dictionary holds.
  private lift(atRow: (row: number) => Int, atColumn: (column: number) => Int): Vector {
    const { rowLabel, columnLabel, dictionary, base } = this.table;
    // Each variable's own fraction in lowest terms: their common denominator stays small.
    const parts: Int[] = columnLabel.map(() => 1);
    const held: Int[] = columnLabel.map(() => 0);
    let den: Int = 1;
    for (let i = 0; i < rowLabel.length; i++) {
      const variable = ~(rowLabel[i] as number);
      const value = variable < 0 ? 0 : atRow(i);
      if (value === 0) continue;
      const scale = dictionary.scale[i] as Int;
      const common = gcd(scale, value);
      held[variable] = quotient(value, common);
      parts[variable] = quotient(scale, common);
      den = lcm(den, parts[variable] as Int);
    }
    for (let j = 0; j < columnLabel.length; j++) {
      const variable = ~(columnLabel[j] as number);
      if (variable >= 0) held[variable] = atColumn(j);
    }
    if (den !== 1) held.forEach((n, v) => (held[v] = multiply(n, quotient(den, parts[v] as Int))));
    const kept = base.free.length;
    const { nums, den: whole } = base.expand(held.slice(0, kept), den);
    return lowest(joined(nums, held.slice(kept), quotient(whole, den)), whole);
  }
}

// Plain loops: certificates are made for every answer, and this is where their time goes.
function zeros(count: number): Int[] {
  const nums: Int[] = [];
  for (let k = 0; k < count; k++) nums.push(0);
  return nums;
}

// The first numbers, then the others times a factor.
function joined(first: readonly Int[], others: readonly Int[], factor: Int): Int[] {
  const nums = first.slice();
  for (let k = 0; k < others.length; k++) nums.push(multiply(others[k] as Int, factor));
  return nums;
}

// The same vector over the smallest denominator: the checker multiplies faster, and the numbers
// are what a person would write.
function lowest(nums: readonly Int[], den: Int): Vector {
  let common = den;
  for (let k = 0; k < nums.length && common !== 1; k++) common = gcd(common, nums[k] as Int);
  if (common === 1) return { nums, den };
  return { nums: nums.map((n) => quotient(n, common)), den: quotient(den, common) };
}
