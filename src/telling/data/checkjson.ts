import type { Problem } from '../../engine/yaml/index.ts';
import { type Objection, problemText, type Voice } from '../narrative/index.ts';
import type { Json } from './json.ts';

/** Lines and columns are counted from 1. */
export function checkJson(problems: readonly Objection[], voice: Voice): Json {
  const told = (severity: Problem['severity']) =>
    problems
      .filter((problem) => problem.severity === severity)
      .map((problem) => {
        const { line, column } = problem.place;
        return { line, column, message: problemText(problem, voice) };
      });
  return { errors: told('error'), warnings: told('warning') };
}
