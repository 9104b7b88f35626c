/**
 * Diagnosis played out: a fault is drawn by its weight in practice.yaml, the tool's questions
 * are answered from the faulty train, one answer in ten at random among the wrong ones, and the
 * ranking at the end is held against the truth. Prints a table; nothing here is a test.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { type Practice, readPractice } from '../src/engine/practice/index.ts';
import {
  accountsOf,
  bracketsOf,
  expectedBits,
  inquire,
  type Inquiry,
  nextTest,
  type Observation,
  posterior,
  sightOf,
  type Test,
} from '../src/engine/suspects/index.ts';
import type { Train } from '../src/engine/train/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';
import { Dice } from '../test/dice.ts';

const RUNS = Number(process.env['RUNS'] ?? 1000);
const WRONG = 0.1;
const MOST_TESTS = 60;
/** Nothing is opened that the car would have to come off the road for: a car is diagnosed first. */

interface Run {
  readonly first: boolean;
  readonly amongThree: boolean;
  readonly tests: number;
  readonly minutes: number;
}

type Choice = (observations: readonly Observation[], chances: readonly number[]) => Test | undefined;

export function diagnosis(): void {
  const { practice } = readPractice(readFileSync('practice.yaml', 'utf8'));
  if (!practice) throw new Error('practice.yaml has errors');
  console.log(`\nDiagnosis: ${RUNS} faults a train, ${WRONG * 100} % wrong answers`);
  const files = readdirSync('trains').filter((name) => name.endsWith('.train.yaml'));
  files.forEach((file, k) => {
    const { train } = readTrain(readFileSync(`trains/${file}`, 'utf8'));
    if (train && train.ranges.length > 0) played(train, practice, file, 3000 + k);
  });
}

function played(train: Train, practice: Practice, file: string, seed: number): void {
  const inquiry = inquire(train, practice);
  const tests = inquiry.tests.filter(({ test }) => practice.tests[test].at !== 'on the bench');
  const classes = bracketsOf(
    inquiry,
    tests.map((test) => ({ prediction: inquiry.predict(test) })),
  );
  const start = performance.now();
  const adaptive: Choice = (observations, chances) => {
    return nextTest(inquiry, accountsOf(inquiry, observations), chances, tests).best?.test;
  };
  const told = play(inquiry, tests, classes, adaptive, seed);
  const ms = performance.now() - start;
  const steps = told.reduce((sum, { tests: count }) => sum + count + 1, 0);
  const orders = fixedOrders(inquiry, tests);
  const fixed = Object.entries(orders).map(([name, order]) => {
    const runs = play(inquiry, tests, classes, (seen) => order[seen.length % order.length], seed);
    return { name, runs };
  });
  const best = fixed.toSorted((a, b) => median(a.runs, 'minutes') - median(b.runs, 'minutes'))[0];
  const show = (runs: readonly Run[]) =>
    `${percent(runs, 'first')} ${percent(runs, 'amongThree')} ${median(runs, 'tests')} tests ${median(runs, 'minutes')} min`;
  console.log(
    `${file.slice(0, 24).padEnd(24)} ${classes.length}/${inquiry.causes.length} ${tests.length} | ${show(told)} | ${best?.name} ${show(best?.runs ?? [])} | seed ${seed} ${(ms / steps).toFixed(2)} ms a step`,
  );
}

function percent(runs: readonly Run[], what: 'first' | 'amongThree'): string {
  return `${((100 * runs.filter((run) => run[what]).length) / runs.length).toFixed(1)} %`;
}

function median(runs: readonly Run[], what: 'tests' | 'minutes'): number {
  return runs.map((run) => run[what]).toSorted((a, b) => a - b)[runs.length >> 1] ?? 0;
}

function fixedOrders(inquiry: Inquiry, tests: readonly Test[]): Record<string, Test[]> {
  const rank: Record<string, number> = { fluid: 0, pressure: 1, 'under power': 2, 'over-run': 3 };
  const byTrade = tests.toSorted((a, b) => (rank[a.test] ?? 4) - (rank[b.test] ?? 4));
  const byGear = tests.toSorted((a, b) => (rank[b.test] ?? 4) - (rank[a.test] ?? 4));
  return { trade: byTrade, gears: byGear, told: learnt(inquiry, tests) };
}

// The order that tells most a minute on the average of many cases, none of which it looks at.
function learnt(inquiry: Inquiry, tests: readonly Test[]): Test[] {
  const dice = new Dice(7);
  const { causes, practice } = inquiry;
  const faults = causes.map(({ faults: its, prior }) => (its.length > 0 ? prior : 0));
  const cases = Array.from({ length: 80 }, () => ({
    truth: drawn(faults, dice),
    outcomes: new Map<Test, number>(),
    observations: [] as Observation[],
  }));
  const order: Test[] = [];
  while (order.length < 30) {
    const bits = tests.map(() => 0);
    for (const { observations } of cases) {
      const accounts = accountsOf(inquiry, observations);
      const chances = posterior(inquiry, accounts);
      tests.forEach((test, k) => {
        const account = accounts.find((its) => its.test === test);
        bits[k] = (bits[k] as number) + expectedBits(inquiry, test, account, chances);
      });
    }
    const open = order.some(({ test }) => practice.tests[test].at === 'pan off');
    const score = tests.map((test, k) => {
      const its = practice.tests[test.test];
      const opening = (its.at === 'pan off') === open ? 0 : practice['minutes to open']['pan off'];
      return (bits[k] as number) / (its.minutes + opening);
    });
    const best = tests[score.indexOf(Math.max(...score))] as Test;
    order.push(best);
    for (const one of cases) one.observations.push(answered(inquiry, best, one, dice));
  }
  return order;
}

function answered(
  inquiry: Inquiry,
  test: Test,
  { truth, outcomes }: { truth: number; outcomes: Map<Test, number> },
  dice: Dice,
): Observation {
  const prediction = inquiry.predict(test);
  const so = outcomes.get(test) ?? drawn(prediction.chances[truth] as readonly number[], dice);
  outcomes.set(test, so);
  const others = prediction.outcomes.map((_, o) => o).filter((o) => o !== so);
  const said = dice.chance(WRONG) ? dice.pick(others) : so;
  const sight = sightOf(prediction.outcomes[said] as (typeof prediction.outcomes)[number]);
  return { test, sight, sure: 'sure' };
}

function play(
  inquiry: Inquiry,
  tests: readonly Test[],
  classes: readonly (readonly number[])[],
  choose: Choice,
  seed: number,
): Run[] {
  const dice = new Dice(seed);
  const { causes, practice } = inquiry;
  const faults = causes.map(({ faults: its, prior }) => (its.length > 0 ? prior : 0));
  const enough = practice['enough in a hundred'] / 100;
  return Array.from({ length: RUNS }, () => {
    const truth = drawn(faults, dice);
    const outcomes = new Map<Test, number>();
    const observations: Observation[] = [];
    let minutes = 0;
    let open = false;
    for (;;) {
      const chances = posterior(inquiry, accountsOf(inquiry, observations));
      const ranked = classes
        .map((among) => ({ among, chance: among.reduce((s, c) => s + (chances[c] as number), 0) }))
        .toSorted((a, b) => b.chance - a.chance);
      const test =
        (ranked[0]?.chance ?? 0) >= enough || observations.length >= MOST_TESTS
          ? undefined
          : choose(observations, chances);
      if (!test) {
        const place = ranked.findIndex(({ among }) => among.includes(truth));
        return { first: place === 0, amongThree: place < 3, tests: observations.length, minutes };
      }
      const opens = practice.tests[test.test].at === 'pan off';
      if (opens !== open) minutes += practice['minutes to open']['pan off'];
      open = opens;
      minutes += practice.tests[test.test].minutes;
      observations.push(answered(inquiry, test, { truth, outcomes }, dice));
    }
  });
}

function drawn(weights: readonly number[], dice: Dice): number {
  const sum = weights.reduce((a, b) => a + b, 0);
  let left = (dice.whole(0, 2 ** 30 - 1) / 2 ** 30) * sum;
  for (let k = 0; k < weights.length; k++) {
    left -= weights[k] as number;
    if (left < 0) return k;
  }
  return weights.length - 1;
}

diagnosis();
