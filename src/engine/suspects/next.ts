import type { Practised, Stage, TestWord } from '../practice/index.ts';
import { STAGES } from '../practice/index.ts';
import type { Cause } from './cause.ts';
import type { Inquiry } from './inquiry.ts';
import { type Account, openStage, wrongness } from './observation.ts';
import type { Outcome } from './outcome.ts';
import { type Test, testText } from './test.ts';

/** What to test next. */
export interface Advice {
  /** Absent where no test that may be made can part the suspects any further. */
  readonly best?: Proposal;
  /** Tests that would be worth more, but for something that must be known first. */
  readonly heldBack: readonly HeldBack[];
}

export interface Proposal {
  readonly test: Test;
  /** What it is expected to tell of which cause it is, in bits. */
  readonly bits: number;
  readonly minutes: number;
  /** To open the unit so far, or to shut it again. */
  readonly opening: number;
  readonly practised: Practised;
  /** What each outcome that may come would leave, the likeliest first. */
  readonly parts: readonly Part[];
}

export interface Part {
  readonly outcome: Outcome;
  readonly chance: number;
  /** The leading suspects that would show it, the likeliest first. */
  readonly suspects: readonly Cause[];
}

/** `first` is to be tested before, and must surely show `must`. */
export interface HeldBack {
  readonly test: Test;
  readonly first: 'pressure' | 'fluid';
  readonly must: string;
  /** What it has shown in place of that, where it has been tested. */
  readonly shown: boolean;
}

/** A test from which less is expected is not worth its while. */
const LEAST_BITS = 0.01;

/**
 * The test that tells most for what it costs: the expected information about the cause, which
 * is the entropy that its answer takes away (D. V. Lindley, On a measure of the information
 * provided by an experiment, 1956; J. de Kleer and B. C. Williams, Diagnosing multiple faults,
 * 1987, choose probes so; both from memory), over minutes to open + minutes · risk. It looks
 * one test ahead. A test that has been made may be offered again, for its answer may have been
 * mistaken. `tests`: those that are open to choice.
 */
export function nextTest(
  inquiry: Inquiry,
  accounts: readonly Account[],
  chances: readonly number[],
  tests: readonly Test[] = inquiry.tests,
): Advice {
  const told = new Map(accounts.map((account) => [testText(account.test), account]));
  const uncertainty = entropy(chances);
  let best: Scored | undefined;
  const held: Scored[] = [];
  for (const test of tests) {
    const practised = inquiry.practice.tests[test.test];
    const opening = openingMinutes(inquiry, accounts, practised.at);
    const cost = opening + practised.minutes * inquiry.practice.risks[practised.risk];
    // Two outcomes tell a bit at most: what cannot win is not worked out.
    const most = Math.min(uncertainty, test.test === 'hand check' ? 1 : Infinity);
    if (best && most / cost <= best.score) continue;
    const bits = expectedBits(inquiry, test, told.get(testText(test)), chances);
    const scored = { test, bits, opening, score: bits / cost };
    if (bits < LEAST_BITS || (best && scored.score <= best.score)) continue;
    if (missing(practised, accounts)) held.push(scored);
    else best = scored;
  }
  const better = held.filter(({ score }) => !best || score > best.score);
  return {
    ...(best && { best: proposal(inquiry, best, chances) }),
    heldBack: better.map(({ test }) => {
      const practised = inquiry.practice.tests[test.test];
      return { test, ...(missing(practised, accounts) as Missing) };
    }),
  };
}

interface Scored {
  readonly test: Test;
  readonly bits: number;
  readonly opening: number;
  readonly score: number;
}

/**
 * The information that an answer, sure and perhaps mistaken, is expected to give: H(answer) −
 * Σ chance · H(answer | cause), in bits. `account` is what has been said of the test already.
 */
export function expectedBits(
  inquiry: Inquiry,
  test: Test,
  account: Account | undefined,
  chances: readonly number[],
): number {
  const { outcomes, chances: rows } = inquiry.predict(test);
  const wrong = wrongness(inquiry, 'sure');
  const other = wrong / (outcomes.length - 1);
  const overall = outcomes.map(() => 0);
  let within = 0;
  const answer = outcomes.map(() => 0);
  for (let c = 0; c < rows.length; c++) {
    const chance = chances[c] as number;
    if (chance < 1e-9) continue;
    const row = rows[c] as readonly number[];
    let sum = 0;
    for (let o = 0; o < row.length; o++) {
      answer[o] = (row[o] as number) * (account?.likelihoods[o] ?? 1);
      sum += answer[o] as number;
    }
    for (let o = 0; o < row.length; o++) {
      answer[o] = other + ((answer[o] as number) / (sum || 1)) * (1 - wrong - other);
      overall[o] = (overall[o] as number) + chance * (answer[o] as number);
    }
    within += chance * entropy(answer);
  }
  return entropy(overall) - within;
}

function entropy(chances: readonly number[]): number {
  let bits = 0;
  for (const chance of chances) if (chance > 0) bits -= chance * Math.log2(chance);
  return bits;
}

/** From how far the unit is open now, as what was seen tells, to the stage. */
function openingMinutes({ practice }: Inquiry, accounts: readonly Account[], stage: Stage): number {
  const to = STAGES.indexOf(stage);
  const now = STAGES.indexOf(openStage(practice, accounts));
  return STAGES.slice(Math.min(now, to) + 1, Math.max(now, to) + 1).reduce((minutes, between) => {
    return minutes + practice['minutes to open'][between as Exclude<Stage, 'in the car'>];
  }, 0);
}

type Missing = Omit<HeldBack, 'test'>;

/** What must be known before a test and is not: it was said, surely, and nothing was said against it. */
function missing({ first = {} }: Practised, accounts: readonly Account[]): Missing | undefined {
  for (const [test, must] of Object.entries(first) as [TestWord & Missing['first'], string][]) {
    const account = accounts.find((other) => other.test.test === test);
    const said = (account?.said ?? []).map(({ observation, means }) => {
      const words = means.map((o) => account?.prediction.outcomes[o]?.word as string);
      return { sure: observation.sure === 'sure', so: words.length === 1 && words[0] === must };
    });
    const known = said.every(({ so }) => so) && said.some(({ sure }) => sure);
    if (!known) return { first: test, must, shown: said.some(({ so }) => !so) };
  }
  return undefined;
}

function proposal(
  inquiry: Inquiry,
  { test, bits, opening }: Scored,
  chances: readonly number[],
): Proposal {
  const practised = inquiry.practice.tests[test.test];
  const { outcomes, chances: rows } = inquiry.predict(test);
  const leading = inquiry.causes
    .map((cause, c) => ({ cause, c, chance: chances[c] as number }))
    .filter(({ chance }) => chance >= LEADING)
    .toSorted((a, b) => b.chance - a.chance);
  const parts = outcomes.map((outcome, o) => ({
    outcome,
    chance: rows.reduce((sum, row, c) => sum + (row[o] as number) * (chances[c] as number), 0),
    suspects: leading
      .filter(({ c }) => {
        const row = rows[c] as readonly number[];
        return row.indexOf(Math.max(...row)) === o;
      })
      .map(({ cause }) => cause),
  }));
  return {
    test,
    bits,
    minutes: practised.minutes,
    opening,
    practised,
    parts: parts.filter(({ chance }) => chance >= LEADING).toSorted((a, b) => b.chance - a.chance),
  };
}

// A smaller chance is not worth a word in what a test would part.
const LEADING = 0.01;
