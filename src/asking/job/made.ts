import type { Train } from '../../engine/train/index.ts';
import {
  entryText,
  type FoldedJob,
  type Job,
  type JobEntry,
  newJobText,
  readEntry,
  readJob,
  type Told,
} from '../../shop/records/index.ts';
import { NoAnswer } from '../request/index.ts';
import { toldInFileNames } from './filenames.ts';
import { mustFit } from './fits.ts';

/** What somebody writes into a job: what they tell, what they strike through, or both. */
export interface ToldOrStruck {
  readonly told?: Told;
  readonly strikes?: NonNullable<JobEntry['strikes']>;
}

/** Whose entry it is, and when: the initials, and a moment as `momentText` writes it. */
export interface Writer {
  readonly who: string;
  readonly at: string;
}

/**
 * An entry as it is to be appended to a job (`text`), known to be read again as what was said.
 * Names stand as the train's file has them. Refuses what could not be, and what means nothing to the
 * train, where there is one.
 */
export function entryMade(
  { told: saidOf, strikes }: ToldOrStruck,
  { at, who }: Writer,
  before: FoldedJob,
  its?: { readonly train: Train; readonly experience: string },
): { readonly id: string; readonly text: string } {
  const told = saidOf && its ? toldInFileNames(saidOf, its.train) : saidOf;
  const said = { ...(told && { told }), ...(strikes && { strikes }) };
  const { id, body, text } = entryText({ at, who, ...said });
  const [problem] = readEntry(body, id).problems;
  if (problem) throw new NoAnswer({ refused: 'bad.entry', problem });
  if (told && its) {
    // What is struck by the same entry stands no more.
    const entries = before.entries.filter((one) => one.id !== strikes?.id);
    mustFit(told, its.train, { experience: its.experience, job: { ...before, entries } });
  }
  return { id, text };
}

/** The text of a job in which nothing stands yet; refuses what could not be read again. */
export function jobMade(head: Omit<Job, 'entries'>): string {
  const text = newJobText(head);
  const [problem] = readJob(text).problems;
  if (problem) throw new NoAnswer({ refused: 'bad.entry', problem });
  return text;
}
