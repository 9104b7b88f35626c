import type { Train } from '../../engine/train/index.ts';
import { findingsIn } from '../../shop/causes/index.ts';
import { faultsOf, type OpenJob, partsIn } from '../job/index.ts';

/**
 * The devices whose plates were found burnt or with hot spots, while nothing says that new ones were
 * in when they were read: what is read of them is of plates that go.
 */
export function spentIn(train: Train, job: OpenJob | undefined): ReadonlySet<string> {
  const { packs = [], teardown = [] } = train;
  if (!job) return new Set();
  const spent = packs.filter(({ device }) => {
    const carried = teardown.filter(({ carries }) => carries.includes(device));
    const names = [device, ...carried.map(({ name }) => name)];
    const parts = [...partsIn(job.job, [...new Set(names)])];
    const fresh = parts.some(([, { on }]) => on?.replaced);
    if (fresh) return isReadBefore(job, device, new Set(names));
    const notes = parts.flatMap(([name, part]) =>
      faultsOf(part).map(({ says }) => `${name}: ${says}`),
    );
    return findingsIn(train, notes, []).some(({ sign, of }) => of === device && SPENT.has(sign));
  });
  return new Set(spent.map(({ device }) => device));
}

// Whether all that was read of a pack was read before new plates were in.
function isReadBefore({ job }: OpenJob, device: string, names: ReadonlySet<string>): boolean {
  const standing = job.entries.filter(({ struckBy }) => !struckBy).map(({ told }) => told);
  const fitted = standing.findLastIndex((told) => {
    return told?.kind === 'installed' && told.replaced === true && names.has(told.part);
  });
  const read = standing.findLastIndex((told) => told?.kind === 'reading' && told.of === device);
  return read >= 0 && read < fitted;
}

/** The signs of plates that are replaced. */
export const SPENT: ReadonlySet<string> = new Set(['burnt', 'hot spots']);
