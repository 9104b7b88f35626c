import {
  type Bound,
  entry,
  extremes,
  type Form,
  freedom,
  given,
  type Rational,
  type Row,
  times,
  valueOf,
  type Vector,
} from '../linear/index.ts';
import { prove, spansFreedom } from '../proof/index.ts';
import { between, type Quantity } from './quantity.ts';
import { speedAt, type Verdict } from './verdict.ts';

/**
 * How far each form can go among all the motions that answer the question: settled where they
 * agree, a span where they do not. All of it is proved. The train must turn.
 */
export function speedsOf(verdict: Verdict, forms: readonly Form[]): Quantity[] {
  const { motion, solution } = verdict;
  if (solution.state === 'infeasible') throw new Error('a train that does not turn has no speeds');
  const rows = faceOf(verdict);
  const loose = looseColumns(verdict, rows);
  const moving = forms.filter((form) => form.at.some((column) => loose[column]));
  const bounds = moving.length === 0 ? [] : extremes(motion.columns, rows, moving, motion.base);
  const spans = new Map(
    bounds.map(({ least, greatest }, k) => {
      return [moving[k] as Form, between(value(least, 1), value(greatest, -1))];
    }),
  );
  return forms.map((form) => spans.get(form) ?? valueOf(form, solution.point));
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

// The columns that the equalities of the face do not settle.
function looseColumns({ motion }: Verdict, rows: readonly Row[]): boolean[] {
  const { columns, base } = motion;
  const equalities = rows.filter((row) => row.sense === '=');
  const kernel: Vector[] = freedom(columns, equalities, base);
  const proved = spansFreedom(columns, equalities, kernel);
  return Array.from({ length: columns }, (_, column) => {
    return !proved || kernel.some((vector) => entry(vector, column).num !== 0);
  });
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
