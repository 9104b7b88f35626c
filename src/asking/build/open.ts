import type { Train } from '../../engine/train/index.ts';
import type { OpenJob } from '../job/index.ts';
import { askStanding } from './standing.ts';

/** What of a train has never been measured in a job: told to whoever signs, and prevents nothing. */
export function unreadIn(train: Train, job: OpenJob): readonly string[] {
  return askStanding(train, job).flatMap(({ name, stands }) =>
    stands === 'nothing' ? [name] : [],
  );
}

/**
 * What a job has measured and not closed: outside, in doubt, or a preload that no torque has proved.
 * It is told to whoever signs, and prevents nothing.
 */
export function openIn(train: Train, job: OpenJob): readonly string[] {
  return askStanding(train, job).flatMap(({ name, stands }) => {
    return stands === 'asked' || stands === 'unjudged' || stands === 'outside' ? [name] : [];
  });
}
