import type { Job, JobEntry, Told } from './job.ts';
import { secondsOf } from './moment.ts';

/** A job as it stands: what was struck is still there, with what struck it. */
export interface FoldedJob extends Omit<Job, 'entries'> {
  /** In the order of time, whatever the order in the file. */
  readonly entries: readonly FoldedEntry[];
}

export interface FoldedEntry extends JobEntry {
  /** The entry that struck this one through; absent: it stands. */
  readonly struckBy?: JobEntry;
}

/**
 * Applies the corrections. An entry is struck while an entry that stands strikes it: to strike a
 * correction brings back what it struck. The order of lines in the file changes nothing.
 */
export function foldJob(job: Job): FoldedJob {
  const sorted = job.entries.toSorted(
    (a, b) => secondsOf(a.at) - secondsOf(b.at) || compare(a.id, b.id),
  );
  const strikers = new Map<string, JobEntry[]>();
  for (const entry of sorted) {
    if (!entry.strikes) continue;
    const before = strikers.get(entry.strikes.id);
    if (before) before.push(entry);
    else strikers.set(entry.strikes.id, [entry]);
  }
  const strikerOf = standingStrikers(strikers);
  const entries = sorted.toReversed().map((entry) => {
    const struckBy = strikerOf(entry);
    return { ...entry, ...(struckBy && { struckBy }) };
  });
  return { ...job, entries: entries.toReversed() };
}

// Of each entry the last of its strikers that is not struck itself. A chain of corrections may be
// as long as a job: who waits for whom stands in a list, not on the machine's stack.
function standingStrikers(
  strikers: ReadonlyMap<string, readonly JobEntry[]>,
): (entry: JobEntry) => JobEntry | undefined {
  const known = new Map<string, JobEntry | undefined>();
  return (asked) => {
    const waiting = [asked.id];
    for (let id = waiting.at(-1); id !== undefined; id = waiting.at(-1)) {
      // An id is made of a text that holds the id which it strikes, so no chain closes upon
      // itself; in one that was forged to do so, who waits already counts as standing.
      if (!known.has(id)) known.set(id, undefined);
      const last = strikers.get(id)?.findLast((striker) => !known.get(striker.id));
      if (last && !known.has(last.id)) waiting.push(last.id);
      else {
        known.set(id, last);
        waiting.pop();
      }
    }
    return known.get(asked.id);
  };
}

/** What stands of one kind, in the order of time. */
export function standing<Kind extends Told['kind']>(
  job: FoldedJob,
  kind: Kind,
): readonly (FoldedEntry & { readonly told: Extract<Told, { kind: Kind }> })[] {
  return job.entries.filter(
    (entry): entry is FoldedEntry & { told: Extract<Told, { kind: Kind }> } =>
      !entry.struckBy && entry.told?.kind === kind,
  );
}

/**
 * Who had signed before an entry was written: what stands under a signature was not there when it
 * was signed. Of another signature nobody.
 */
export function signerBefore({ entries }: FoldedJob, its: FoldedEntry): string | undefined {
  if (its.told?.kind === 'signed') return undefined;
  const before = entries.slice(0, entries.indexOf(its));
  return before.findLast(({ told, struckBy }) => told?.kind === 'signed' && !struckBy)?.who;
}

/**
 * A job from where its unit was built anew and signed for: what was seen and said before then is of
 * a unit that is no more. The job itself where nobody has signed for a build.
 */
export function sinceRebuilt(job: FoldedJob): FoldedJob {
  const { entries } = job;
  const begun = entries.findIndex(({ told, struckBy }) => told?.kind === 'built' && !struckBy);
  const signed = entries.findLastIndex(({ told, struckBy }) => {
    return told?.kind === 'signed' && !struckBy;
  });
  if (begun < 0 || signed < begun) return job;
  return { ...job, complaint: '', entries: entries.slice(signed + 1) };
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
