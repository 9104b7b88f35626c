import type { Inquiry, Prediction } from '../cause/index.ts';
import type { Account } from './observation.ts';
import { type Belief, likelihood } from './posterior.ts';

/**
 * By cause: the chance of each outcome of a test, its manners and reasons weighed by what was seen.
 * With an account of the test itself: by all that was seen but for that, so that it can be held
 * against what the rest would let one expect.
 */
export function foreseen(
  inquiry: Inquiry,
  { by, rows, outcomes }: Prediction,
  belief: Belief,
  account?: Account,
): readonly number[][] {
  const { causes, [by]: cases } = inquiry;
  const chances = causes.map(() => outcomes.map(() => 0));
  const weights = causes.map(() => 0);
  const without = new Map<readonly number[], number>();
  cases.forEach(({ cause }, k) => {
    const row = rows[k] as readonly number[];
    let known = without.get(row);
    if (known === undefined) {
      without.set(row, (known = account ? likelihood(row, account.likelihoods) : 1));
    }
    const weight = (belief.within[by][k] as number) / known;
    if (weight === 0) return;
    weights[cause] = (weights[cause] as number) + weight;
    const sums = chances[cause] as number[];
    for (let o = 0; o < row.length; o++) {
      sums[o] = (sums[o] as number) + weight * (row[o] as number);
    }
  });
  return chances.map((sums, c) => sums.map((sum) => sum / (weights[c] as number)));
}
