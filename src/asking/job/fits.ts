import { readPractice } from '../../engine/practice/index.ts';
import { inquire, readSeen } from '../../engine/suspects/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { Problem } from '../../engine/yaml/index.ts';
import {
  limitMisfit,
  measuredNames,
  readingProblems,
  type Told,
} from '../../shop/records/index.ts';
import { errorsIn, meant, NoAnswer, unknown } from '../request/index.ts';

/**
 * Refuses an entry that says what the train does not know. `practice` is the text of a shop's
 * figures, by which what was seen is read.
 */
export function mustFit(told: Told, train: Train, practice: string): void {
  const [problem] = problemsOf(told, train, practice);
  if (problem) throw new NoAnswer({ refused: 'bad.entry', problem });
}

function problemsOf(told: Told, train: Train, practice: string): readonly Problem[] {
  const entry = (said: string) => `${JSON.stringify('of' in told ? told.of : '')}: ${said}`;
  const seen = (said: string) => seenProblems(entry(said), train, practice);
  switch (told.kind) {
    case 'reading':
      return readingProblems(entry(told.text), told.of, train);
    case 'seen':
      return seen(told.text);
    case 'check': {
      const { felt, predicted = felt } = told;
      return [felt, predicted].flatMap((said) => seen(JSON.stringify(said)));
    }
    case 'chosen':
      mustMeasure(told.of, train);
      return [];
    case 'limit': {
      const mistake = limitMisfit(told, train);
      const place = { line: 0, column: 0, length: 0 };
      return mistake ? [{ ...mistake, severity: 'error', place }] : [];
    }
    default:
      return [];
  }
}

function seenProblems(text: string, train: Train, figures: string): readonly Problem[] {
  const { practice } = readPractice(figures);
  if (!practice) return [];
  return errorsIn(readSeen(text, inquire(train, practice)).problems);
}

function mustMeasure(name: string, train: Train): void {
  const names = [...measuredNames(train), ...train.devices.map((its) => its.name)];
  const known = [...new Set(names)];
  if (meant(name, names) !== name) {
    throw new NoAnswer({ refused: 'no.measured', ...unknown(name, known) });
  }
}
