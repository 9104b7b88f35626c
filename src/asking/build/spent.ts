import type { Train } from '../../engine/train/index.ts';
import { findingsIn } from '../../shop/causes/index.ts';
import { faultsOf, type OpenJob, partsIn } from '../job/index.ts';

/**
 * The devices whose plates were found burnt or with hot spots, while nothing says that new ones are
 * in: what is read of them is of plates that go.
 */
export function spentIn(train: Train, job: OpenJob | undefined): ReadonlySet<string> {
  const { packs = [], teardown = [] } = train;
  if (!job) return new Set();
  const spent = packs.filter(({ device }) => {
    const carried = teardown.filter(({ carries }) => carries.includes(device));
    const names = [device, ...carried.map(({ name }) => name)];
    const parts = [...partsIn(job.job, [...new Set(names)])];
    if (parts.some(([, { on }]) => on?.replaced)) return false;
    const notes = parts.flatMap(([name, part]) =>
      faultsOf(part).map(({ says }) => `${name}: ${says}`),
    );
    return findingsIn(train, notes, []).some(({ sign, of }) => of === device && SPENT.has(sign));
  });
  return new Set(spent.map(({ device }) => device));
}

const SPENT: ReadonlySet<string> = new Set(['burnt', 'hot spots']);
