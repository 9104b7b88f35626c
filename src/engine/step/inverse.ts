/**
 * The inverse of a symmetric positive definite matrix, row after row, by Cholesky's square roots
 * (+ − × ÷ √ alone); undefined where it is not that, as far as rounding can tell.
 */
export function inverseOf(matrix: Float64Array, n: number): Float64Array | undefined {
  const lower = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let rest = matrix[i * n + j] as number;
      for (let k = 0; k < j; k++) {
        rest -= (lower[i * n + k] as number) * (lower[j * n + k] as number);
      }
      if (i > j) lower[i * n + j] = rest / (lower[j * n + j] as number);
      else if (rest > NOTHING * (matrix[i * n + i] as number)) lower[i * n + i] = Math.sqrt(rest);
      else return undefined;
    }
  }
  const inverse = new Float64Array(n * n);
  const column = new Float64Array(n);
  for (let c = 0; c < n; c++) {
    for (let i = 0; i < n; i++) {
      let rest = i === c ? 1 : 0;
      for (let k = 0; k < i; k++) rest -= (lower[i * n + k] as number) * (column[k] as number);
      column[i] = rest / (lower[i * n + i] as number);
    }
    for (let i = n - 1; i >= 0; i--) {
      let rest = column[i] as number;
      for (let k = i + 1; k < n; k++) rest -= (lower[k * n + i] as number) * (column[k] as number);
      column[i] = rest / (lower[i * n + i] as number);
      inverse[i * n + c] = column[i] as number;
    }
  }
  return inverse;
}

const NOTHING = 1e-13;
