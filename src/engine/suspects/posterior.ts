import type { Inquiry } from './inquiry.ts';
import type { Account } from './observation.ts';

/**
 * The chance of each cause, after what was seen: its prior times the likelihood of every
 * account (T. Bayes, 1763; P.-S. Laplace, 1774), of all causes together 1. Outcomes of
 * different tests are taken to be independent once the cause is known.
 */
export function posterior({ causes }: Inquiry, accounts: readonly Account[]): number[] {
  const logs = causes.map(({ prior }, c) =>
    accounts.reduce((sum, account) => sum + Math.log(likelihood(account, c)), Math.log(prior)),
  );
  const most = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - most));
  const sum = weights.reduce((a, b) => a + b, 0);
  return weights.map((weight) => weight / sum);
}

/** Of what was said, if cause `c` is the one: over every outcome that the test may have had. */
function likelihood({ prediction, likelihoods }: Account, c: number): number {
  const chances = prediction.chances[c] as readonly number[];
  const sum = chances.reduce((total, chance, o) => total + chance * (likelihoods[o] as number), 0);
  // Never quite impossible, so that whatever is said can be ranked.
  return Math.max(sum, Number.MIN_VALUE);
}
