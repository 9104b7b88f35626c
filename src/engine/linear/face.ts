import type { Base } from './base.ts';
import { negate } from './integer.ts';
import type { Form, Programme, Row, Solution } from './programme.ts';
import { solve } from './simplex.ts';

/** The two programmes whose answers are the least and the greatest value of a form. */
export interface Range {
  readonly least: { readonly programme: Programme; readonly solution: Solution };
  readonly greatest: { readonly programme: Programme; readonly solution: Solution };
}

/** How far `form` can go where all `rows` hold; the first rows must be the base's. */
export function range(columns: number, rows: readonly Row[], form: Form, base: Base): Range {
  const down: Programme = { columns, rows, minimise: form };
  const opposite = { at: form.at, coef: form.coef.map(negate) };
  const up: Programme = { columns, rows, minimise: opposite };
  return {
    least: { programme: down, solution: solve(down, base) },
    greatest: { programme: up, solution: solve(up, base) },
  };
}
