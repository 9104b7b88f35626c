import type { Problem } from '../../engine/yaml/index.ts';
import { type Language, type Objection, problemText } from '../narrative/index.ts';
import type { Json } from './json.ts';

/** Lines and columns are counted from 1. */
export function checkJson(problems: readonly Objection[], language: Language): Json {
  const told = (severity: Problem['severity']) =>
    problems
      .filter((problem) => problem.severity === severity)
      .map((problem) => {
        const { line, column } = problem.place;
        return { line, column, message: problemText(problem, language) };
      });
  return { errors: told('error'), warnings: told('warning') };
}
