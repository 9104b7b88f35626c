import type { Cause, Inquiry } from '../cause/index.ts';
import type { Account, Observation } from './observation.ts';

/** Without these observations the causes explain all the others. */
export interface Doubt {
  readonly observations: readonly Observation[];
  readonly causes: readonly Cause[];
}

/**
 * The fewest observations that must be mistaken, in every way in which so few can be; none
 * where one cause explains everything that was seen. `chances` order the answer.
 */
export function doubtsOf(
  inquiry: Inquiry,
  accounts: readonly Account[],
  chances: readonly number[],
): Doubt[] {
  const against = mistakenBy(inquiry, accounts).map((observations, c) => ({
    cause: inquiry.causes[c] as Cause,
    chance: chances[c] as number,
    observations,
  }));
  const fewest = Math.min(...against.map(({ observations }) => observations.length));
  if (fewest === 0) return [];
  const doubts = new Map<string, { observations: Observation[]; causes: Cause[] }>();
  const all = accounts.flatMap(({ said }) => said.map(({ observation }) => observation));
  for (const { cause, observations } of against
    .filter((its) => its.observations.length === fewest)
    .toSorted((a, b) => b.chance - a.chance)) {
    const key = observations.map((observation) => all.indexOf(observation)).join(' ');
    const doubt = doubts.get(key);
    if (doubt) doubt.causes.push(cause);
    else doubts.set(key, { observations, causes: [cause] });
  }
  return [...doubts.values()];
}

/** By cause: the fewest observations that are mistaken if it is the one. */
export function mistakenBy(inquiry: Inquiry, accounts: readonly Account[]): Observation[][] {
  const road = fewestBy(inquiry, accounts, 'manners');
  const tables = fewestBy(inquiry, accounts, 'reasons');
  return road.map((observations, c) => [...observations, ...(tables[c] as Observation[])]);
}

// A cause is so in one manner all along, and for one reason: the one that leaves the fewest.
function fewestBy(
  inquiry: Inquiry,
  accounts: readonly Account[],
  by: 'manners' | 'reasons',
): Observation[][] {
  const judged = accounts
    .filter(({ prediction }) => prediction.by === by)
    .map((account) => ({ account, known: new Map<readonly number[], Observation[]>() }));
  const best = inquiry.causes.map((): Observation[] | undefined => undefined);
  const bestOf: number[] = inquiry.causes.map(() => Infinity);
  inquiry[by].forEach(({ cause }, k) => {
    let weighed = 0;
    for (const { account, known } of judged) {
      const row = account.prediction.rows[k] as readonly number[];
      let wrong = known.get(row);
      if (!wrong) known.set(row, (wrong = mistaken(account, row)));
      weighed += weight(wrong);
    }
    if (weighed >= (bestOf[cause] as number)) return;
    bestOf[cause] = weighed;
    best[cause] = judged.flatMap(({ account, known }) => {
      return known.get(account.prediction.rows[k] as readonly number[]) ?? [];
    });
  });
  return best.map((observations) => observations ?? []);
}

// The fewest of an account's observations that are mistaken where the test shows this; of as
// few, those that nobody was sure of.
function mistaken({ said }: Account, row: readonly number[]): Observation[] {
  let best: Observation[] | undefined;
  row.forEach((chance, o) => {
    if (chance < LEAST) return;
    const wrong = said.filter(({ means }) => !means.includes(o));
    const observations = wrong.map(({ observation }) => observation);
    if (!best || weight(observations) < weight(best)) best = observations;
  });
  return best ?? said.map(({ observation }) => observation);
}

// What is seen less often than this is not explained by what may cause it.
const LEAST = 0.035;

// First how many they are, then how many of them were sure.
function weight(observations: readonly Observation[]): number {
  const sure = observations.filter((observation) => observation.sure === 'sure').length;
  return observations.length + sure / 1e6;
}
