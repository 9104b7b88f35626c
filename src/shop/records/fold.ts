import type { Job, JobEntry, Told } from './job.ts';

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
  const sorted = job.entries.toSorted((a, b) => compare(a.at, b.at) || compare(a.id, b.id));
  const strikers = new Map<string, JobEntry[]>();
  for (const entry of sorted) {
    if (!entry.strikes) continue;
    strikers.set(entry.strikes.id, [...(strikers.get(entry.strikes.id) ?? []), entry]);
  }
  const known = new Map<string, JobEntry | undefined>();
  // An id is made of a text that holds the id which it strikes, so no chain closes upon itself;
  // one that was forged to do so is not struck.
  const strikerOf = ({ id }: JobEntry): JobEntry | undefined => {
    if (known.has(id)) return known.get(id);
    known.set(id, undefined);
    const striker = strikers.get(id)?.findLast((its) => !strikerOf(its));
    known.set(id, striker);
    return striker;
  };
  const entries = sorted.toReversed().map((entry) => {
    const struckBy = strikerOf(entry);
    return { ...entry, ...(struckBy && { struckBy }) };
  });
  return { ...job, entries: entries.toReversed() };
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

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
