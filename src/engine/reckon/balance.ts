import {
  Base,
  type Extremes,
  extremes,
  type LinearForm,
  freedom,
  type Int,
  type Row,
  sumOf,
  type Vector,
} from '../linear/index.ts';
import type { Motion } from '../motion/index.ts';
import { spansFreedom } from '../proof/index.ts';
import { between, type Quantity } from './quantity.ts';
import { value } from './speeds.ts';

/**
 * The torques on every body, which come to nothing: the rows of the cone read downwards. Each thing
 * that pushes is a column, each body but the case a row. What is known of the load are rows beside
 * it. There is no other balance of torques in the house.
 */
export class TorqueBalance {
  private readonly bodies: readonly {
    readonly name: string;
    readonly pushes: [LinearForm, Int][];
  }[];
  private columns = 0;
  private solved: Base | undefined;

  constructor({ names }: Motion) {
    this.bodies = names.map((name) => ({ name: `on ${name}`, pushes: [] }));
  }

  /**
   * Adds what pushes, `on` being what one unit of it puts on each body. Gives the form whose value is
   * how much it pushes.
   */
  pusher(on: LinearForm): LinearForm {
    const push: LinearForm = { at: [this.columns++], coef: [1] };
    on.at.forEach((body, k) => this.bodies[body]?.pushes.push([push, on.coef[k] as Int]));
    this.solved = undefined;
    return push;
  }

  /**
   * The least and the greatest of each form among the torques that balance and meet `known` rows,
   * proved; undefined where none do.
   */
  settle(
    known: readonly Row[],
    forms: readonly LinearForm[],
  ): ReadonlyMap<LinearForm, Quantity> | undefined {
    const rows = [...this.base.rows, ...known];
    const found: Extremes[] = extremes(this.columns, rows, forms, this.base);
    if (found[0]?.least.solution.state === 'infeasible') return undefined;
    return new Map(
      found.map(({ least, greatest }, k) => {
        return [forms[k] as LinearForm, between(value(least, 1), value(greatest, -1))];
      }),
    );
  }

  /** Every way to balance, proved to be all: what balances is so much of each. */
  ways(): readonly Vector[] {
    const { rows } = this.base;
    const ways = freedom(this.columns, rows, this.base);
    if (!spansFreedom(this.columns, rows, ways)) throw new Error('a way to balance was missed');
    return ways;
  }

  private get base(): Base {
    return (this.solved ??= new Base(this.columns, this.bodies.map(balanced)));
  }
}

function balanced({ name, pushes }: { name: string; pushes: [LinearForm, Int][] }): Row {
  return { ...sumOf(pushes), sense: '=', right: 0, name };
}
