import type { Cause } from './cause.ts';
import type { Inquiry } from './inquiry.ts';
import { type Account, chanceSaid, type Observation, wrongness } from './observation.ts';
import type { Outcome } from './outcome.ts';
import { posterior } from './posterior.ts';
import type { Prediction } from './prediction.ts';

/** Suspects, the likeliest first. */
export interface Ranking {
  /** After what was seen, by cause. */
  readonly chances: readonly number[];
  readonly brackets: readonly Bracket[];
  /** Whether the first bracket has the chance that the practice calls enough. */
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
  /** What the cause would most likely show. */
  readonly would: Outcome;
}

export function rank(inquiry: Inquiry, accounts: readonly Account[]): Ranking {
  const chances = posterior(inquiry, accounts);
  const brackets = bracketsOf(inquiry, accounts).map((among) => {
    const suspects = among
      .map((c) => ({ cause: inquiry.causes[c] as Cause, chance: chances[c] as number }))
      .toSorted((a, b) => b.chance - a.chance);
    const chance = suspects.reduce((sum, suspect) => sum + suspect.chance, 0);
    return { chance, suspects, evidence: evidenceOf(inquiry, accounts, among[0] as number) };
  });
  brackets.sort((a, b) => b.chance - a.chance);
  const enough = (brackets[0]?.chance ?? 0) >= inquiry.practice['enough in a hundred'] / 100;
  return { chances, brackets, enough };
}

/**
 * The causes (as places among them) that none of the tests parts, together. A test parts two
 * causes if it would show different things at least half of the time; one that makes them only
 * somewhat more or less likely (a burnt smell) does not.
 */
export function bracketsOf(
  { causes }: Inquiry,
  accounts: readonly Pick<Account, 'prediction'>[],
): number[][] {
  const alike = accounts.map(({ prediction }) => alikeIn(prediction));
  const groups = new Map<string, number[]>();
  causes.forEach((_, c) => {
    const key = alike.map((of) => of[c]).join(' ');
    const group = groups.get(key);
    if (group) group.push(c);
    else groups.set(key, [c]);
  });
  return [...groups.values()];
}

// By cause, a number that it has in common with those that the test does not part from it, by
// itself or by way of a third: so that to be alike is the same for all of a bracket.
function alikeIn({ chances }: Prediction): number[] {
  const rows: (readonly number[])[] = [];
  const groups: number[] = [];
  const rowOf = chances.map((row) => {
    const known = rows.findIndex((other) => distance(row, other) === 0);
    if (known >= 0) return known;
    const near = rows.flatMap((other, r) => (distance(row, other) < PARTS ? [groups[r]] : []));
    const [group = rows.length] = near;
    groups.forEach((its, r) => {
      if (near.includes(its)) groups[r] = group;
    });
    groups.push(group);
    return rows.push(row) - 1;
  });
  return rowOf.map((row) => groups[row] as number);
}

const PARTS = 0.5;

// The part of the time in which two rows show different things (their total variation).
function distance(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, chance, o) => sum + Math.abs(chance - (b[o] as number)), 0) / 2;
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
      const would = outcomes[own.indexOf(Math.max(...own))] as Outcome;
      return { observation, factor: by(own) / all, would };
    });
  });
}
