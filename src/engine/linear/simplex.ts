import type { Base } from './base.ts';
import type { Form, Programme, Row, Solution, Vector } from './programme.ts';
import { Table } from './table.ts';

/**
 * Solves `programme` exactly, with its proof. `base` is the solved form of its first rows;
 * the programme may have columns beyond the base's.
 */
export function solve({ columns, rows, minimise }: Programme, base: Base): Solution {
  const table = new Table(columns, rows, [minimise], base);
  return table.settle() ?? table.minimise(0, 1);
}

/** The least and the greatest value that a form takes where some rows hold, each proved. */
export interface Extremes {
  readonly least: Bound;
  readonly greatest: Bound;
}

export interface Bound {
  readonly programme: Programme;
  readonly solution: Solution;
}

/** How far each of `forms` can go where all `rows` hold; the first rows are the base's. */
export function extremes(
  columns: number,
  rows: readonly Row[],
  forms: readonly Form[],
  base: Base,
): Extremes[] {
  const table = new Table(columns, rows, forms, base);
  const impossible = table.settle();
  return forms.map((_, k) => {
    const [least, greatest] = impossible ? [impossible, impossible] : table.extremes(k);
    return {
      least: { programme: { columns, rows, minimise: table.aim(k, 1) }, solution: least },
      greatest: { programme: { columns, rows, minimise: table.aim(k, -1) }, solution: greatest },
    };
  });
}

/** A basis of the changes that keep all of `rows` that are equalities; none if all is settled. */
export function freedom(columns: number, rows: readonly Row[], base: Base): Vector[] {
  const table = new Table(columns, rows, [], base);
  table.settle();
  return table.freedom();
}
