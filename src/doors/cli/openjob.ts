import type { Inquiry, Observation } from '../../engine/suspects/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { Problem } from '../../engine/yaml/index.ts';
import { boundsOf } from '../../shop/limits/index.ts';
import {
  foldJob,
  type FoldedJob,
  type JobReadings,
  readingsIn,
  readJob,
  type Replaced,
  seenIn,
  withLimitsOf,
} from '../../shop/records/index.ts';
import {
  boundsText,
  problemText,
  visible,
  type Voice,
  voiceOf,
} from '../../telling/narrative/index.ts';
import { paragraph } from '../../telling/report/index.ts';
import type { Session } from './session.ts';
import { hashOf, refuseFile, textOf } from './source.ts';

/** A job that answers and sheets are filled in from. It remembers what of it could not be used. */
export interface OpenJob {
  readonly job: FoldedJob;
  /** What was measured; what was seen; the train with the limits of the job. */
  readings(train: Train): JobReadings;
  seen(inquiry: Inquiry): readonly Observation[];
  withLimits(train: Train): Train;
  /**
   * A sentence for each limit that stands in the place of the file's, where lines were left out,
   * and where it was opened with another train file.
   */
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
  let replaced: readonly Replaced[] = [];
  const unused = new Map<number, Problem>();
  const used = <Its extends { readonly problems: readonly Problem[] }>(its: Its): Its => {
    for (const problem of its.problems) unused.set(problem.place.line, problem);
    return its;
  };
  used({ problems });
  return {
    job,
    readings: (train) => used(readingsIn(job, train)),
    seen: (inquiry) => used(seenIn(job, inquiry)).observations,
    withLimits(train) {
      const limited = used(withLimitsOf(job, train));
      replaced = limited.replaced;
      return limited.train;
    },
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
        ...replaced.map((one) => replacedText(one, voice)),
        ...(values ? [voice.say('sheet.job.unused', values)] : []),
        ...(other ? [voice.say('sheet.job.other train', { file: visible(file) })] : []),
      ];
    },
  };
}

function replacedText({ of, file, job }: Replaced, voice: Voice): string {
  return voice.say('sheet.job.limit', {
    of: visible(of),
    job: boundsText(boundsOf(job), voice),
    file: boundsText(boundsOf(file), voice),
  });
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
