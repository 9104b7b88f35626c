import { type Practice, readPractice } from '../../engine/practice/index.ts';
import { inquire, type Inquiry, type Observation, readSeen } from '../../engine/suspects/index.ts';
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
import { suspicionOf } from './suspicion.ts';

/** Which fault it is, by a file of what was seen or by the answers to questions. */
export async function suspects(
  file: string,
  seen: string | undefined,
  session: Session,
): Promise<Reply> {
  const { options, page, world } = session;
  if (file === '-' && seen === '-') throw new Refusal('bad.stdin twice');
  const train = trainOf(file, session);
  const job = openJob(session);
  const asks = seen === undefined && !job && file !== '-' && options.json !== true && world.lines;
  if (asks) {
    const practiceFile = options.experience ?? ours('experience.yaml');
    const practice = practiceOf(practiceFile, session);
    const inquiry = patiently(session, () => inquire(train, practice, gripsOf(train)));
    return interview(inquiry, practiceFile, asks(), session);
  }
  const suspicion = suspicionOfFile(train, seen, session, job);
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
  const practiceFile = session.options.experience ?? ours('experience.yaml');
  const practice = practiceOf(practiceFile, session);
  return patiently(session, () => {
    const inquiry = inquire(train, practice, gripsOf(train));
    const observations = seen === undefined ? [] : seenIn(seen, inquiry, session);
    return suspicionOf(inquiry, [...observations, ...(job?.seen(inquiry) ?? [])], practiceFile);
  });
}

function practiceOf(file: string, session: Session): Practice {
  const { practice, problems } = readPractice(textOf(file, session.world));
  if (!practice) refuseFile(file, problems, session);
  tellRenamed(file, problems, session);
  return practice;
}

function seenIn(file: string, inquiry: Inquiry, session: Session): readonly Observation[] {
  const { observations, problems } = readSeen(textOf(file, session.world), inquiry);
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (errors.length > 0) refuseFile(file, errors, session);
  tellRenamed(file, problems, session);
  return observations;
}
