import type { ShelfSaid } from '../../engine/trainfile/index.ts';
import type { Inquiry } from '../../engine/cause/index.ts';
import type { SeenReading } from '../../engine/suspects/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { Problem } from '../../engine/yaml/index.ts';
import {
  foldJob,
  type FoldedJob,
  type JobReadings,
  readingsIn,
  readJob,
  type Replaced,
  seenIn,
  sinceRebuilt,
  type Told,
  withLimitsOf,
  withShelvesOf,
} from '../../shop/records/index.ts';
import { type Given, NoAnswer } from '../request/index.ts';

/** A job that answers and sheets are filled in from. It remembers what of it could not be used. */
export interface OpenJob {
  readonly called: string;
  readonly job: FoldedJob;
  /** What was measured; what was seen and said; the train with the limits of the job. */
  readings(train: Train): JobReadings;
  seen(inquiry: Inquiry): SeenReading;
  withLimits(train: Train): Train;
  /**
   * What is to be said of it beside the answer to a train whose text has this hash; of the limits
   * of these names only, where some are given.
   */
  notes(hash: string, names?: ReadonlySet<string>): readonly JobNote[];
}

export type JobNote =
  /** A limit that stands in the place of the file's. */
  | { readonly note: 'limit'; readonly replaced: Replaced }
  /** A shelf that stands in the place of the file's. */
  | { readonly note: 'shelf'; readonly of: string; readonly shelf: ShelfSaid }
  /** Lines that were left out, and what is wrong with the first. */
  | {
      readonly note: 'unused';
      readonly called: string;
      readonly count: number;
      readonly first: Problem;
    }
  /** It was opened with another train file. */
  | { readonly note: 'other train'; readonly called: string }
  /** The unit was built anew and signed for: what was seen of it before counts no more. */
  | { readonly note: 'rebuilt' };

/** Reads a job; refuses what is none. What of it cannot be used is left out, and noted. */
export function openJob(given: Given): OpenJob {
  const { job, problems } = jobIn(given);
  return opened(job, given.called, problems);
}

/**
 * A job as it would stand if this had been written down as well, the last last: what somebody is
 * about to write is judged as it will be. Without a job, as if there were one with nothing in it.
 */
export function asIfTold(job: FoldedJob | undefined, told: readonly Told[]): OpenJob {
  const more = told.map((its, i) => ({ id: `${i}`, at: '', who: '', told: its, line: 0 }));
  const before = job ?? { unit: '', complaint: '', by: '', at: '', entries: [] };
  return opened({ ...before, entries: [...before.entries, ...more] }, before.unit, []);
}

function opened(job: FoldedJob, called: string, problems: readonly Problem[]): OpenJob {
  let replaced: readonly Replaced[] = [];
  let shelves: ReadonlyMap<string, ShelfSaid> = new Map();
  let isRebuilt = false;
  const unused = new Map<number, Problem>();
  const used = <Its extends { readonly problems: readonly Problem[] }>(its: Its): Its => {
    for (const problem of its.problems) unused.set(problem.place.line, problem);
    return its;
  };
  used({ problems });
  return {
    called,
    job,
    readings: (train) => used(readingsIn(job, train)),
    seen(inquiry) {
      const now = sinceRebuilt(job);
      isRebuilt = now !== job;
      return used(seenIn(now, inquiry));
    },
    withLimits(train) {
      const limited = used(withLimitsOf(job, train));
      replaced = limited.replaced;
      const stocked = used(withShelvesOf(job, limited.train));
      shelves = stocked.shelves;
      return stocked.train;
    },
    notes(hash, names) {
      const [first] = [...unused.values()].toSorted((a, b) => a.place.line - b.place.line);
      const its = job.train?.hash;
      const other = its !== undefined && !its.startsWith(hash) && !hash.startsWith(its);
      return [
        ...replaced
          .filter(({ of }) => names?.has(of) ?? true)
          .map((one) => ({ note: 'limit', replaced: one }) as const),
        ...[...shelves]
          .filter(([of]) => names?.has(of) ?? true)
          .map(([of, shelf]) => ({ note: 'shelf', of, shelf }) as const),
        ...(first ? [{ note: 'unused', called, count: unused.size, first } as const] : []),
        ...(other ? [{ note: 'other train', called } as const] : []),
        ...(isRebuilt ? [{ note: 'rebuilt' } as const] : []),
      ];
    },
  };
}

/** The job of a text as it stands, and what of it cannot be read; refuses what is no job. */
export function jobIn({ called, text }: Given): {
  readonly job: FoldedJob;
  readonly problems: readonly Problem[];
} {
  const { job, problems } = readJob(text);
  if (!job) throw new NoAnswer({ refused: 'bad.file', called, problems });
  return { job: foldJob(job), problems };
}
