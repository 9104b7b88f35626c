import { type Bound, extremes, type Form, given, type Rational, times, valueOf } from '../linear/index.ts';
import { prove } from '../proof/index.ts';
import { between, type Quantity } from './quantity.ts';
import { speedAt, type Verdict } from './verdict.ts';

/**
 * How far each form can go among all the motions that answer the question: settled where they
 * agree, a span where they do not. Every bound is proved. The train must turn.
 */
export function speedsOf(verdict: Verdict, forms: readonly Form[]): Quantity[] {
  const { motion, posed, question } = verdict;
  const rows = posed.programme.rows.slice(0, posed.firstReluctant);
  if (question.reluctant !== undefined) {
    const speed = speedAt(verdict, question.reluctant);
    rows.push(given(motion.speedOf(question.reluctant), speed));
  }
  return extremes(motion.columns, rows, forms, motion.base).map(({ least, greatest }) => {
    return between(value(least, 1), value(greatest, -1));
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
