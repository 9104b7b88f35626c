import { type Case, caseOf, type Suspicion, suspicionOf } from '../../asking/faults/index.ts';
import type { OpenJob } from '../../asking/job/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { suspectsJson } from '../../telling/data/index.ts';
import { suspectsText } from '../../telling/report/index.ts';
import { interview } from './interview.ts';
import {
  jobAsked,
  noted,
  patiently,
  done,
  json,
  type Reply,
  type Session,
  givenIn,
  tellRenamed,
  speakingOf,
  trainOf,
} from '../../command/session/index.ts';
import { ours, Misuse } from '../../command/machine/index.ts';

/**
 * Which fault it is, by a file of what was seen and a job, by the answers to questions, or by
 * both: --ask goes on where they end.
 */
export async function suspects(
  file: string,
  seen: string | undefined,
  session: Session,
): Promise<Reply> {
  const { options, world } = session;
  if (file === '-' && seen === '-') throw new Misuse('bad.stdin twice');
  const train = trainOf(file, session);
  const { page } = speakingOf(train, session);
  const job = jobAsked(session);
  const its = caseIn(train, seen, session, job);
  const nothing = seen === undefined && !job;
  const typed = file !== '-' && seen !== '-' && options.json !== true && world.lines;
  if (typed && (nothing || options.ask)) return interview(its, typed(), { ...session, page });
  const suspicion = patiently(session, () => suspicionOf(its));
  return options.json
    ? json(suspectsJson(suspicion))
    : done(noted(suspectsText(suspicion, options.all ?? false, page), job, file, session));
}

/**
 * What is suspected by a file of what was seen and by a job; without either, how often things
 * are wrong.
 */
export function suspicionOfFile(
  train: Train,
  seen: string | undefined,
  session: Session,
  job?: OpenJob,
): Suspicion {
  const its = caseIn(train, seen, session, job);
  return patiently(session, () => suspicionOf(its));
}

function caseIn(
  train: Train,
  seen: string | undefined,
  session: Session,
  job: OpenJob | undefined,
): Case {
  const { options, world } = session;
  const request = {
    experience: givenIn(options.experience ?? ours('experience.yaml'), world),
    ...(seen !== undefined && { seen: givenIn(seen, world) }),
    ...(job && { job }),
  };
  const its = patiently(session, () => caseOf(train, request));
  tellRenamed(its.renamed, session);
  return its;
}
