import { type Practised, type Stage, type TestWord, STAGES } from '../experience/index.ts';
import type { Cause, Inquiry } from '../cause/index.ts';
import { foreseen } from './foreseen.ts';
import { type Account, openStage, wrongness } from './observation.ts';
import { type TestOutcome, baseText, type Test, testText } from '../sight/index.ts';
import type { Belief } from './posterior.ts';

/** What to test next. */
export interface Advice {
  /** Absent where no test that may be made can part the suspects any further. */
  readonly best?: Proposal;
  /** What would be done after it, or in its place; two at most. */
  readonly others: readonly Proposal[];
  /** Tests that would be worth more, but for something that must be known first. */
  readonly heldBack: readonly HeldBack[];
}

export interface Proposal {
  readonly test: Test;
  /** What it is expected to tell of which cause it is, and why, in bits. */
  readonly bits: number;
  readonly minutes: number;
  /** To open the unit so far, or to shut it again. */
  readonly opening: number;
  readonly practised: Practised;
  /** What each outcome that may come would leave, the likeliest first. */
  readonly parts: readonly ProposalPart[];
}

export interface ProposalPart {
  readonly outcome: TestOutcome;
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
const MOST_PROPOSED = 3;

/**
 * The tests that tell most for what they cost: the expected information about the cause and its
 * reason, which is the entropy that an answer takes away (D. V. Lindley, On a measure of the
 * information provided by an experiment, 1956; J. de Kleer and B. C. Williams, Diagnosing
 * multiple faults, 1987, choose probes so; both from memory), over minutes to open + minutes ·
 * risk. It looks one test ahead. What was surely seen is not proposed again, but for what is put
 * right at once where it is found wrong: that goes before all others. `may`: whether a test may
 * be proposed as things stand.
 */
export function nextTest(
  inquiry: Inquiry,
  accounts: readonly Account[],
  belief: Belief,
  may: (test: Test) => boolean = () => true,
): Advice {
  const told = new Map(accounts.map((account) => [testText(account.test), account]));
  const wrong = foundWrong(accounts);
  const made = madeAlready(inquiry, accounts, wrong);
  const uncertainty = entropy(belief.reasons);
  let best: Scored[] = [];
  const held: Scored[] = [];
  for (const test of inquiry.tests) {
    if (!may(test)) continue;
    const practised = inquiry.experience.tests[test.test];
    if (made.has(baseText(test))) continue;
    const opening = openingMinutes(inquiry, accounts, practised.at);
    const cost = opening + practised.minutes * inquiry.experience.risks[practised.risk];
    // Two outcomes tell a bit at most: what cannot win is not worked out.
    const most = Math.min(uncertainty, test.test === 'hand check' ? 1 : Infinity);
    const worst = best.length < MOST_PROPOSED ? undefined : (best.at(-1) as Scored);
    const mends = practised.mends === true && wrong.has(baseText(test));
    if (worst && !mends && most / cost <= worst.score) continue;
    const bits = expectedBits(inquiry, test, told.get(testText(test)), belief);
    if (bits < LEAST_BITS) continue;
    const scored = { test, bits, opening, score: mends ? Infinity : bits / cost };
    if (awaits(practised, accounts)) held.push(scored);
    else best = better(best, scored);
  }
  const [first, ...others] = best;
  const more = held.filter(({ score }) => !first || score > first.score);
  return {
    ...(first && { best: proposal(inquiry, first, belief) }),
    others: others.map((scored) => proposal(inquiry, scored, belief)),
    heldBack: more.map(({ test }) => {
      const practised = inquiry.experience.tests[test.test];
      return { test, ...(awaits(practised, accounts) as Missing) };
    }),
  };
}

interface Scored {
  readonly test: Test;
  readonly bits: number;
  readonly opening: number;
  readonly score: number;
}

// The best of each sort of test, for what is not at hand may be another.
function better(best: readonly Scored[], scored: Scored): Scored[] {
  const rival = best.find(({ test }) => test.test === scored.test.test);
  if (rival && worthMore(rival, scored) <= 0) return [...best];
  const others = best.filter((other) => other !== rival);
  return [...others, scored].toSorted(worthMore).slice(0, MOST_PROPOSED);
}

function worthMore(a: Scored, b: Scored): number {
  return b.score - a.score;
}

function foundWrong(accounts: readonly Account[]): Set<string> {
  const found = accounts.filter(({ said, prediction }) => {
    return said.some(({ observation, means }) => {
      return observation.sure === 'sure' && !means.includes(prediction.whole);
    });
  });
  return new Set(found.map(({ test }) => baseText(test)));
}

// Lightly driven, a gear has not been tried; and what was put right is tried again.
function madeAlready(
  { experience }: Inquiry,
  accounts: readonly Account[],
  wrong: ReadonlySet<string>,
): Set<string> {
  const made = accounts.filter(({ test, said, prediction }) => {
    if (!said.some(({ observation }) => observation.sure === 'sure')) return false;
    const light = 'load' in test && test.load === 'light';
    const asItShould = said.every(({ means }) => means.includes(prediction.whole));
    const mended = experience.tests[test.test].mends === true && wrong.has(baseText(test));
    return !(light && asItShould) && !mended;
  });
  return new Set(made.map(({ test }) => baseText(test)));
}

/**
 * The information that an answer, sure and perhaps mistaken, is expected to give: H(answer) −
 * Σ chance · H(answer | case), in bits; a case is a cause, by what its manners together show, or a
 * cause with its reason. `account` is what has been said of the test already.
 */
export function expectedBits(
  inquiry: Inquiry,
  test: Test,
  account: Account | undefined,
  belief: Belief,
): number {
  const { outcomes, rows, by } = inquiry.predict(test);
  const wrong = wrongness(inquiry, 'sure');
  const other = wrong / (outcomes.length - 1);
  const said = (chance: number) => other + chance * (1 - wrong - other);
  const overall = outcomes.map(() => 0);
  let within = 0;
  const shown = outcomes.map(() => 0);
  let [cause, weight] = [-1, 0];
  const finish = () => {
    if (weight <= 1e-9) return;
    const answer = shown.map((chance) => said(chance / weight));
    answer.forEach((chance, o) => (overall[o] = (overall[o] as number) + weight * chance));
    within += weight * entropy(answer);
  };
  const cases = inquiry[by];
  for (let k = 0; k < cases.length; k++) {
    const its = by === 'manners' ? (cases[k]?.cause as number) : k;
    if (its !== cause) {
      finish();
      [cause, weight] = [its, 0];
      shown.fill(0);
    }
    const chance = belief[by][k] as number;
    if (chance < 1e-12) continue;
    weight += chance;
    const row = rows[k] as readonly number[];
    let sum = 1;
    if (account) {
      sum = row.reduce((all, c, o) => all + c * (account.likelihoods[o] as number), 0) || 1;
    }
    for (let o = 0; o < row.length; o++) {
      const likely = account ? (account.likelihoods[o] as number) / sum : 1;
      shown[o] = (shown[o] as number) + chance * (row[o] as number) * likely;
    }
  }
  finish();
  return entropy(overall) - within;
}

function entropy(chances: readonly number[]): number {
  let bits = 0;
  for (const chance of chances) if (chance > 0) bits -= chance * Math.log2(chance);
  return bits;
}

/** From how far the unit is open now, as what was seen tells, to the stage. */
function openingMinutes(inquiry: Inquiry, accounts: readonly Account[], stage: Stage): number {
  const { experience, at } = inquiry;
  // What is still asked lies on the bench.
  if (at === 'in pieces') return 0;
  const to = STAGES.indexOf(stage);
  const now = STAGES.indexOf(openStage(inquiry, accounts));
  return STAGES.slice(Math.min(now, to) + 1, Math.max(now, to) + 1).reduce((minutes, between) => {
    return minutes + experience['minutes to open'][between as Exclude<Stage, 'in the car'>];
  }, 0);
}

type Missing = Omit<HeldBack, 'test'>;

/** What must be known before a test and is not: it was said, surely, and nothing was said against it. */
export function awaits(
  { first = {} }: Practised,
  accounts: readonly Account[],
): Missing | undefined {
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

/** A test as it would be proposed, whatever others tell. */
export function proposalOf(
  inquiry: Inquiry,
  accounts: readonly Account[],
  belief: Belief,
  test: Test,
): Proposal {
  const opening = openingMinutes(inquiry, accounts, inquiry.experience.tests[test.test].at);
  const told = accounts.find((account) => testText(account.test) === testText(test));
  const bits = expectedBits(inquiry, test, told, belief);
  return proposal(inquiry, { test, bits, opening, score: 0 }, belief);
}

function proposal(inquiry: Inquiry, { test, bits, opening }: Scored, belief: Belief): Proposal {
  const { causes } = belief;
  const practised = inquiry.experience.tests[test.test];
  const prediction = inquiry.predict(test);
  const rows = foreseen(inquiry, prediction, belief);
  const leading = inquiry.causes
    .map((cause, c) => ({ cause, c, chance: causes[c] as number }))
    .filter(({ chance }) => chance >= LEADING)
    .toSorted((a, b) => b.chance - a.chance);
  const parts = prediction.outcomes.map((outcome, o) => ({
    outcome,
    chance: rows.reduce((sum, row, c) => sum + (row[o] as number) * (causes[c] as number), 0),
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
