import type { Inquiry } from '../cause/index.ts';
import type { Account } from './observation.ts';

/** What is believed after what was seen. */
export interface Belief {
  /** By cause, of all together 1. */
  readonly causes: readonly number[];
  /** By manner and by reason: the chance of its cause, and within the cause of it. */
  readonly manners: readonly number[];
  readonly reasons: readonly number[];
  /** By manner and by reason: its chance within its cause, of which all together are 1. */
  readonly within: Readonly<Record<'manners' | 'reasons', readonly number[]>>;
  /** By cause: the logarithm of how likely it is that just this would be seen. */
  readonly fits: readonly number[];
}

/**
 * The chance of each cause, after what was seen: its prior times the likelihood of every
 * account (T. Bayes, 1763; P.-S. Laplace, 1774), of all causes together 1. A cause may be so in
 * one manner or another, and has one all along: how weak a clutch is in first it is in third. So
 * outcomes of road tests are taken to be independent once the manner is known, and those of the
 * experience's tables once the reason is.
 */
export function posterior(inquiry: Inquiry, accounts: readonly Account[]): Belief {
  const { causes } = inquiry;
  const manners = fitsOf(inquiry, accounts, 'manners');
  const reasons = fitsOf(inquiry, accounts, 'reasons');
  const fits = causes.map((_, c) => (manners.causes[c] as number) + (reasons.causes[c] as number));
  const logs = causes.map(({ prior }, c) => Math.log(prior) + (fits[c] as number));
  const chances = shares(logs);
  const within = ({ within: its }: Fits, cases: readonly { readonly cause: number }[]) =>
    its.map((chance, k) => chance * (chances[cases[k]?.cause as number] as number));
  return {
    causes: chances,
    manners: within(manners, inquiry.manners),
    reasons: within(reasons, inquiry.reasons),
    within: { manners: manners.within, reasons: reasons.within },
    fits,
  };
}

interface Fits {
  /** By cause: the logarithm of its likelihood. */
  readonly causes: readonly number[];
  /** By case: its share of the likelihood of its cause. */
  readonly within: readonly number[];
}

function fitsOf(inquiry: Inquiry, accounts: readonly Account[], by: 'manners' | 'reasons'): Fits {
  const cases = inquiry[by];
  const logs = cases.map(({ share }) => Math.log(share));
  for (const { prediction, likelihoods } of accounts) {
    if (prediction.by !== by) continue;
    const known = new Map<readonly number[], number>();
    for (let k = 0; k < cases.length; k++) {
      const row = prediction.rows[k] as readonly number[];
      let log = known.get(row);
      if (log === undefined) known.set(row, (log = Math.log(likelihood(row, likelihoods))));
      logs[k] = (logs[k] as number) + log;
    }
  }
  const most = inquiry.causes.map(() => -Infinity);
  cases.forEach(({ cause }, k) => {
    most[cause] = Math.max(most[cause] as number, logs[k] as number);
  });
  const sums = inquiry.causes.map(() => 0);
  cases.forEach(({ cause }, k) => {
    const part = Math.exp((logs[k] as number) - (most[cause] as number));
    sums[cause] = (sums[cause] as number) + part;
  });
  return {
    causes: sums.map((sum, c) => (most[c] as number) + Math.log(sum)),
    within: cases.map(({ cause }, k) => {
      return Math.exp((logs[k] as number) - (most[cause] as number)) / (sums[cause] as number);
    }),
  };
}

// Weights whose logarithms are given, of all together 1.
function shares(logs: readonly number[]): number[] {
  const most = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - most));
  const sum = weights.reduce((a, b) => a + b, 0);
  return weights.map((weight) => weight / sum);
}

/** Of what was said of a test, over every outcome that it may have had; never quite impossible. */
export function likelihood(row: readonly number[], likelihoods: readonly number[]): number {
  const sum = row.reduce((total, chance, o) => total + chance * (likelihoods[o] as number), 0);
  // So that whatever is said can be ranked.
  return Math.max(sum, Number.MIN_VALUE);
}
