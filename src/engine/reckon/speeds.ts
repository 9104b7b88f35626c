import {
  type Bound,
  type Extremes,
  extremes,
  type Form,
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
import { speedAt, type Verdict } from './verdict.ts';

/**
 * How far each form can go among all the motions that answer the question: settled where they
 * agree, a span where they do not. All of it is proved. The train must turn.
 */
export function speedsOf(verdict: Verdict, forms: readonly Form[]): Quantity[] {
  const { motion, solution } = verdict;
  if (solution.state === 'infeasible') throw new Error('a train that does not turn has no speeds');
  const { point } = solution;
  const rows = faceOf(verdict);
  const kernel = freedomOf(verdict, rows);
  const moves = forms.map((form) => kernel.map((vector) => valueOf(form, vector)));
  // Forms that every change moves in one proportion share their bounds: one of each such class
  // is asked. The others are as far from their values at the point, in that proportion.
  const lead = new Map<string, number>();
  const classes = moves.map((move, f) => {
    const first = move.find(({ num }) => num !== 0);
    const shape = first && move.map((part) => toText(over(part, first))).join(' ');
    if (shape !== undefined && !lead.has(shape)) lead.set(shape, f);
    return { first, leader: shape === undefined ? undefined : (lead.get(shape) as number) };
  });
  const leaders = [...lead.values()];
  const asked = leaders.map((f) => forms[f] as Form);
  const bounds = asked.length === 0 ? [] : extremes(motion.columns, rows, asked, motion.base);
  return forms.map((form, f) => {
    const here = valueOf(form, point);
    const { first, leader } = classes[f] as (typeof classes)[number];
    if (!first || leader === undefined) return here;
    const { least, greatest } = bounds[leaders.indexOf(leader)] as Extremes;
    const there = valueOf(forms[leader] as Form, point);
    const by = over(first, classes[leader]?.first as Rational);
    const [from, to] = [value(least, 1), value(greatest, -1)].map(
      (end) => end && minus(end, there),
    );
    const reach = stretched({ from: from ?? null, to: to ?? null }, by);
    const shift = (end: Rational | null) => end && plus(end, here);
    return isSpan(reach) ? between(shift(reach.from), shift(reach.to)) : here;
  });
}

// The rows that all the answers meet: a reluctant end has the speed that was found for it.
function faceOf(verdict: Verdict): Row[] {
  const { motion, posed, question } = verdict;
  const rows = posed.programme.rows.slice(0, posed.firstReluctant);
  if (question.reluctant !== undefined) {
    const speed = speedAt(verdict, question.reluctant);
    rows.push(given(motion.speedOf(question.reluctant), speed));
  }
  return rows;
}

// The changes that the equalities of the face leave; where that is not proved, every column.
function freedomOf({ motion }: Verdict, rows: readonly Row[]): readonly Vector[] {
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
