import path from 'node:path';
import { meant } from '../../asking/request/index.ts';
import { readPractice } from '../../engine/practice/index.ts';
import { inquire, readSeen } from '../../engine/suspects/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { Problem } from '../../engine/yaml/index.ts';
import {
  type Job,
  limitMisfit,
  measuredNames,
  readingProblems,
  type Told,
} from '../../shop/records/index.ts';
import { problemText } from '../../telling/narrative/index.ts';
import { suggestion } from './names.ts';
import { ours } from './ours.ts';
import { Refusal } from './refusal.ts';
import type { Session } from './session.ts';
import { textOf, trainOf } from './source.ts';

/**
 * Refuses what the train does not know: that of --train, else the job's own, where it still
 * stands beside the job. Without one only the form is known to be right.
 */
export function checkTold(
  told: Told,
  job: Pick<Job, 'train'>,
  file: string,
  session: Session,
): void {
  const trainFile = session.options.train ?? beside(job, file, session);
  if (trainFile === undefined) return;
  const train = trainOf(trainFile, session);
  const [problem] = problemsOf(told, train, session);
  if (problem) throw new Refusal('bad.entry', { problem: problemText(problem, session.language) });
}

function beside(
  { train }: Pick<Job, 'train'>,
  file: string,
  { world }: Session,
): string | undefined {
  if (!train) return undefined;
  const its = path.resolve(path.dirname(file), train.file);
  return world.list(path.dirname(its)).includes(path.basename(its)) ? its : undefined;
}

function problemsOf(told: Told, train: Train, session: Session): readonly Problem[] {
  const entry = (said: string) => `${JSON.stringify('of' in told ? told.of : '')}: ${said}`;
  switch (told.kind) {
    case 'reading':
      return readingProblems(entry(told.text), told.of, train);
    case 'seen':
      return seenProblems(entry(told.text), train, session);
    case 'check':
      return [told.felt, ...(told.predicted === undefined ? [] : [told.predicted])].flatMap(
        (said) => {
          return seenProblems(entry(JSON.stringify(said)), train, session);
        },
      );
    case 'chosen':
      mustMeasure(told.of, train);
      return [];
    case 'limit':
      mustFit(told, train, session);
      return [];
    default:
      return [];
  }
}

function seenProblems(text: string, train: Train, session: Session): readonly Problem[] {
  const { practice } = readPractice(textOf(ours('experience.yaml'), session.world));
  if (!practice) return [];
  const { problems } = readSeen(text, inquire(train, practice));
  return problems.filter(({ severity }) => severity === 'error');
}

function mustMeasure(name: string, train: Train): void {
  const known = [...measuredNames(train), ...train.devices.map((its) => its.name)];
  if (meant(name, known) !== name) {
    throw new Refusal('no.measured', suggestion(name, [...new Set(known)]));
  }
}

function mustFit(
  told: Extract<Told, { kind: 'limit' }>,
  train: Train,
  { language }: Session,
): void {
  const mistake = limitMisfit(told, train);
  if (!mistake) return;
  const place = { line: 0, column: 0, length: 0 };
  const problem = problemText({ ...mistake, severity: 'error', place }, language);
  throw new Refusal('bad.entry', { problem });
}
