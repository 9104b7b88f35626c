import { readExperience } from '../../engine/experience/index.ts';
import { inquire, type Inquiry } from '../../engine/cause/index.ts';
import { MOST_PARTS, plan } from '../../engine/plan/index.ts';
import { readSeen } from '../../engine/suspects/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { Problem } from '../../engine/yaml/index.ts';
import { buildTasks, subjectOf } from '../../shop/build/index.ts';
import {
  type FoldedJob,
  limitMisfit,
  shelfMisfit,
  measuredNames,
  readingProblems,
  seenProblems,
  type Told,
} from '../../shop/records/index.ts';
import { errorsIn, meant, NoAnswer, unknown } from '../request/index.ts';

/** By what an entry is looked at besides its train. */
export interface Before {
  /** The text of a shop's figures, by which what was seen is read. */
  readonly experience: string;
  /** The job without it: a limit that was told to be meant is there already. */
  readonly job?: FoldedJob;
}

/**
 * Refuses an entry that says what the train does not know, and a limit far off the train's that is
 * not told to be meant.
 */
export function mustFit(told: Told, train: Train, before: Before): void {
  const [problem] = problemsOf(told, train, before);
  if (problem) throw new NoAnswer({ refused: 'bad.entry', problem });
}

function problemsOf(told: Told, train: Train, { experience, job }: Before): readonly Problem[] {
  const entry = (said: string) => `${JSON.stringify('of' in told ? told.of : '')}: ${said}`;
  const inquiry = () => inquiryOf(train, experience);
  switch (told.kind) {
    case 'reading':
      return readingProblems(entry(told.text), told.of, train);
    case 'seen':
      return errorsIn(whenAny(inquiry(), (its) => seenProblems(told, its, job)));
    case 'check': {
      const { felt, predicted = felt } = told;
      return errorsIn(
        whenAny(inquiry(), (its) =>
          [felt, predicted].flatMap((said) => readSeen(entry(JSON.stringify(said)), its).problems),
        ),
      );
    }
    case 'chosen':
      mustMeasure(told.of, train);
      return [];
    case 'built':
      mustBeTask(told, train);
      return [];
    case 'shelf': {
      const mistake = shelfMisfit(told.of, told.shelf, train);
      const place = { line: 0, column: 0, length: 0 };
      return mistake ? [{ ...mistake, severity: 'error', place }] : [];
    }
    case 'limit': {
      const mistake = limitMisfit(told, train, job);
      const place = { line: 0, column: 0, length: 0 };
      return mistake ? [{ ...mistake, severity: 'error', place }] : [];
    }
    default:
      return [];
  }
}

// A text that is none is told where it is asked by.
function inquiryOf(train: Train, figures: string): Inquiry | undefined {
  const { experience } = readExperience(figures);
  return experience && inquire(train, experience);
}

function whenAny(
  inquiry: Inquiry | undefined,
  ask: (its: Inquiry) => readonly Problem[],
): readonly Problem[] {
  return inquiry ? ask(inquiry) : [];
}

function mustMeasure(name: string, train: Train): void {
  const names = [...measuredNames(train), ...train.devices.map((its) => its.name)];
  const known = [...new Set(names)];
  if (meant(name, names) !== name) {
    throw new NoAnswer({ refused: 'no.measured', ...unknown(name, known) });
  }
}

// A file that does not tell how its unit comes apart has no build to say it of.
function mustBeTask({ task, of }: Extract<Told, { kind: 'built' }>, train: Train): void {
  const planned = (train.teardown?.length ?? 0) <= MOST_PARTS ? plan(train) : undefined;
  if (!planned) return;
  const tasks = buildTasks(planned);
  const its = tasks.find(({ key }) => key === task);
  if (!its)
    throw new NoAnswer({
      refused: 'no.task',
      ...unknown(
        task,
        tasks.map(({ key }) => key),
      ),
    });
  const subject = subjectOf(its);
  if (subject !== undefined && of !== subject) {
    throw new NoAnswer({ refused: 'bad.task of', task, of: subject });
  }
}
