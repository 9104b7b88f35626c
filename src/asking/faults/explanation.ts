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
