import type { Cause } from './cause.ts';
import { type Doubt, doubtsOf } from './doubt.ts';
import type { Inquiry } from './inquiry.ts';
import { type Advice, nextTest } from './next.ts';
import { accountsOf, type Observation } from './observation.ts';
import { pairsOf } from './pair.ts';
import { rank, type Ranking } from './ranking.ts';
import type { Test } from './test.ts';

/** All that can be said of what was seen. */
export interface Diagnosis {
  /** Of single causes; of pairs, where it takes two to explain what was seen. */
  readonly inquiry: Inquiry;
  readonly observations: readonly Observation[];
  readonly ranking: Ranking;
  readonly advice: Advice;
  /** What must be mistaken if one cause is to explain the rest; none where one explains it all. */
  readonly doubts: readonly Doubt[];
  /** Two faults at once that explain everything, where no one does. */
  readonly pairs: readonly Cause[];
}

/**
 * Which fault it is: one, if one explains everything that was surely seen; else two at once, if
 * two do; else one, and what must be doubted. `may`: whether a test may be proposed.
 */
export function diagnose(
  inquiry: Inquiry,
  observations: readonly Observation[],
  may?: (test: Test) => boolean,
): Diagnosis {
  const accounts = accountsOf(inquiry, observations);
  const single = rank(inquiry, accounts);
  const doubts = doubtsOf(inquiry, accounts, single.chances);
  const pairs = doubts.length > 0 ? pairsOf(inquiry, accounts) : [];
  if (pairs.length === 0) {
    const advice = nextTest(inquiry, accounts, single.belief, may);
    return { inquiry, observations, ranking: single, advice, doubts, pairs };
  }
  const both = inquiry.with(pairs);
  const told = accountsOf(both, observations);
  const ranking = rank(both, told);
  const advice = nextTest(both, told, ranking.belief, may);
  return { inquiry: both, observations, ranking, advice, doubts, pairs };
}
