import type { LinearForm, Int, Programme, Row, Solution, Vector } from '../linear/index.ts';

/** Throws where `solution` does not prove itself for `programme`, naming what fails. */
export function prove(programme: Programme, solution: Solution): void {
  const doubt = doubtOf(programme, solution);
  if (doubt !== undefined) throw new Error(`an answer failed its check: ${doubt}`);
}

/**
 * Why `solution` is not proved by what it carries, or undefined if it is. Multiplies out every
 * row in whole numbers; uses nothing of what found the solution.
 */
export function doubtOf(programme: Programme, solution: Solution): string | undefined {
  switch (solution.state) {
    case 'optimal':
      return (
        pointDoubt(programme, solution.point) ??
        pricesDoubt(programme, solution.prices, programme.minimise) ??
        dualityDoubt(programme, solution.point, solution.prices)
      );
    case 'infeasible':
      return (
        pricesDoubt(programme, solution.proof, { at: [], coef: [] }) ??
        (rightSide(programme, solution.proof) > 0 ? undefined : 'the proof comes to nothing')
      );
    case 'unbounded':
      return pointDoubt(programme, solution.point) ?? rayDoubt(programme, solution.ray);
  }
}

// Every row holds at the point.
function pointDoubt({ columns, rows }: Programme, { nums, den }: Vector): string | undefined {
  if (den <= 0 || nums.length !== columns) return 'the point is not a point';
  for (let r = 0; r < rows.length; r++) {
    const row = rows[r] as Row;
    const left = dot(row, nums);
    const right = product(row.right, den);
    if (row.sense === '=' ? left !== right : left < right) return `${nameOf(row, r)} does not hold`;
  }
  return undefined;
}

// The rows, each taken its number of times (never negative for a ≥ row), add up to the form.
function pricesDoubt({ columns, rows, names }: Programme, { nums, den }: Vector, form: LinearForm) {
  if (den <= 0 || nums.length !== rows.length) return 'there is not one price a row';
  const left: Int[] = [];
  for (let column = 0; column < columns; column++) left.push(0);
  for (let r = 0; r < rows.length; r++) {
    const row = rows[r] as Row;
    const price = nums[r] as Int;
    if (price < 0 && row.sense === '>=') return `${nameOf(row, r)} pulls where it can only push`;
    if (price !== 0) accumulate(left, row, price);
  }
  accumulate(left, form, -den);
  for (let column = 0; column < columns; column++) {
    if (left[column] !== 0) return `${names?.[column] ?? `column ${column}`} does not balance`;
  }
  return undefined;
}

// What the form comes to at the point is what the prices promise.
function dualityDoubt(programme: Programme, point: Vector, prices: Vector): string | undefined {
  const value = product(dot(programme.minimise, point.nums), prices.den);
  const promise = product(rightSide(programme, prices), point.den);
  return value === promise ? undefined : 'the point and its prices disagree';
}

function rayDoubt(programme: Programme, ray: Vector): string | undefined {
  if (ray.den <= 0 || ray.nums.length !== programme.columns) return 'the ray is not a ray';
  for (let r = 0; r < programme.rows.length; r++) {
    const row = programme.rows[r] as Row;
    const change = dot(row, ray.nums);
    if (row.sense === '=' ? change !== 0 : change < 0) return `the ray leaves ${nameOf(row, r)}`;
  }
  return dot(programme.minimise, ray.nums) < 0 ? undefined : 'the ray gains nothing';
}

// As the programme calls it, so that who mends the engine finds it in the programme as it prints itself.
function nameOf({ name }: Row, r: number): string {
  return name ?? `row ${r}`;
}

function rightSide({ rows }: Programme, { nums }: Vector): Int {
  let total: Int = 0;
  for (let r = 0; r < rows.length; r++) {
    total = sum(total, product((rows[r] as Row).right, nums[r] as Int));
  }
  return total;
}

function accumulate(columns: Int[], { at, coef }: LinearForm, times: Int): void {
  for (let k = 0; k < at.length; k++) {
    const column = at[k] as number;
    columns[column] = sum(columns[column] as Int, product(coef[k] as Int, times));
  }
}

function dot({ at, coef }: LinearForm, nums: readonly Int[]): Int {
  let total: Int = 0;
  for (let k = 0; k < at.length; k++) {
    total = sum(total, product(coef[k] as Int, nums[at[k] as number] as Int));
  }
  return total;
}

function product(a: Int, b: Int): Int {
  if (typeof a === 'number' && typeof b === 'number') {
    const exact = a * b;
    if (Number.isSafeInteger(exact)) return exact;
  }
  return settle(BigInt(a) * BigInt(b));
}

function sum(a: Int, b: Int): Int {
  if (typeof a === 'number' && typeof b === 'number') {
    const exact = a + b;
    if (Number.isSafeInteger(exact)) return exact;
  }
  return settle(BigInt(a) + BigInt(b));
}

// Safe integers are always numbers, so that === compares values.
function settle(big: bigint): Int {
  const small = Number(big);
  return Number.isSafeInteger(small) ? small : big;
}
