import type { MeasuredKind, Train } from '../../engine/train/index.ts';
import type { Problem } from '../../engine/yaml/index.ts';
import { speakAgainst, type Verdict } from '../../shop/limits/index.ts';
import type { JobReadings } from '../../shop/records/index.ts';
import type { OpenJob } from '../job/index.ts';
import { type Given, mustBeSound, NoAnswer } from '../request/index.ts';

/** Readings of one kind: how they are read, found in a job, and judged. */
export interface ReadingKind<Its, Judged extends Judgement> {
  readonly what: MeasuredKind;
  readonly read: (
    text: string,
    train?: Train,
  ) => { readonly readings: readonly Its[]; readonly problems: readonly Problem[] };
  readonly inJob: (readings: JobReadings) => readonly Its[];
  readonly nameOf: (its: Its) => string;
  /** Of what is read, in the order of the file; what is not read is left out. */
  readonly judge: (train: Train, readings: readonly Its[]) => readonly Judged[];
  /** Of a judgement, all verdicts that count. */
  readonly verdicts: (judged: Judged) => readonly (Verdict | undefined)[];
}

interface Judgement {
  readonly remarks: readonly { readonly remark: string }[];
}

/** What was measured: in a text of readings, and what else a job tells. */
export interface MeasureRequest {
  readonly readings?: Given;
  readonly job?: OpenJob;
}

export interface MeasuredAnswer<Judged> {
  /** With the limits of the job. */
  readonly train: Train;
  readonly judged: readonly Judged[];
  /** Whether something is outside its limits, or may not be believed. */
  readonly wrong: boolean;
  /** Of what was measured. */
  readonly names: ReadonlySet<string>;
}

export function measured<Its, Judged extends Judgement>(
  kind: ReadingKind<Its, Judged>,
  file: Train,
  { readings, job }: MeasureRequest,
): MeasuredAnswer<Judged> {
  const train = trainWith(job, file);
  const read = kind.read(readings?.text ?? '', train);
  if (readings) mustBeSound(readings, read.problems);
  const listed = new Set(read.readings.map(kind.nameOf));
  const known = job ? kind.inJob(job.readings(train)) : [];
  const all = [...read.readings, ...known.filter((its) => !listed.has(kind.nameOf(its)))];
  if (all.length === 0) {
    const called = readings?.called ?? job?.called ?? '';
    throw new NoAnswer({ refused: `no.measured ${kind.what}`, called });
  }
  const judged = kind.judge(train, all);
  const wrong = judged.some((its) => {
    return (
      speakAgainst(its.remarks) || kind.verdicts(its).some((one = 'inside') => one !== 'inside')
    );
  });
  return { train, judged, wrong, names: new Set(all.map(kind.nameOf)) };
}

/** A train with the limits of the job, where there is one. */
export function trainWith(job: OpenJob | undefined, train: Train): Train {
  return job?.withLimits(train) ?? train;
}
