import type { Inquiry, Observation } from '../../engine/suspects/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { Problem } from '../../engine/trainfile/index.ts';
import type { Length } from '../../shop/length/index.ts';
import type { PackReadings } from '../../shop/packs/index.ts';
import {
  foldJob,
  type FoldedJob,
  packReadingsIn,
  playsIn,
  readJob,
  seenIn,
  withLimitsOf,
} from '../../shop/records/index.ts';
import { problemText, visible, voiceOf } from '../../telling/narrative/index.ts';
import { paragraph } from '../../telling/report/index.ts';
import type { Session } from './session.ts';
import { hashOf, refuseFile, textOf } from './source.ts';

/** A job that answers and sheets are filled in from. It remembers what of it could not be used. */
export interface OpenJob {
  readonly job: FoldedJob;
  /** The readings of packs; of shafts; what was seen; the train with the limits of the job. */
  readings(train: Train): readonly PackReadings[];
  plays(train: Train): ReadonlyMap<string, readonly Length[]>;
  seen(inquiry: Inquiry): readonly Observation[];
  withLimits(train: Train): Train;
  /** A sentence where lines were left out, and where it was opened with another train file. */
  notes(hash: string): readonly string[];
}

/** The job of --job; undefined where none is named. Refuses what is no job file. */
export function openJob(session: Session): OpenJob | undefined {
  const { options, world, language } = session;
  const file = options.job;
  if (file === undefined) return undefined;
  const { job: told, problems } = readJob(textOf(file, world));
  if (!told) refuseFile(file, problems, session);
  const job = foldJob(told);
  const unused = new Map<number, Problem>();
  const used = <Its extends { readonly problems: readonly Problem[] }>(its: Its): Its => {
    for (const problem of its.problems) unused.set(problem.place.line, problem);
    return its;
  };
  used({ problems });
  return {
    job,
    readings: (train) => used(packReadingsIn(job, train)).readings,
    plays: (train) => used(playsIn(job, train)).plays,
    seen: (inquiry) => used(seenIn(job, inquiry)).observations,
    withLimits: (train) => used(withLimitsOf(job, train)).train,
    notes(hash) {
      const voice = voiceOf(language);
      const [first] = [...unused.values()].toSorted((a, b) => a.place.line - b.place.line);
      const its = job.train?.hash;
      const values = first && {
        count: unused.size,
        place: `${visible(file)}:${first.place.line}:${first.place.column}`,
        problem: problemText(first, language),
      };
      const other = its !== undefined && !its.startsWith(hash) && !hash.startsWith(its);
      return [
        ...(values ? [voice.say('sheet.job.unused', values)] : []),
        ...(other ? [voice.say('sheet.job.other train', { file: visible(file) })] : []),
      ];
    },
  };
}

/** A text with what of the job was left out behind it; the text alone without a job. */
export function noted(
  text: string,
  job: OpenJob | undefined,
  file: string,
  { page, world }: Session,
): string {
  const notes = job?.notes(hashOf(file, world)) ?? [];
  const lines = notes.flatMap((note) => paragraph(`! ${note}`, page, '  '));
  return lines.length === 0 ? text : [text, '', ...lines].join('\n');
}
