import { groupsOf } from './bracket.ts';
import type { Cause } from './cause.ts';
import { mistakenBy } from './doubt.ts';
import { byCause, type Inquiry } from './inquiry.ts';
import { type Account, chanceSaid, type Observation, openStage, wrongness } from './observation.ts';
import type { Outcome } from './outcome.ts';
import { type Belief, posterior } from './posterior.ts';

/** Suspects, the likeliest first. */
export interface Ranking {
  /** After what was seen, by cause. */
  readonly chances: readonly number[];
  readonly belief: Belief;
  readonly brackets: readonly Bracket[];
  /**
   * Whether the leading causes that no test would part, with the unit open as far as it is, have
   * the chance that the practice calls enough.
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
}

/** An observation, and what it says of a bracket. */
export interface Evidence {
  readonly observation: Observation;
  /** How much likelier it was by this cause than by all of them: above 1 speaks for it. */
  readonly factor: number;
  /** What the cause would most likely have shown, where that is something else. */
  readonly would?: Outcome;
}

export function rank(inquiry: Inquiry, accounts: readonly Account[]): Ranking {
  const belief = posterior(inquiry, accounts);
  const { causes: chances } = belief;
  const spoken = accounts.map((account) => ({
    account,
    rows: byCause(inquiry, account.prediction),
  }));
  const mistaken = mistakenBy(inquiry, accounts).map(({ length }) => length);
  const brackets = groupsOf(belief, mistaken).map((among): Bracket => {
    const suspects = among.map((c) => {
      return { cause: inquiry.causes[c] as Cause, chance: chances[c] as number };
    });
    const chance = sumOf(suspects.map((suspect) => suspect.chance));
    return { chance, suspects, evidence: evidenceOf(inquiry, spoken, among[0] as number) };
  });
  const classes = inquiry.apart(openStage(inquiry.practice, accounts));
  const leading = Math.max(
    ...classes.map((among) => sumOf(among.map((c) => chances[c] as number))),
  );
  const enough = leading >= inquiry.practice['enough in a hundred'] / 100;
  return { chances, belief, brackets, enough };
}

function sumOf(chances: readonly number[]): number {
  return chances.reduce((a, b) => a + b, 0);
}

interface Spoken {
  readonly account: Account;
  readonly rows: readonly (readonly number[])[];
}

function evidenceOf(inquiry: Inquiry, spoken: readonly Spoken[], c: number): Evidence[] {
  return spoken.flatMap(({ account: { prediction, said }, rows }) => {
    const { outcomes } = prediction;
    return said.map(({ observation, means }) => {
      const wrong = wrongness(inquiry, observation.sure);
      const by = (row: readonly number[] = []) =>
        row.reduce((sum, chance, o) => {
          return sum + chance * chanceSaid(means, o, outcomes.length, wrong);
        }, 0);
      const all = inquiry.causes.reduce((sum, { prior }, k) => sum + prior * by(rows[k]), 0);
      const own = rows[c] as readonly number[];
      const likeliest = own.indexOf(Math.max(...own));
      const would = means.includes(likeliest) ? undefined : outcomes[likeliest];
      return { observation, factor: by(own) / all, ...(would && { would }) };
    });
  });
}
