import type { Measured, MeasureRequest, TrialsRequest } from '../../asking/build/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { Page } from '../../telling/text/index.ts';
import { jobAsked, noted } from './jobsource.ts';
import { Refusal } from './refusal.ts';
import { json, type Reply, type Session } from './session.ts';
import { givenIn, trainOf } from './source.ts';

/** A verb that judges readings of one kind: of a file, and what else a job tells. */
export interface Measuring<Judged> {
  readonly verb: 'pack' | 'endplay' | 'preload' | 'band' | 'wear';
  readonly ask: (train: Train, request: MeasureRequest & TrialsRequest) => Measured<Judged>;
  readonly toJson: (judged: readonly Judged[]) => Parameters<typeof json>[0];
  readonly toText: (train: Train, judged: readonly Judged[], page: Page) => string;
}

/** Exit code 1 where something is outside, or may not be believed. */
export function measuring<Judged>(
  { verb, ask, toJson, toText }: Measuring<Judged>,
  file: string,
  readings: string | undefined,
  session: Session,
): Reply {
  const { options, page, world } = session;
  if (file === '-' && readings === '-') throw new Refusal('bad.stdin twice');
  const job = jobAsked(session);
  if (readings === undefined && !job) throw new Refusal('bad.missing readings', { verb });
  const { readings: _, job: __, ...trials } = options;
  const { train, judged, wrong, names } = ask(trainOf(file, session), {
    ...trials,
    ...(readings !== undefined && { readings: givenIn(readings, world) }),
    ...(job && { job }),
  });
  const unit = options.inch ? 'in' : 'mm';
  const { text } = options.json
    ? json(toJson(judged))
    : { text: noted(toText(train, judged, { ...page, unit }), job, file, session, names) };
  return { text, exit: wrong ? 1 : 0 };
}
