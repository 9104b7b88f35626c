/**
 * Diagnosis played out. A fault is drawn by its weight in experience.yaml; the tool's questions
 * are answered from the faulty train, one answer in ten wrong (any of the others alike, each
 * time by itself); the ranking at the end is held against the truth. Beside it the best of some
 * fixed orders of the same tests, which may stop as soon as they know as much. The unit is not
 * stripped for it: no test is on the bench. Nothing here is a test.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { type Experience, readExperience } from '../src/engine/experience/index.ts';
import {
  accountsOf,
  type Belief,
  expectedBits,
  nextTest,
  type Observation,
  posterior,
  rank,
} from '../src/engine/suspects/index.ts';
import { inquire, type Inquiry } from '../src/engine/cause/index.ts';
import { type TestOutcome, sightOf, type Test, testText } from '../src/engine/sight/index.ts';
import type { Train } from '../src/engine/train/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';
import { Dice } from '../test/dice.ts';

const RUNS = 1000;
const WRONG = 0.1;
const MOST_TESTS = 60;

interface Run {
  /** The place of the true fault's bracket in the ranking, from 0. */
  readonly place: number;
  readonly tests: number;
  readonly minutes: number;
}

/** A case on the road: what is so, and what was said of it. */
interface Case {
  readonly truth: number;
  /** In what manner, and for what reason: one each, all along. */
  readonly manner: number;
  readonly reason: number;
  readonly outcomes: Map<Test, number>;
  readonly observations: Observation[];
}

type Choice = (observations: readonly Observation[], belief: Belief) => Test | undefined;

export function diagnosis(): void {
  const { experience } = readExperience(readFileSync('experience.yaml', 'utf8'));
  if (!experience) throw new Error('experience.yaml has errors');
  console.log(`
Diagnosis: ${RUNS} faults on each train, ${WRONG * 100} % of the answers wrong (medians of tests, minutes)
                              the tool                       the best fixed order
train                seed   first  top 3  tests  min    first  top 3  tests  min   list   re-ranked`);
  const files = readdirSync('trains').filter((name) => name.endsWith('.train.yaml'));
  const played = files.flatMap((file, k) => {
    const { train } = readTrain(readFileSync(`trains/${file}`, 'utf8'));
    return train && train.ranges.length > 0 ? [play(train, experience, file, 3000 + k)] : [];
  });
  const wished: readonly (readonly [string, (its: Played) => boolean])[] = [
    ['first in at least 90 %', ({ tool }) => share(tool, 1) >= 0.9],
    ['among the first three in at least 98 %', ({ tool }) => share(tool, 3) >= 0.98],
    ['no more tests than the best order', (its) => ratioTo(its, 'fixed', 'tests') <= 1],
    ['half the minutes of the best order', (its) => ratioTo(its, 'fixed', 'minutes') <= 1 / 2],
    ['half the minutes of it as a list', ({ tool, list }) => median(tool, 'minutes') <= list / 2],
    ['half the minutes of the trade’s order', (its) => ratioTo(its, 'trade', 'minutes') <= 1 / 2],
  ];
  console.log('Hoped for, and on how many trains it is so:');
  for (const [what, so] of wished) {
    console.log(`  ${what}: ${played.filter(so).length} of ${played.length}`);
  }
}

// The first tests of an order, worked through as a list: how many of them it takes until the
// rankings after them are as right as is hoped for, and the minutes of those.
function listed(inquiry: Inquiry, seed: number, order: readonly Test[]): number {
  const dice = new Dice(seed);
  const { experience } = inquiry;
  const brackets = inquiry.apart('pan off');
  const cases = Array.from({ length: LISTED }, () => newCase(inquiry, dice));
  let [minutes, open] = [0, false];
  for (const test of order) {
    const { at, minutes: its } = experience.tests[test.test];
    const opens = at === 'pan off';
    minutes += its + (opens === open ? 0 : experience['minutes to open']['pan off']);
    open = opens;
    const places = cases.map((one) => {
      one.observations.push(answered(inquiry, test, one, dice));
      const chances = posterior(inquiry, accountsOf(inquiry, one.observations)).causes;
      const sums = brackets.map((among) => among.reduce((s, c) => s + (chances[c] as number), 0));
      const own = sums[brackets.findIndex((among) => among.includes(one.truth))] as number;
      return sums.filter((sum) => sum > own).length;
    });
    const within = (most: number) => places.filter((place) => place < most).length / LISTED;
    if (within(1) >= 0.9 && within(3) >= 0.98) return minutes;
  }
  return Infinity;
}

const LISTED = 400;

interface Played {
  readonly tool: readonly Run[];
  readonly fixed: readonly Run[];
  readonly trade: readonly Run[];
  /** Minutes of a list that is worked through, whatever it shows. */
  readonly list: number;
}

function play(train: Train, experience: Experience, file: string, seed: number): Played {
  const inquiry = inquire(train, experience);
  const tests = inquiry.tests.filter(({ test }) => experience.tests[test].at !== 'on the bench');
  const may = ({ test }: Test) => experience.tests[test].at !== 'on the bench';
  const tool = runs(inquiry, seed, (observations, belief) => {
    return nextTest(inquiry, accountsOf(inquiry, observations), belief, may).best?.test;
  });
  const told = learnt(inquiry, tests);
  const orders = [inTradeOrder(tests), inTradeOrder(tests).toReversed(), told];
  const [trade = [], ...more] = orders.map((order) => {
    return runs(inquiry, seed, ({ length }) => order[length % order.length]);
  });
  const fixed = [trade, ...more].reduce((a, b) => {
    return median(b, 'minutes') < median(a, 'minutes') ? b : a;
  });
  const list = listed(inquiry, seed, told);
  const cells = [tool, fixed].flatMap((its) => [
    `${(100 * share(its, 1)).toFixed(1)}`.padStart(7),
    `${(100 * share(its, 3)).toFixed(1)}`.padStart(7),
    `${median(its, 'tests')}`.padStart(6),
    `${median(its, 'minutes')}`.padStart(6),
    '  ',
  ]);
  const name = file.replace('.train.yaml', '').slice(0, 20).padEnd(20);
  console.log(
    `${name} ${seed} ${cells.join('')}${list === Infinity ? '-' : list}`.padEnd(94) +
      `${reranking(inquiry).toFixed(1)} ms`,
  );
  return { tool, fixed, trade, list };
}

/** A ranking with its evidence and the next test, the hand checks too, after ten observations. */
function reranking(inquiry: Inquiry): number {
  const dice = new Dice(1);
  const one = newCase(inquiry, dice);
  for (const test of dice.several(inquiry.tests, 10)) {
    one.observations.push(answered(inquiry, test, one, dice));
  }
  const took = Array.from({ length: 15 }, () => {
    const start = performance.now();
    const accounts = accountsOf(inquiry, one.observations);
    nextTest(inquiry, accounts, rank(inquiry, accounts).belief);
    return performance.now() - start;
  });
  return took.toSorted((a, b) => a - b)[7] as number;
}

function runs(inquiry: Inquiry, seed: number, choose: Choice): Run[] {
  const dice = new Dice(seed);
  const { experience } = inquiry;
  const enough = experience['enough in a hundred'] / 100;
  const brackets = inquiry.apart('pan off');
  return Array.from({ length: RUNS }, () => {
    const one = newCase(inquiry, dice);
    let [minutes, open] = [0, false];
    for (;;) {
      const { observations, truth } = one;
      const belief = posterior(inquiry, accountsOf(inquiry, observations));
      const chances = belief.causes;
      const ranked = brackets
        .map((among) => ({ among, chance: among.reduce((s, c) => s + (chances[c] as number), 0) }))
        .toSorted((a, b) => b.chance - a.chance);
      const going = (ranked[0]?.chance ?? 1) < enough && observations.length < MOST_TESTS;
      const test = going ? choose(observations, belief) : undefined;
      if (!test) {
        const place = ranked.findIndex(({ among }) => among.includes(truth));
        return { place, tests: observations.length, minutes };
      }
      const opens = experience.tests[test.test].at === 'pan off';
      if (opens !== open) minutes += experience['minutes to open']['pan off'];
      open = opens;
      minutes += experience.tests[test.test].minutes;
      observations.push(answered(inquiry, test, one, dice));
    }
  });
}

// What somebody says of a test. It has one outcome, however often it is made.
function answered(
  inquiry: Inquiry,
  test: Test,
  { manner, reason, outcomes }: Case,
  dice: Dice,
): Observation {
  const prediction = inquiry.predict(test);
  const row = prediction.rows[prediction.by === 'manners' ? manner : reason] as readonly number[];
  const so = outcomes.get(test) ?? drawn(row, dice);
  outcomes.set(test, so);
  const others = prediction.outcomes.filter((_, o) => o !== so);
  const said = dice.chance(WRONG) ? dice.pick(others) : (prediction.outcomes[so] as TestOutcome);
  return { test, sight: sightOf(said), sure: 'sure' };
}

function newCase({ causes, manners, reasons }: Inquiry, dice: Dice): Case {
  const weights = causes.map(({ faults, prior }) => (faults.length > 0 ? prior : 0));
  const truth = drawn(weights, dice);
  const of = (cases: readonly { readonly cause: number; readonly share: number }[]) => {
    return drawn(
      cases.map(({ cause, share: its }) => (cause === truth ? its : 0)),
      dice,
    );
  };
  return { truth, manner: of(manners), reason: of(reasons), outcomes: new Map(), observations: [] };
}

function drawn(weights: readonly number[], dice: Dice): number {
  let left = (dice.whole(0, 2 ** 30 - 1) / 2 ** 30) * weights.reduce((a, b) => a + b, 0);
  return weights.findIndex((weight) => (left -= weight) < 0);
}

// Cheap and harmless first, the pan last; a stall test comes after the pressure.
function inTradeOrder(tests: readonly Test[]): Test[] {
  const order = ['fluid', 'pressure', 'under power', 'coast', 'stall', 'air check'];
  return tests.toSorted((a, b) => order.indexOf(a.test) - order.indexOf(b.test));
}

// An order made for the train: at each place the test that on the average of many cases tells
// most a minute after those before it. It repeats a test where that tells most.
function learnt(inquiry: Inquiry, tests: readonly Test[]): Test[] {
  const dice = new Dice(7);
  const { experience } = inquiry;
  const cases = Array.from({ length: 80 }, () => newCase(inquiry, dice));
  const order: Test[] = [];
  while (order.length < 30) {
    const bits = tests.map(() => 0);
    for (const { observations } of cases) {
      const accounts = accountsOf(inquiry, observations);
      const told = new Map(accounts.map((account) => [testText(account.test), account]));
      const belief = posterior(inquiry, accounts);
      tests.forEach((test, k) => {
        const more = expectedBits(inquiry, test, told.get(testText(test)), belief);
        bits[k] = (bits[k] as number) + more;
      });
    }
    const last = order.at(-1);
    const open = last !== undefined && experience.tests[last.test].at === 'pan off';
    const worth = tests.map(({ test }, k) => {
      const { at, minutes } = experience.tests[test];
      const opening = (at === 'pan off') === open ? 0 : experience['minutes to open']['pan off'];
      return (bits[k] as number) / (minutes + opening);
    });
    const best = tests[worth.indexOf(Math.max(...worth))] as Test;
    order.push(best);
    for (const one of cases) one.observations.push(answered(inquiry, best, one, dice));
  }
  return order;
}

function share(its: readonly Run[], places: number): number {
  return its.filter(({ place }) => place < places).length / its.length;
}

function ratioTo({ tool, ...others }: Played, than: 'fixed' | 'trade', what: 'tests' | 'minutes') {
  return median(tool, what) / median(others[than], what);
}

function median(its: readonly Run[], what: 'tests' | 'minutes'): number {
  return its.map((run) => run[what]).toSorted((a, b) => a - b)[its.length >> 1] ?? 0;
}
