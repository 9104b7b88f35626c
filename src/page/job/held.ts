import { jobIn } from '../../asking/job/index.ts';
import {
  type FoldedJob,
  foldJob,
  hashOf,
  type Job,
  textOfParts,
} from '../../shop/records/index.ts';
import type { KeptJob, Photograph } from './store.ts';

/** A job as this page has it. */
export interface Held {
  readonly job: KeptJob;
  /** That the browser's store has. */
  readonly lines: readonly string[];
  /** That only this page has, because the store would not take them; the pictures likewise. */
  readonly pending: readonly string[];
  readonly pictures: readonly Photograph[];
  /** Whether the store knows the job at all. */
  readonly isKept: boolean;
}

export function linesOf({ lines, pending }: Held): readonly string[] {
  return [...lines, ...pending];
}

/** The ids of the entries that only this page has. */
export function pendingIds({ pending }: Held): ReadonlySet<string> {
  return new Set(pending.flatMap((line) => /, id: (\w+) \}$/u.exec(line)?.[1] ?? []));
}

/** The text of its file. */
export function textOf(held: Held): string {
  return textOfParts({ header: held.job.header, lines: linesOf(held) });
}

/** What the file of its train is called, wherever it lies; undefined for a job of none. */
export function trainNameOf(held: Held): string | undefined {
  return held.job.train?.called ?? foldedOf(held).train?.file.replace(/^.*[/\\]/u, '');
}

/** Whether a train's text is the one that a job was begun with; of a job that tells no hash, any is. */
export function isTextOf({ train }: Pick<Job, 'train'>, text: string): boolean {
  const { hash = '' } = train ?? {};
  const its = hashOf(text);
  return its.startsWith(hash) || hash.startsWith(its);
}

/** The job as it stands; read once, however often it is asked for. */
export function foldedOf(held: Held): FoldedJob {
  const known = folded.get(held);
  if (known) return known;
  const its = jobOf(held);
  folded.set(held, its);
  return its;
}

const folded = new WeakMap<Held, FoldedJob>();

// A job whose file was spoilt all over is still one, and holds its lines.
function jobOf(held: Held): FoldedJob {
  try {
    return jobIn({ called: held.job.name, text: textOf(held) }).job;
  } catch {
    return foldJob({ unit: held.job.name, complaint: '', by: '', at: '', entries: [] });
  }
}
