import { type Practice, readPractice } from '../../engine/practice/index.ts';
import { inquire, type Inquiry, readSeen } from '../../engine/suspects/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { gripsOf } from '../../shop/capacity/index.ts';
import { suspectsJson, suspectsText, type Suspicion } from '../../telling/report/index.ts';
import { interview } from './interview.ts';
import { noted, openJob, type OpenJob } from './openjob.ts';
import { ours } from './ours.ts';
import { patiently } from './patiently.ts';
import { Refusal } from './refusal.ts';
import { done, json, type Reply, type Session } from './session.ts';
import { refuseFile, tellRenamed, textOf, trainOf } from './source.ts';
import { suspicionOf, toldBy } from './suspicion.ts';

/**
 * Which fault it is, by a file of what was seen and a job, by the answers to questions, or by
 * both: --ask goes on where they end.
 */
export async function suspects(
  file: string,
  seen: string | undefined,
  session: Session,
): Promise<Reply> {
  const { options, page, world } = session;
  if (file === '-' && seen === '-') throw new Refusal('bad.stdin twice');
  const train = trainOf(file, session);
  const job = openJob(session);
  const { inquiry, told, practice } = caseOf(train, seen, session, job);
  const nothing = seen === undefined && !job;
  const typed = file !== '-' && seen !== '-' && options.json !== true && world.lines;
  if (typed && (nothing || options.ask))
    return interview(inquiry, practice, told, typed(), session);
  const suspicion = patiently(session, () => suspicionOf(inquiry, told, practice));
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
  const { inquiry, told, practice } = caseOf(train, seen, session, job);
  return patiently(session, () => suspicionOf(inquiry, told, practice));
}

function caseOf(train: Train, seen: string | undefined, session: Session, job?: OpenJob) {
  const practice = session.options.experience ?? ours('experience.yaml');
  const read = practiceOf(practice, session);
  const inquiry = patiently(session, () => inquire(train, read, gripsOf(train)));
  const { observations, says } =
    seen === undefined ? { observations: [], says: [] } : seenIn(seen, inquiry, session);
  const complaints = job?.job.complaint ? [job.job.complaint, ...says] : says;
  const all = [...observations, ...(job?.seen(inquiry) ?? [])];
  return { inquiry, told: toldBy(inquiry, all, complaints), practice };
}

function practiceOf(file: string, session: Session): Practice {
  const { practice, problems } = readPractice(textOf(file, session.world));
  if (!practice) refuseFile(file, problems, session);
  tellRenamed(file, problems, session);
  return practice;
}

function seenIn(file: string, inquiry: Inquiry, session: Session) {
  const { observations, says, problems } = readSeen(textOf(file, session.world), inquiry);
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (errors.length > 0) refuseFile(file, errors, session);
  tellRenamed(file, problems, session);
  return { observations, says };
}
