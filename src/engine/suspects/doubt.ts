import { motionOf } from '../motion/index.ts';
import type { TestWord } from '../practice/index.ts';
import type { Cause } from './cause.ts';
import type { Inquiry } from './inquiry.ts';
import type { Account, Observation } from './observation.ts';
import { meantBy } from './outcome.ts';
import { type Prediction, Predictor } from './prediction.ts';

/** Without these observations the causes explain all the others. */
export interface Doubt {
  readonly observations: readonly Observation[];
  readonly causes: readonly Cause[];
}

/**
 * The fewest observations that must be mistaken, in every way in which so few can be; none
 * where one cause explains everything that was seen. Mechanics alone can contradict: what a
 * table of the practice makes unlikely may still be. `chances` order the answer.
 */
export function doubtsOf(
  inquiry: Inquiry,
  accounts: readonly Account[],
  chances: readonly number[],
): Doubt[] {
  const against = inquiry.causes.map((cause, c) => ({
    cause,
    chance: chances[c] as number,
    observations: accounts.flatMap((account) => mistaken(account, account.prediction, c)),
  }));
  const fewest = Math.min(...against.map(({ observations }) => observations.length));
  if (fewest === 0) return [];
  const doubts = new Map<string, { observations: Observation[]; causes: Cause[] }>();
  const all = accounts.flatMap(({ said }) => said.map(({ observation }) => observation));
  for (const { cause, observations } of against
    .filter((its) => its.observations.length === fewest)
    .toSorted((a, b) => b.chance - a.chance)) {
    const key = observations.map((observation) => all.indexOf(observation)).join(' ');
    const doubt = doubts.get(key);
    if (doubt) doubt.causes.push(cause);
    else doubts.set(key, { observations, causes: [cause] });
  }
  return [...doubts.values()];
}

// The fewest of an account's observations that are mistaken if cause `c` of the prediction is
// the one; of as few, those that nobody was sure of.
function mistaken({ test, said }: Account, prediction: Prediction, c: number): Observation[] {
  const { outcomes, whole, chances } = prediction;
  const row = chances[c] as readonly number[];
  const observations = said.map(({ observation }) => observation);
  let best: Observation[] | undefined;
  outcomes.forEach((_, o) => {
    if (row[o] === 0 && !TABLED.has(test.test)) return;
    const wrong = observations.filter(({ sight }) => !meantBy(sight, outcomes, whole).includes(o));
    if (!best || weight(wrong) < weight(best)) best = wrong;
  });
  return best ?? observations;
}

const TABLED: ReadonlySet<TestWord> = new Set(['stall', 'fluid', 'pressure', 'air check']);

// First how many they are, then how many of them were sure.
function weight(observations: readonly Observation[]): number {
  const sure = observations.filter((observation) => observation.sure === 'sure').length;
  return observations.length + sure / (observations.length + 1);
}

/**
 * Pairs of faults of the train that would explain everything that was seen, the likeliest
 * first. Nothing is looked for where there are too many pairs to try.
 */
export function pairsOf(inquiry: Inquiry, accounts: readonly Account[]): Cause[] {
  const single = inquiry.causes.filter(({ faults }) => faults.length > 0);
  if (single.length > MOST_PAIRED) return [];
  const whole = motionOf(inquiry.train);
  const pairs: Cause[] = [];
  single.forEach((a, k) => {
    for (const b of single.slice(k + 1)) {
      const faults = [...a.faults, ...b.faults];
      const pair = { cause: a.cause, faults, prior: a.prior * b.prior };
      const predictor = new Predictor(whole, inquiry.practice, [pair]);
      const explains = accounts.every((account) => {
        return mistaken(account, predictor.predict(account.test), 0).length === 0;
      });
      if (explains) pairs.push(pair);
    }
  });
  return pairs.toSorted((a, b) => b.prior - a.prior);
}

// A hundred faults are five thousand pairs, and a few seconds.
const MOST_PAIRED = 100;
