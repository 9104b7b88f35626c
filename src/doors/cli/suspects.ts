import { type Practice, readPractice } from '../../engine/practice/index.ts';
import {
  accountsOf,
  contradiction,
  inquire,
  type Inquiry,
  nextTest,
  type Observation,
  rank,
  readSeen,
  type Test,
} from '../../engine/suspects/index.ts';
import type { Problem } from '../../engine/trainfile/index.ts';
import { problemText } from '../../telling/narrative/index.ts';
import { suspectsJson, suspectsText, type Suspicion } from '../../telling/report/index.ts';
import { interview } from './interview.ts';
import { ours } from './ours.ts';
import { Refusal } from './refusal.ts';
import { done, json, type Reply, type Session } from './session.ts';
import { placeOf, textOf, trainOf } from './source.ts';

/** Which fault it is, by a file of what was seen or by the answers to questions. */
export async function suspects(
  file: string,
  seen: string | undefined,
  session: Session,
): Promise<Reply> {
  const { options, page, world } = session;
  if (file === '-' && seen === '-') throw new Refusal('bad.stdin twice');
  const train = trainOf(file, session);
  const practiceFile = options.practice ?? ours('practice.yaml');
  const inquiry = inquire(train, practiceOf(practiceFile, session));
  const reckon = (observations: readonly Observation[], tests?: readonly Test[]) => {
    return suspicionOf(inquiry, observations, practiceFile, tests);
  };
  const asks = seen === undefined && file !== '-' && options.json !== true && world.lines;
  if (asks) return interview(reckon, asks(), session);
  const observations = seen === undefined ? [] : seenIn(seen, inquiry, session);
  const suspicion = reckon(observations);
  return options.json
    ? json(suspectsJson(suspicion))
    : done(suspectsText(suspicion, options.all ?? false, page));
}

/** `tests`: those that may still be offered. */
function suspicionOf(
  inquiry: Inquiry,
  observations: readonly Observation[],
  practice: string,
  tests: readonly Test[] = inquiry.tests,
): Suspicion {
  const accounts = accountsOf(inquiry, observations);
  const ranking = rank(inquiry, accounts);
  const advice = nextTest(inquiry, accounts, ranking.chances, tests);
  const against = contradiction(inquiry, accounts, ranking.chances);
  return { inquiry, observations, ranking, advice, contradiction: against, practice };
}

function practiceOf(file: string, session: Session): Practice {
  const { practice, problems } = readPractice(textOf(file, session.world));
  if (!practice) refuse(file, problems, session);
  return practice;
}

function seenIn(file: string, inquiry: Inquiry, session: Session): readonly Observation[] {
  const { observations, problems } = readSeen(textOf(file, session.world), inquiry);
  if (problems.length > 0) refuse(file, problems, session);
  return observations;
}

function refuse(file: string, problems: readonly Problem[], { language }: Session): never {
  const [first] = problems as [Problem];
  const problem = problemText(first, language);
  throw new Refusal('bad.file', {
    place: placeOf(file, first),
    problem,
    more: problems.length - 1,
  });
}
