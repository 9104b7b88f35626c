import type { Part, Train } from '../../engine/train/index.ts';
import type { Length } from '../../shop/length/index.ts';
import { standing } from '../../shop/records/index.ts';
import type { OpenJob } from '../job/index.ts';
import { askStanding } from './standing.ts';

/** Which of its sizes a part goes in with: the one that was taken, in its words; or that fits best. */
export type SizeFor = { readonly taken: string } | { readonly fits: Length };

/** What a job says of the size of a part that comes in several; undefined where it says nothing. */
export function sizeFor(train: Train, job: OpenJob, part: Part): SizeFor | undefined {
  const { selective, sets } = part;
  if (!selective || sets === undefined) return undefined;
  const taken = standing(job.job, 'chosen').findLast(({ told }) => told.of === sets);
  if (taken) return { taken: taken.told.part };
  const things = askStanding(train, job).filter(({ name }) => name === sets);
  const [best] = things.flatMap(({ judgement }) => {
    return 'selection' in judgement && judgement.selection ? [judgement.selection.best] : [];
  });
  return best && { fits: best.size };
}
