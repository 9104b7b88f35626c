import { type Stage, STAGES, type Sureness } from '../experience/index.ts';
import type { Inquiry, Prediction } from '../cause/index.ts';
import { meantBy, type Sight, type Test, testText } from '../sight/index.ts';

/** What somebody saw of a test. A test that was made twice is two observations. */
export interface Observation {
  readonly test: Test;
  readonly sight: Sight;
  readonly sure: Sureness;
}

/** All that was said of one test. */
export interface Account {
  readonly test: Test;
  readonly prediction: Prediction;
  readonly said: readonly Said[];
  /**
   * By outcome: how likely it is that just this would be said if that had been the outcome, the
   * likeliest 1.
   */
  readonly likelihoods: readonly number[];
}

export interface Said {
  readonly observation: Observation;
  /** The outcomes that it may mean. */
  readonly means: readonly number[];
}

/**
 * What was seen, test by test, in an order that does not depend on theirs. A test has one
 * outcome however often it is made: what is said of it may be mistaken, each time by itself.
 */
export function accountsOf(inquiry: Inquiry, observations: readonly Observation[]): Account[] {
  const byTest = new Map<string, Observation[]>();
  for (const observation of observations) {
    const key = testText(observation.test);
    const others = byTest.get(key);
    if (others) others.push(observation);
    else byTest.set(key, [observation]);
  }
  const keys = [...byTest.keys()].toSorted();
  return keys.map((key) => accountOf(inquiry, byTest.get(key) as Observation[]));
}

function accountOf(inquiry: Inquiry, observations: readonly Observation[]): Account {
  const [{ test }] = observations as [Observation];
  const prediction = inquiry.predict(test);
  const { outcomes } = prediction;
  const said = observations.map((observation) => {
    return { observation, means: meantBy(observation.sight, prediction) };
  });
  // Sums of logarithms: a thousand answers would come to nothing in a product. Sorted, for a
  // sum of floats depends on the order.
  const logs = outcomes.map((_, o) =>
    said
      .map(({ observation, means }) => {
        const wrong = wrongness(inquiry, observation.sure);
        return Math.log(chanceSaid(means, o, outcomes.length, wrong));
      })
      .toSorted((a, b) => a - b)
      .reduce((a, b) => a + b, 0),
  );
  const most = Math.max(...logs);
  return { test, prediction, said, likelihoods: logs.map((log) => Math.exp(log - most)) };
}

/** How far the unit is open: by where it is, else as what was seen needs. */
export function openStage(
  { at, experience: { tests } }: Inquiry,
  accounts: readonly Account[],
): Stage {
  if (at === 'in pieces') return 'on the bench';
  if (at === 'on the road' || at === 'on the hoist') return 'in the car';
  const stages = new Set(accounts.map(({ test }) => tests[test.test].at));
  return STAGES.findLast((stage) => stages.has(stage)) ?? 'in the car';
}

/** How often such an answer is mistaken, from 0 to 1/2. */
export function wrongness({ experience }: Inquiry, sure: Sureness): number {
  return experience['wrong in a hundred'][sure] / 100;
}

/**
 * The chance that one of `means` is said where `outcome` is so: a mistaken answer is any of the
 * others alike.
 */
export function chanceSaid(
  means: readonly number[],
  outcome: number,
  outcomes: number,
  wrong: number,
): number {
  const right = means.includes(outcome) ? 1 : 0;
  return right * (1 - wrong) + ((means.length - right) * wrong) / (outcomes - 1);
}
