import { groupsOf } from './bracket.ts';
import type { Cause, Inquiry } from '../cause/index.ts';
import { mistakenBy } from './doubt.ts';
import { foreseen } from './foreseen.ts';
import { type Account, chanceSaid, type Observation, openStage, wrongness } from './observation.ts';
import type { TestOutcome } from '../sight/index.ts';
import { type Belief, posterior } from './posterior.ts';

/** Suspects, the likeliest first. */
export interface Ranking {
  /** After what was seen, by cause. */
  readonly chances: readonly number[];
  readonly belief: Belief;
  readonly brackets: readonly Bracket[];
  /**
   * Whether the leading causes that no test would part, with the unit open as far as it is, have
   * the chance that the experience calls enough.
   */
  readonly enough: boolean;
}

/** Causes that nothing seen so far parts: each explains all of it about as well. */
export interface Bracket {
  readonly chance: number;
  readonly suspects: readonly Suspect[];
  readonly evidence: readonly Evidence[];
}

export interface Suspect {
  readonly cause: Cause;
  readonly chance: number;
  /** It carries nothing where it slips: only its leak, which takes the pressure of others, can. */
  readonly starves: boolean;
}

/** An observation, and what it says of a bracket. */
export interface Evidence {
  readonly observation: Observation;
  /** The suspects of whom it says so; absent: all of the bracket. */
  readonly of?: readonly Cause[];
  /**
   * How much likelier it was by these than by all causes, the rest being as it was seen: above 1
   * speaks for each of them. Of several, the one that it says least of.
   */
  readonly factor: number;
  /** What they would most likely have shown, all of them, where that is something else. */
  readonly would?: TestOutcome;
}

export function rank(inquiry: Inquiry, accounts: readonly Account[]): Ranking {
  const belief = posterior(inquiry, accounts);
  const { causes: chances } = belief;
  const spoken = accounts.flatMap((account) => spokenOf(inquiry, account, belief));
  const mistaken = mistakenBy(inquiry, accounts);
  const brackets = groupsOf(belief, mistaken).map((among): Bracket => {
    const suspects = among.map((c) => {
      const cause = inquiry.causes[c] as Cause;
      return { cause, chance: chances[c] as number, starves: starves(inquiry, accounts, cause) };
    });
    const chance = sumOf(suspects.map((suspect) => suspect.chance));
    return { chance, suspects, evidence: spoken.flatMap((one) => evidenceOf(inquiry, one, among)) };
  });
  const classes = inquiry.apart(openStage(inquiry, accounts));
  const leading = Math.max(
    ...classes.map((among) => sumOf(among.map((c) => chances[c] as number))),
  );
  const enough = leading >= inquiry.experience['enough in a hundred'] / 100;
  return { chances, belief, brackets, enough };
}

function starves(
  inquiry: Inquiry,
  accounts: readonly Account[],
  { cause, faults: [fault] }: Cause,
): boolean {
  if (cause !== 'device leaks' || !fault || !('device' in fault)) return false;
  return accounts.some(({ test, said, prediction: { outcomes } }) => {
    if (test.test !== 'under power' || inquiry.carries(fault.device, test.on)) return false;
    return said.some(({ means }) => means.every((o) => outcomes[o]?.word === 'slips'));
  });
}

function sumOf(chances: readonly number[]): number {
  return chances.reduce((a, b) => a + b, 0);
}

interface Spoken {
  readonly observation: Observation;
  readonly means: readonly number[];
  readonly outcomes: readonly TestOutcome[];
  readonly rows: readonly (readonly number[])[];
  /** How likely it is to be said: by a cause, and by all of them before anything was seen. */
  by(c: number): number;
  readonly all: number;
}

function spokenOf(inquiry: Inquiry, account: Account, belief: Belief): Spoken[] {
  const { prediction, said } = account;
  const { outcomes } = prediction;
  const rows = foreseen(inquiry, prediction, belief, account);
  return said.map(({ observation, means }) => {
    const wrong = wrongness(inquiry, observation.sure);
    const saying = outcomes.map((_, o) => chanceSaid(means, o, outcomes.length, wrong));
    const by = (c: number) => {
      return (rows[c] ?? []).reduce((sum, chance, o) => sum + chance * (saying[o] as number), 0);
    };
    const all = inquiry.causes.reduce((sum, { prior }, c) => sum + prior * by(c), 0);
    return { observation, means, outcomes, rows, by, all };
  });
}

// Once for all, where it says the same of all; else for those of whom it says one thing and those
// of whom it says another.
function evidenceOf({ causes }: Inquiry, spoken: Spoken, among: readonly number[]): Evidence[] {
  const { observation, means, outcomes, rows, by, all } = spoken;
  return ([1, -1, 0] as const).flatMap((side): Evidence[] => {
    const its = among.filter((c) => sideOf(by(c) / all) === side);
    if (its.length === 0) return [];
    const factors = its.map((c) => by(c) / all);
    const factor = factors.reduce((a, b) =>
      Math.abs(Math.log(b)) < Math.abs(Math.log(a)) ? b : a,
    );
    const likeliest = new Set(
      its.map((c) => {
        const own = rows[c] as readonly number[];
        return own.indexOf(Math.max(...own));
      }),
    );
    const [only] = likeliest;
    const other = likeliest.size === 1 && only !== undefined && !means.includes(only);
    const would = other ? outcomes[only] : undefined;
    const of = its.length < among.length && { of: its.map((c) => causes[c] as Cause) };
    return [{ observation, ...of, factor, ...(would && { would }) }];
  });
}

/** What speaks for a bracket and what against it, the most telling first; of both at most `most`. */
export function sidesOf(evidence: readonly Evidence[], most = Infinity) {
  const telling = ({ factor }: Evidence) => Math.abs(Math.log(factor));
  const spoken = evidence
    .filter(({ factor }) => sideOf(factor) !== 0)
    .toSorted((a, b) => telling(b) - telling(a))
    .slice(0, most);
  const on = (side: 1 | -1) => spoken.filter(({ factor }) => sideOf(factor) === side);
  return { for: on(1), against: on(-1) } as const;
}

/** Whether an observation speaks for a cause (1), against it (-1), or says nothing of it. */
export function sideOf(factor: number): -1 | 0 | 1 {
  return factor > 1 + SAYS ? 1 : factor < 1 - SAYS ? -1 : 0;
}

const SAYS = 0.05;
