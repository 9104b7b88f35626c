import { type OpenJob, openJob } from '../../asking/job/index.ts';
import { jobNoteText } from '../../telling/narrative/index.ts';
import { paragraph } from '../../telling/text/index.ts';
import type { Session } from './session.ts';
import { givenIn, hashOf } from './source.ts';

/** The job of --job; undefined where none is named. Refuses what is no job file. */
export function jobAsked({ options, world }: Session): OpenJob | undefined {
  return options.job === undefined ? undefined : openJob(givenIn(options.job, world));
}

/** What is to be said of a job beside an answer to a train whose text has this hash. */
export function notesOf(
  job: OpenJob | undefined,
  hash: string,
  { page }: Session,
  names?: ReadonlySet<string>,
): readonly string[] {
  return (job?.notes(hash, names) ?? []).map((note) => jobNoteText(note, page.voice));
}

/** A text with what of the job was left out behind it; the text alone without a job. */
export function noted(
  text: string,
  job: OpenJob | undefined,
  file: string,
  session: Session,
  names?: ReadonlySet<string>,
): string {
  const notes = job ? notesOf(job, hashOf(file, session.world), session, names) : [];
  const lines = notes.flatMap((note) => paragraph(`! ${note}`, session.page, '  '));
  return lines.length === 0 ? text : [text, '', ...lines].join('\n');
}
