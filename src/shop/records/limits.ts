import { compare } from '../../engine/linear/index.ts';
import type { Limit, Train } from '../../engine/train/index.ts';
import { type Mistake, nearest, type Problem } from '../../engine/trainfile/index.ts';
import { boundsOf } from '../limits/index.ts';
import { type FoldedJob, standing } from './fold.ts';

/** What makes an entry's limit no limit: no figure in it, or its ends reversed. */
export function limitMistake(limit: Limit): Mistake | undefined {
  const { least, most } = boundsOf(limit);
  if (!least && !most) return { problem: 'missing key', keys: ['least', 'most'] };
  if (!least || !most || compare(least.um, most.um) <= 0) return undefined;
  return { problem: 'ends reversed', least: limit.least ?? '', most: limit.most ?? '' };
}

/**
 * The train with the limits of the job in the place of its own, end by end: of clearances and end
 * plays. What the job does not tell stays the file's. A limit of what the train does not measure
 * is a problem at the line of its entry.
 */
export function withLimitsOf(
  job: FoldedJob,
  train: Train,
): { readonly train: Train; readonly problems: readonly Problem[] } {
  const { packs, endPlays } = train;
  const limits = new Map<string, Limit>();
  const problems: Problem[] = [];
  for (const { told, line } of standing(job, 'limit')) {
    const limit = overlaid(limits.get(told.of), told.limit);
    const mistake = limitMisfit(told.of, limit, train);
    if (!mistake) limits.set(told.of, limit);
    else problems.push({ ...mistake, severity: 'error', place: { line, column: 1, length: 1 } });
  }
  const changed = {
    ...train,
    ...(packs && {
      packs: packs.map((pack) => {
        const limit = limits.get(pack.device);
        if (!limit) return pack;
        return {
          ...pack,
          limits: { ...pack.limits, clearance: overlaid(pack.limits?.clearance, limit) },
        };
      }),
    }),
    ...(endPlays && {
      endPlays: endPlays.map((play) => {
        const limit = limits.get(play.shaft);
        return limit ? { ...play, limit: overlaid(play.limit, limit) } : play;
      }),
    }),
  };
  return { train: changed, problems };
}

/** Why a limit, right in itself, cannot be this train's. */
export function limitMisfit(name: string, limit: Limit, train: Train): Mistake | undefined {
  return misplaced(name, train) ?? shareless(train, name, limit);
}

// Of what nobody measures.
function misplaced(name: string, { packs = [], endPlays = [] }: Train): Mistake | undefined {
  const known = [...packs.map(({ device }) => device), ...endPlays.map(({ shaft }) => shaft)];
  if (known.includes(name)) return undefined;
  const near = nearest(name, known);
  return { problem: 'nothing measured', name, ...(near !== undefined && { near }) };
}

// One end of a whole clearance, and the file's other end is told for each friction.
function shareless(
  { packs = [] }: Train,
  name: string,
  { least, most }: Limit,
): Mistake | undefined {
  const limits = packs.find(({ device }) => device === name)?.limits;
  if (!limits?.['each friction'] || limits.clearance) return undefined;
  if (least !== undefined && most !== undefined) return undefined;
  return { problem: 'missing key', keys: [least === undefined ? 'least' : 'most'] };
}

// An end that the newer limit does not tell stays the older's, and so does its source.
function overlaid(older: Limit | undefined, newer: Limit): Limit {
  if (!older || (newer.least !== undefined && newer.most !== undefined)) return newer;
  const kept = newer.least === undefined ? older.least : older.most;
  if (kept === undefined) return newer;
  const both = (a?: string, b?: string) => (a === b || a === undefined ? b : b && `${a}; ${b}`);
  const source = newer.source && older.source && both(older.source, newer.source);
  const by = both(older.by, newer.by);
  return {
    least: newer.least ?? kept,
    most: newer.most ?? kept,
    ...(source !== undefined && { source }),
    ...(by !== undefined && { by }),
  };
}
