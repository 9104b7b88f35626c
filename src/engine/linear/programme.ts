import { combine, type Int, multiply } from './integer.ts';
import { fraction, type Rational } from './rational.ts';

/** Σ coef[k] · x[at[k]]: a linear form that names only the columns it uses, each once. */
export interface Form {
  readonly at: readonly number[];
  readonly coef: readonly Int[];
}

/** form = right, or form ≥ right. */
export interface Row extends Form {
  readonly sense: '=' | '>=';
  readonly right: Int;
}

/**
 * Minimise a form over free variables x₀ … x₍columns₋₁₎ subject to rows.
 * Its dual: maximise Σ right·y with Σ y·row = minimise and y ≥ 0 on every ≥ row.
 */
export interface Programme {
  readonly columns: number;
  readonly rows: readonly Row[];
  readonly minimise: Form;
}

/** Exact numbers over one positive denominator: entry k is nums[k] / den. */
export interface Vector {
  readonly nums: readonly Int[];
  readonly den: Int;
}

/**
 * What a programme comes to, each with its proof:
 * - optimal: a `point` that meets every row, and `prices` (one a row) that prove it least;
 * - infeasible: multipliers (one a row) that add up to 0 ≥ something positive (Farkas);
 * - unbounded: a `point`, and a `ray` along which every row stays met and the form falls.
 */
export type Solution =
  | { readonly state: 'optimal'; readonly point: Vector; readonly prices: Vector }
  | { readonly state: 'infeasible'; readonly proof: Vector }
  | { readonly state: 'unbounded'; readonly point: Vector; readonly ray: Vector };

export const NOTHING: Form = { at: [], coef: [] };

/** The row that gives a form a value. */
export function given(form: Form, value: Rational): Row {
  const coef = value.den === 1 ? form.coef : form.coef.map((c) => multiply(c, value.den));
  return { at: form.at, coef, sense: '=', right: value.num };
}

/** Entry `index` of a vector, in lowest terms. */
export function entry(vector: Vector, index: number): Rational {
  return fraction(vector.nums[index] ?? 0, vector.den);
}

/** What a form comes to at a vector. */
export function valueOf(form: Form, { nums, den }: Vector): Rational {
  let sum: Int = 0;
  form.at.forEach((column, k) => (sum = combine(1, sum, form.coef[k] as Int, nums[column] ?? 0)));
  return fraction(sum, den);
}

/** The programme as text, a row a line: what a failing test prints. */
export function programmeText(programme: Programme): string {
  const terms = (form: Form) =>
    form.at.map((column, k) => `${form.coef[k]}·x${column}`).join(' + ') || '0';
  const rows = programme.rows.map((row) => `  ${terms(row)} ${row.sense} ${row.right}`);
  return [`minimise ${terms(programme.minimise)} subject to`, ...rows].join('\n');
}
