import type { Base } from './base.ts';
import { Certificate } from './certificate.ts';
import { negate } from './integer.ts';
import type { LinearForm, Programme, Row, Solution, Vector } from './programme.ts';
import { type End, Table } from './table.ts';

/**
 * Solves `programme` exactly, with its proof. `base` is the solved form of its first rows;
 * the programme may have columns beyond the base's.
 */
export function solve({ columns, rows, minimise }: Programme, base: Base): Solution {
  const solver = new Solver(columns, rows, [minimise], base);
  return solver.impossible ?? solver.minimise(0, 1);
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
  forms: readonly LinearForm[],
  base: Base,
): Extremes[] {
  const solver = new Solver(columns, rows, forms, base);
  return forms.map((_, k) => {
    const { impossible } = solver;
    const [least, greatest] = impossible ? [impossible, impossible] : solver.extremes(k);
    return {
      least: { programme: { columns, rows, minimise: solver.aim(k, 1) }, solution: least },
      greatest: { programme: { columns, rows, minimise: solver.aim(k, -1) }, solution: greatest },
    };
  });
}

/** A basis of the changes that keep all of `rows` that are equalities; none if all is settled. */
export function freedom(columns: number, rows: readonly Row[], base: Base): Vector[] {
  return new Solver(columns, rows, [], base).freedom();
}

class Solver {
  /** The proof that the rows cannot all hold, if they cannot. */
  readonly impossible: Solution | undefined;
  private readonly forms: readonly LinearForm[];
  private readonly table: Table;
  private readonly certificate: Certificate;

  constructor(columns: number, rows: readonly Row[], forms: readonly LinearForm[], base: Base) {
    this.forms = forms;
    this.table = new Table(columns, rows, forms, base);
    this.certificate = new Certificate(this.table);
    const end = this.table.settle();
    this.impossible = end && this.refused(end);
  }

  /** The form that is minimised by `minimise(k, sign)`. */
  aim(k: number, sign: 1 | -1): LinearForm {
    const form = this.forms[k] as LinearForm;
    return sign > 0 ? form : { at: form.at, coef: form.coef.map(negate) };
  }

  /** Minimises form k, or with sign -1 its opposite. */
  minimise(k: number, sign: 1 | -1): Solution {
    const aim = this.rowOf(k);
    const end = this.table.crissCross(aim, sign);
    if (end?.kind === 'endless') {
      const ray = this.certificate.ray(end.column, end.sign);
      this.table.crissCross(); // back to a point where every row holds
      return { state: 'unbounded', point: this.certificate.point(), ray };
    }
    if (end) return this.refused(end);
    const prices = this.certificate.prices(aim, this.aim(k, sign), sign);
    return { state: 'optimal', point: this.certificate.point(), prices };
  }

  /**
   * The least of form k and the least of its opposite. Where no coordinate that could move
   * is in the form, both have one point and opposite prices.
   */
  extremes(k: number): [least: Solution, ofOpposite: Solution] {
    const least = this.minimise(k, 1);
    const moves = this.table.movable().some((j) => this.table.cell(this.rowOf(k), j) !== 0);
    if (least.state !== 'optimal' || moves) return [least, this.minimise(k, -1)];
    const prices = { nums: least.prices.nums.map(negate), den: least.prices.den };
    return [least, { ...least, prices }];
  }

  freedom(): Vector[] {
    return this.table.movable().map((j) => this.certificate.ray(j, 1));
  }

  private refused(end: End): Solution {
    if (end.kind !== 'stuck') throw new Error('without an aim nothing can improve for ever');
    return { state: 'infeasible', proof: this.certificate.refusal(end.row, end.sign) };
  }

  private rowOf(k: number): number {
    return this.table.own.length + k;
  }
}
