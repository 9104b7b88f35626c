import type { Train } from '../../engine/train/index.ts';
import type { FoldedJob } from './fold.ts';

/**
 * Of each pack that went on replaced, by its own name or by a part that carries it: the place in
 * the job of the last entry that says so. What was read before it is of plates that went.
 */
export function newPlatesIn(job: FoldedJob, train: Train): ReadonlyMap<string, number> {
  const { packs = [], teardown = [] } = train;
  const places = packs.flatMap(({ device }): [string, number][] => {
    const carried = teardown.filter(({ carries }) => carries.includes(device));
    const names = new Set([device, ...carried.map(({ name }) => name)]);
    const place = job.entries.findLastIndex(({ told, struckBy }) => {
      const isNew = told?.kind === 'installed' && told.replaced && names.has(told.part);
      return isNew === true && !struckBy;
    });
    return place < 0 ? [] : [[device, place]];
  });
  return new Map(places);
}
