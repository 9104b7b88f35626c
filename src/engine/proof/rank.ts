import type { LinearForm, Int, Row, Vector } from '../linear/index.ts';

/**
 * Whether forms are linearly independent. True is proof: what is independent modulo a prime is
 * independent. False may, once in tens of millions of trains, be an accident of the prime.
 */
export function areIndependent(columns: number, forms: readonly LinearForm[]): boolean {
  return rankOf(forms.map((form) => spread(columns, form))) === forms.length;
}

/**
 * Throws unless `kernel` spans every change of the columns that leaves all `rows` as they are
 * (equalities; their right sides do not matter): a column in which each vector of it is zero
 * is settled by the rows. Returns false where an accident of the prime leaves that open.
 */
export function spansFreedom(columns: number, rows: readonly Row[], kernel: readonly Vector[]) {
  for (const { nums } of kernel) {
    for (const { at, coef } of rows) {
      const change = at.reduce((sum, column, k) => {
        return sum + BigInt(coef[k] as Int) * BigInt(nums[column] as Int);
      }, 0n);
      if (change !== 0n) throw new Error('an answer failed its check: a freedom breaks a row');
    }
  }
  // rank(rows) + dim(kernel) = columns, and the rank is at least the rank modulo a prime: so
  // as many independent vectors as the rows leave room for are all there is.
  const rank = rankOf(rows.map((row) => spread(columns, row)));
  const vectors = kernel.map(({ nums }) => nums.map(residue));
  return rank + kernel.length === columns && rankOf(vectors) === kernel.length;
}

// The largest prime below 2^26: products of two residues are safe integers.
const PRIME = 67_108_859;

function residue(value: Int): number {
  const rest = typeof value === 'number' ? value % PRIME : Number(value % BigInt(PRIME));
  return rest < 0 ? rest + PRIME : rest;
}

function spread(columns: number, { at, coef }: LinearForm): number[] {
  const cells = Array.from({ length: columns }, () => 0);
  for (let k = 0; k < at.length; k++) cells[at[k] as number] = residue(coef[k] as Int);
  return cells;
}

// Gauss's elimination modulo PRIME; uses up its argument.
function rankOf(rows: number[][]): number {
  let rank = 0;
  const width = rows[0]?.length ?? 0;
  for (let column = 0; column < width && rank < rows.length; column++) {
    const at = rows.findIndex((row, r) => r >= rank && row[column] !== 0);
    if (at < 0) continue;
    const pivotRow = rows[at] as number[];
    rows[at] = rows[rank] as number[];
    rows[rank] = pivotRow;
    rank++;
    const inverse = power(pivotRow[column] as number, PRIME - 2);
    for (let r = rank; r < rows.length; r++) {
      const row = rows[r] as number[];
      if (row[column] === 0) continue;
      const factor = PRIME - (((row[column] as number) * inverse) % PRIME);
      for (let c = column; c < width; c++) {
        row[c] = ((row[c] as number) + factor * (pivotRow[c] as number)) % PRIME;
      }
    }
  }
  return rank;
}

function power(base: number, exponent: number): number {
  let result = 1;
  for (let rest = exponent; rest > 0; rest = Math.floor(rest / 2)) {
    if (rest % 2 === 1) result = (result * base) % PRIME;
    base = (base * base) % PRIME;
  }
  return result;
}
