import { type Fault, faultMatrix, type RoadSign, roadSign } from '../../engine/faults/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { accountsOf, foreseen, type Observation } from '../../engine/suspects/index.ts';
import { type Cause } from '../../engine/cause/index.ts';
import { type TestOutcome } from '../../engine/sight/index.ts';
import type { Diagnosis } from '../../engine/triage/index.ts';

/** What a suspect would show where something was seen. */
export interface Explained {
  readonly observation: Observation;
  /** What it would most likely show, all else that was seen given, and how likely. */
  readonly shows: TestOutcome;
  readonly chance: number;
  /** Whether that is what was said. */
  readonly agrees: boolean;
  /** Whether a train in order shows the same. */
  readonly sound: boolean;
  /** `train`: worked out of the train, and proved; `experience`: as a shop's figures say. */
  readonly by: 'train' | 'experience';
}

/** What a suspect would show of all that was seen, and the gear in which it shows first. */
export interface Explanation {
  readonly cause: Cause;
  readonly explained: readonly Explained[];
  readonly road?: RoadSign;
}

export function explain(
  known: Pick<Diagnosis, 'inquiry' | 'observations' | 'ranking'>,
  cause: Cause,
): Explanation {
  const explained = explanationOf(known, cause);
  const road = signOf(known.inquiry.train, cause.faults, explained);
  return { cause, explained, ...(road && { road }) };
}

/**
 * What each suspect would show of all that was seen: the proof that it explains everything, or what
 * it does not. By the places of `suspects`, which are causes of the inquiry.
 */
export function explanationOf(
  {
    inquiry,
    observations,
    ranking: { belief },
  }: Pick<Diagnosis, 'inquiry' | 'observations' | 'ranking'>,
  cause: Cause,
): Explained[] {
  const place = inquiry.causes.indexOf(cause);
  return accountsOf(inquiry, observations).flatMap((account) => {
    const { prediction, said } = account;
    const row = foreseen(inquiry, prediction, belief)[place] ?? [];
    const most = row.reduce((best, chance, o) => (chance > (row[best] as number) ? o : best), 0);
    return said.map(({ observation, means }): Explained => {
      // Of several that are meant, the likeliest that is meant, where it is about as likely.
      const meant = means.find((o) => (row[o] as number) > LIKE * (row[most] as number)) ?? most;
      return {
        observation,
        shows: prediction.outcomes[meant] as TestOutcome,
        chance: row[meant] as number,
        agrees: means.includes(meant),
        sound: meant === prediction.whole,
        by: prediction.by === 'manners' ? 'train' : 'experience',
      };
    });
  });
}

const LIKE = 0.2;

// In a gear that was seen to be wrong, where one shows it; else in the first that does.
function signOf(
  train: Train,
  faults: readonly Fault[],
  explained: readonly Explained[],
): RoadSign | undefined {
  if (faults.length === 0) return undefined;
  const matrix = faultMatrix(train, { only: faults, pairs: faults.length > 1 });
  const row = matrix.rows.find((its) => its.faults.length === faults.length);
  if (!row) return undefined;
  for (const { observation, agrees, sound } of explained) {
    const { test } = observation;
    const end = ENDS.get(test.test);
    if (!agrees || sound || !end || !('on' in test)) continue;
    const place = matrix.gears.findIndex(({ on }) => on.join() === test.on?.join());
    const [gear, now] = [matrix.gears[place], row.cells[place]?.[end]];
    if (gear && now && now.is !== 'same') return { sign: 'road', gear, end, now };
  }
  return roadSign(matrix, row);
}

const ENDS: ReadonlyMap<string, 'drive' | 'coast'> = new Map([
  ['under power', 'drive'],
  ['shift', 'drive'],
  ['slip log', 'drive'],
  ['coast', 'coast'],
]);
