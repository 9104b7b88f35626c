import { add, combine, type Int, multiply, negate } from './integer.ts';
import { fraction, type Rational } from './rational.ts';

/** Σ coef[k] · x[at[k]]: a linear form that names only the columns it uses, each once. */
export interface LinearForm {
  readonly at: readonly number[];
  readonly coef: readonly Int[];
}

/** form = right, or form ≥ right. */
export interface Row extends LinearForm {
  readonly sense: '=' | '>=';
  readonly right: Int;
  /** What a person calls it. */
  readonly name?: string;
}

/**
 * Minimise a form over free variables x₀ … x₍columns₋₁₎ subject to rows.
 * Its dual: maximise Σ right·y with Σ y·row = minimise and y ≥ 0 on every ≥ row.
 */
export interface Programme {
  readonly columns: number;
  readonly rows: readonly Row[];
  readonly minimise: LinearForm;
  /** What a person calls the columns, in their order. */
  readonly names?: readonly string[];
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

export const NOTHING: LinearForm = { at: [], coef: [] };

/** The row that gives a form a value. */
export function given(form: LinearForm, value: Rational): Row {
  const coef = value.den === 1 ? form.coef : form.coef.map((c) => multiply(c, value.den));
  return { at: form.at, coef, sense: '=', right: value.num };
}

/** Entry `index` of a vector, in lowest terms. */
export function entry(vector: Vector, index: number): Rational {
  return fraction(vector.nums[index] ?? 0, vector.den);
}

/** What a form comes to at a vector. */
export function valueOf(form: LinearForm, { nums, den }: Vector): Rational {
  let sum: Int = 0;
  form.at.forEach((column, k) => (sum = combine(1, sum, form.coef[k] as Int, nums[column] ?? 0)));
  return fraction(sum, den);
}

/** The sum of some forms, each so many times: terms of one column are added up, zeros left out. */
export function sumOf(terms: readonly (readonly [form: LinearForm, times: Int])[]): LinearForm {
  const at: number[] = [];
  const coef: Int[] = [];
  for (const [form, times] of terms) {
    form.at.forEach((column, k) => {
      const term = multiply(form.coef[k] as Int, times);
      const known = at.indexOf(column);
      if (known < 0) {
        at.push(column);
        coef.push(term);
      } else {
        coef[known] = add(coef[known] as Int, term);
      }
    });
  }
  if (!coef.includes(0)) return { at, coef };
  return { at: at.filter((_, k) => coef[k] !== 0), coef: coef.filter((term) => term !== 0) };
}

/** The programme for a person to read, a row a line, in the names of its rows and columns. */
export function programmeText({ rows, minimise, names = [] }: Programme): string {
  const text = (form: LinearForm) => formText(form, names);
  const called = rows.map(({ name = '' }) => name);
  const width = Math.max(...called.map(({ length }) => length), 0);
  const lines = rows.map((row, r) => {
    const sense = row.sense === '=' ? '=' : '≥';
    return `${(called[r] as string).padEnd(width)}  ${text(row)} ${sense} ${row.right}`;
  });
  return [`least ${text(minimise)}`, ...lines].join('\n');
}

function formText({ at, coef }: LinearForm, names: readonly string[]): string {
  const terms = at.map((column, k) => {
    const times = coef[k] as Int;
    const size = times < 0 ? negate(times) : times;
    const sign = times < 0 ? (k === 0 ? '-' : ' - ') : k === 0 ? '' : ' + ';
    return `${sign}${size === 1 ? '' : `${size}·`}${names[column] ?? `x${column}`}`;
  });
  return terms.join('') || '0';
}
