import type { Inquiry } from '../../engine/cause/index.ts';
import type { UnitStage } from '../../engine/experience/index.ts';
import type { Test } from '../../engine/sight/index.ts';
import { readSeen } from '../../engine/suspects/index.ts';
import { isOfParts, placeOf } from '../../engine/triage/index.ts';
import type { FoldedEntry, FoldedJob } from '../../shop/records/index.ts';
import { partsIn } from '../job/index.ts';

/**
 * Where a unit is, by its job: in pieces while any part is off; else as the last entry tells that
 * tells anything: a test, a part that was looked at or put on. Undefined where none does.
 */
export function stageIn(job: FoldedJob, inquiry: Inquiry): UnitStage | undefined {
  const names = (inquiry.train.teardown ?? []).map(({ name }) => name);
  const parts = partsIn(job, names);
  if ([...parts.values()].some(({ off }) => off)) return 'in pieces';
  for (const entry of job.entries.toReversed()) {
    const stage = entry.struckBy ? undefined : stageAt(entry, names, inquiry);
    if (stage) return stage;
  }
  return undefined;
}

function stageAt(
  { told }: FoldedEntry,
  parts: readonly string[],
  inquiry: Inquiry,
): UnitStage | undefined {
  if (told?.kind === 'installed') return 'on the road';
  if (told?.kind === 'note') {
    return parts.some((name) => told.note.startsWith(`${name}: `)) ? 'in pieces' : undefined;
  }
  if (told?.kind !== 'seen') return undefined;
  const [seen] = readSeen(`${JSON.stringify(told.of)}: as it should`, inquiry).observations;
  return seen && stageOf(seen.test, inquiry);
}

// A record that is read, codes and the like are no place.
function stageOf({ test }: Test, { experience }: Inquiry): UnitStage | undefined {
  const { at } = experience.tests[test];
  if (at !== 'in the car') return at === 'on the bench' && isOfParts(test) ? 'in pieces' : 'open';
  const place = placeOf(test);
  return place === 'on stands' ? 'on the hoist' : place === 'on the road' ? place : undefined;
}
