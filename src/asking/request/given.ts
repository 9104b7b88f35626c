import type { Train } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import type { Problem } from '../../engine/yaml/index.ts';
import { NoAnswer } from './refused.ts';

/** A text that is given with a request, and what whoever gives it calls it. */
export interface Given {
  readonly called: string;
  readonly text: string;
}

/** A word of a text that has another name now. */
export interface Renamed {
  readonly called: string;
  readonly problem: Problem;
}

/** The train of a text, and which of its words have another name now; refuses what is no train. */
export function trainIn({ called, text }: Given): {
  readonly train: Train;
  readonly renamed: readonly Renamed[];
} {
  const { train, problems } = readTrain(text);
  const errors = errorsIn(problems);
  if (!train || errors.length > 0) {
    throw new NoAnswer({ refused: 'bad.train', called, problems: errors });
  }
  return { train, renamed: renamedIn(called, problems) };
}

/** Refuses a text beside the train's in which something is wrong. */
export function mustBeSound({ called }: Given, problems: readonly Problem[]): void {
  if (problems.length > 0) throw new NoAnswer({ refused: 'bad.file', called, problems });
}

export function errorsIn(problems: readonly Problem[]): readonly Problem[] {
  return problems.filter(({ severity }) => severity === 'error');
}

export function renamedIn(called: string, problems: readonly Problem[]): readonly Renamed[] {
  return problems
    .filter(({ problem }) => problem === 'renamed')
    .map((problem) => ({ called, problem }));
}
