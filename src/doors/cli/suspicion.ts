import {
  accountsOf,
  doubtsOf,
  type Inquiry,
  nextTest,
  type Observation,
  pairsOf,
  rank,
  type Test,
} from '../../engine/suspects/index.ts';
import type { Suspicion } from '../../telling/report/index.ts';

/** All that can be said of what was seen. `tests`: those that may still be offered. */
export function suspicionOf(
  inquiry: Inquiry,
  observations: readonly Observation[],
  practice: string,
  tests: readonly Test[] = inquiry.tests,
): Suspicion {
  const accounts = accountsOf(inquiry, observations);
  const ranking = rank(inquiry, accounts);
  const advice = nextTest(inquiry, accounts, ranking.chances, tests);
  const doubts = doubtsOf(inquiry, accounts, ranking.chances);
  const pairs = doubts.length > 0 ? pairsOf(inquiry, accounts) : [];
  return { inquiry, observations, ranking, advice, doubts, pairs, practice };
}
