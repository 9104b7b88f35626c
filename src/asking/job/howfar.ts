import type { FoldedEntry, FoldedJob } from '../../shop/records/index.ts';
import { partsIn } from './parts.ts';

/** How far a unit is taken apart and put together, by its job alone: whoever has a copy knows it. */
export interface HowFar {
  /** The parts that are off, in the order in which they came off. */
  readonly off: readonly string[];
  /** The last word on the build: a task that was done, or from where it came off again. */
  readonly built?: FoldedEntry;
}

export function howFar(job: FoldedJob): HowFar {
  const told = job.entries.filter(({ struckBy }) => !struckBy);
  const names = told.flatMap((its) => (its.told?.kind === 'removed' ? [its.told.part] : []));
  const parts = partsIn(job, [...new Set(names)]);
  const built = told.findLast((its) => its.told?.kind === 'built' || its.told?.kind === 'unbuilt');
  return {
    off: [...parts].flatMap(([name, { off }]) => (off ? [name] : [])),
    ...(built && { built }),
  };
}
