import {
  type Bound,
  type Extremes,
  extremes,
  type LinearForm,
  freedom,
  given,
  minus,
  over,
  plus,
  type Rational,
  type Row,
  times,
  toText,
  valueOf,
  type Vector,
} from '../linear/index.ts';
import { prove, spansFreedom } from '../proof/index.ts';
import { between, isSpan, type Quantity, stretched } from './quantity.ts';
import { speedAt, type Ruling } from './ruling.ts';

/**
 * How far each form can go among all the motions that answer the question: settled where they
 * agree, a span where they do not. All of it is proved. The train must turn.
 */
export function speedsOf(
  ruling: Ruling,
  forms: readonly LinearForm[],
): ReadonlyMap<LinearForm, Quantity> {
  const { motion, solution } = ruling;
  if (solution.state === 'infeasible') throw new Error('a train that does not turn has no speeds');
  const { point } = solution;
  const rows = faceOf(ruling);
  const kernel = freedomOf(ruling, rows);
  const found = new Map<LinearForm, Quantity>();
  // Forms that every change moves in one proportion share their bounds: one of each such class
  // is asked. The others are as far from their values at the point, in that proportion.
  const classes = new Map<string, Moved[]>();
  for (const form of forms) {
    const move = kernel.map((vector) => valueOf(form, vector));
    const first = move.find(({ num }) => num !== 0);
    found.set(form, valueOf(form, point));
    if (!first) continue;
    const shape = move.map((part) => toText(over(part, first))).join(' ');
    classes.set(shape, [...(classes.get(shape) ?? []), { form, first }]);
  }
  const alike = [...classes.values()] as [Moved, ...Moved[]][];
  const asked = alike.map(([leader]) => leader.form);
  const bounds = asked.length === 0 ? [] : extremes(motion.columns, rows, asked, motion.base);
  for (const [k, members] of alike.entries()) {
    const { least, greatest } = bounds[k] as Extremes;
    const [{ form: led, first: lead }] = members;
    const there = valueOf(led, point);
    const [from, to] = [value(least, 1), value(greatest, -1)].map(
      (end) => end && minus(end, there),
    );
    for (const { form, first } of members) {
      const here = valueOf(form, point);
      const reach = stretched({ from: from ?? null, to: to ?? null }, over(first, lead));
      const shift = (end: Rational | null) => end && plus(end, here);
      if (isSpan(reach)) found.set(form, between(shift(reach.from), shift(reach.to)));
    }
  }
  return found;
}

// A form that some change moves, and how far the first of them does.
interface Moved {
  readonly form: LinearForm;
  readonly first: Rational;
}

// The rows that all the answers meet: a reluctant end has the speed that was found for it.
function faceOf(ruling: Ruling): Row[] {
  const { motion, programme, question } = ruling;
  const rows: Row[] = programme.rows.filter(({ of }) => of !== 'size');
  if (question.reluctant !== undefined) {
    const speed = speedAt(ruling, question.reluctant);
    rows.push(given(motion.speedOf(question.reluctant), speed));
  }
  return rows;
}

// The changes that the equalities of the face leave; where that is not proved, every column.
function freedomOf({ motion }: Ruling, rows: readonly Row[]): readonly Vector[] {
  const { columns, base } = motion;
  const equalities = rows.filter((row) => row.sense === '=');
  const kernel = freedom(columns, equalities, base);
  if (spansFreedom(columns, equalities, kernel)) return kernel;
  const all = Array.from({ length: columns }, (_, column) => column);
  return all.map((at) => ({ nums: all.map((column) => (column === at ? 1 : 0)), den: 1 }));
}

/** The proved value of a bound, with the sign that was minimised; null for no limit. */
export function value({ programme, solution }: Bound, sign: 1 | -1): Rational | null {
  prove(programme, solution);
  switch (solution.state) {
    case 'infeasible':
      throw new Error('bounds were asked of what cannot be');
    case 'unbounded':
      return null;
    case 'optimal':
      return times(valueOf(programme.minimise, solution.point), { num: sign, den: 1 });
  }
}
