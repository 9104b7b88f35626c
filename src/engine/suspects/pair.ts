import type { Cause, Inquiry } from '../cause/index.ts';
import { mistakenBy } from './doubt.ts';
import { type Account, accountsOf, type Observation } from './observation.ts';

/**
 * Two devices at fault at once, where no one cause explains everything that somebody surely saw
 * and these do: the likeliest first, and none that is far less common. Their ranking is that of
 * an inquiry of their own (`Inquiry.with`).
 */
export function pairsOf(inquiry: Inquiry, accounts: readonly Account[]): Cause[] {
  const observations = surelySeen(accounts);
  const wrong = mistakenBy(inquiry, accountsOf(inquiry, observations));
  if (wrong.some((mistaken) => mistaken.length === 0)) return [];
  // What the fewest causes explain is asked of a pair first.
  const missed = new Map(observations.map((observation) => [observation, 0]));
  for (const observation of wrong.flat()) {
    missed.set(observation, (missed.get(observation) ?? 0) + 1);
  }
  observations.sort((one, other) => (missed.get(other) ?? 0) - (missed.get(one) ?? 0));
  const single = inquiry.causes.filter(({ cause, faults: [fault], both }) => {
    return !both && cause !== 'device fed by mistake' && fault && 'device' in fault;
  });
  const pairs = single.flatMap((a, k) =>
    single.slice(k + 1).flatMap((b): Cause[] => {
      if (deviceOf(a) === deviceOf(b)) return [];
      const faults = [...a.faults, ...b.faults];
      return [{ cause: a.cause, faults, prior: a.prior * b.prior, both: [a, b] }];
    }),
  );
  const likeliest = pairs.toSorted((a, b) => b.prior - a.prior);
  const found: Cause[] = [];
  for (const pair of likeliest) {
    if (found[0] && pair.prior < found[0].prior / AS_COMMON) break;
    if (explains(inquiry.with([pair]), observations)) found.push(pair);
  }
  const sum = found.reduce((total, { prior }) => total + prior, 0);
  return found.map((pair) => ({ ...pair, prior: pair.prior / sum }));
}

// Two common faults before a common one with a rare one: so many times less common is left out.
const AS_COMMON = 10;

function explains(pair: Inquiry, observations: readonly Observation[]): boolean {
  return observations.every((_, k) => {
    const accounts = accountsOf(pair, observations.slice(0, k + 1));
    return mistakenBy(pair, accounts)[0]?.length === 0;
  });
}

function surelySeen(accounts: readonly Account[]): Observation[] {
  const all = accounts.flatMap(({ said }) => said.map(({ observation }) => observation));
  return all.filter(({ sure }) => sure === 'sure');
}

function deviceOf({ faults: [fault] }: Cause): string | undefined {
  return fault && 'device' in fault ? fault.device : undefined;
}
