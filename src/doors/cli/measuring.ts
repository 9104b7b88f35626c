import type { Train } from '../../engine/train/index.ts';
import type { Problem } from '../../engine/yaml/index.ts';
import { speakAgainst, type Verdict } from '../../shop/limits/index.ts';
import type { JobReadings } from '../../shop/records/index.ts';
import type { Page } from '../../telling/report/index.ts';
import { noted, type OpenJob, openJob } from './openjob.ts';
import { Refusal } from './refusal.ts';
import { json, type Reply, type Session } from './session.ts';
import { refuseFile, textOf, trainOf } from './source.ts';

/** A verb that judges readings of one kind: of a file, and what else a job tells. */
export interface Measuring<Its, Judged extends Judgement> {
  readonly verb: 'pack' | 'endplay' | 'preload' | 'band' | 'wear';
  readonly read: (
    text: string,
    train?: Train,
  ) => { readonly readings: readonly Its[]; readonly problems: readonly Problem[] };
  readonly inJob: (readings: JobReadings) => readonly Its[];
  readonly nameOf: (its: Its) => string;
  /** Of what is read, in the order of the file; what is not read is left out. */
  readonly judge: (train: Train, readings: readonly Its[]) => readonly Judged[];
  readonly toJson: (judged: readonly Judged[]) => Parameters<typeof json>[0];
  readonly toText: (train: Train, judged: readonly Judged[], page: Page) => string;
  /** Of a judgement, all verdicts that count. */
  readonly verdicts: (judged: Judged) => readonly (Verdict | undefined)[];
}

interface Judgement {
  readonly remarks: readonly { readonly remark: string }[];
}

/** Exit code 1 where something is outside, or may not be believed. */
export function measuring<Its, Judged extends Judgement>(
  how: Measuring<Its, Judged>,
  file: string,
  readings: string | undefined,
  session: Session,
): Reply {
  const { options, page, world } = session;
  if (file === '-' && readings === '-') throw new Refusal('bad.stdin twice');
  const job = openJob(session);
  const told = readings ?? options.job;
  if (told === undefined) throw new Refusal('bad.missing readings', { verb: how.verb });
  const train = trainWith(job, trainOf(file, session));
  const read = how.read(readings === undefined ? '' : textOf(readings, world), train);
  if (read.problems.length > 0) refuseFile(told, read.problems, session);
  const listed = new Set(read.readings.map(how.nameOf));
  const known = job ? how.inJob(job.readings(train)) : [];
  const all = [...read.readings, ...known.filter((its) => !listed.has(how.nameOf(its)))];
  if (all.length === 0) throw new Refusal(`no.measured ${how.verb}`, { file: told });
  const judged = how.judge(train, all);
  const wrong = judged.some((its) => {
    return (
      speakAgainst(its.remarks) || how.verdicts(its).some((one = 'inside') => one !== 'inside')
    );
  });
  const unit = options.inch ? 'in' : 'mm';
  const { text } = options.json
    ? json(how.toJson(judged))
    : { text: noted(how.toText(train, judged, { ...page, unit }), job, file, session) };
  return { text, exit: wrong ? 1 : 0 };
}

/** A train with the limits of the job, where there is one. */
export function trainWith(job: OpenJob | undefined, train: Train): Train {
  return job?.withLimits(train) ?? train;
}
