import { bracketsOf } from './bracket.ts';
import type { Cause } from './cause.ts';
import type { Inquiry } from './inquiry.ts';
import { type Account, chanceSaid, type Observation, openStage, wrongness } from './observation.ts';
import type { Outcome } from './outcome.ts';
import { posterior } from './posterior.ts';

/** Suspects, the likeliest first. */
export interface Ranking {
  /** After what was seen, by cause. */
  readonly chances: readonly number[];
  readonly brackets: readonly Bracket[];
  /**
   * Whether the leading causes that no test would part, with the unit open as far as it is, have
   * the chance that the practice calls enough.
   */
  readonly enough: boolean;
}

/** Causes that nothing seen so far can part: each would have shown the same. */
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
  const chances = posterior(inquiry, accounts);
  const brackets = bracketsOf(
    inquiry.causes,
    accounts.map(({ prediction }) => prediction),
  ).map((among) => {
    const suspects = among
      .map((c) => ({ cause: inquiry.causes[c] as Cause, chance: chances[c] as number }))
      .toSorted((a, b) => b.chance - a.chance);
    const chance = sumOf(suspects.map((suspect) => suspect.chance));
    return { chance, suspects, evidence: evidenceOf(inquiry, accounts, among[0] as number) };
  });
  brackets.sort((a, b) => b.chance - a.chance);
  const classes = inquiry.apart(openStage(inquiry.practice, accounts));
  const leading = Math.max(
    ...classes.map((among) => sumOf(among.map((c) => chances[c] as number))),
  );
  const enough = leading >= inquiry.practice['enough in a hundred'] / 100;
  return { chances, brackets, enough };
}

function sumOf(chances: readonly number[]): number {
  return chances.reduce((a, b) => a + b, 0);
}

function evidenceOf(inquiry: Inquiry, accounts: readonly Account[], c: number): Evidence[] {
  return accounts.flatMap(({ prediction, said }) => {
    const { outcomes, chances } = prediction;
    return said.map(({ observation, means }) => {
      const wrong = wrongness(inquiry, observation.sure);
      const by = (row: readonly number[] = []) =>
        row.reduce((sum, chance, o) => {
          return sum + chance * chanceSaid(means, o, outcomes.length, wrong);
        }, 0);
      const all = inquiry.causes.reduce((sum, { prior }, k) => sum + prior * by(chances[k]), 0);
      const own = chances[c] as readonly number[];
      const likeliest = own.indexOf(Math.max(...own));
      const would = means.includes(likeliest) ? undefined : outcomes[likeliest];
      return { observation, factor: by(own) / all, ...(would && { would }) };
    });
  });
}
