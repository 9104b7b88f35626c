import { check as warningsOf } from '../../engine/check/index.ts';
import { doubtFigures } from '../../shop/figures/index.ts';
import { checkJson, checkText } from '../../telling/report/index.ts';
import { done, json, type Reply, type Session } from './session.ts';
import { readFile } from './source.ts';

/** Every error and warning of a file; a file with an error is a clear no. */
export function check(file: string, session: Session): Reply {
  const { options, language, page } = session;
  const reading = readFile(file, session);
  const problems = [...reading.problems, ...warningsOf(reading), ...doubtFigures(reading)].toSorted(
    (a, b) => a.place.line - b.place.line || a.place.column - b.place.column,
  );
  const reply = options.json
    ? json(checkJson(problems, language))
    : done(checkText(file, problems, page));
  return { ...reply, exit: reading.train ? 0 : 1 };
}
