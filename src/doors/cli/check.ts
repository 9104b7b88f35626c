import { checkJson, checkText } from '../../telling/report/index.ts';
import { done, json, type Reply, type Session } from './session.ts';
import { readFile } from './source.ts';

/** Every error and warning of a file; a file with an error is a clear no. */
export function check(file: string, session: Session): Reply {
  const { options, language, page } = session;
  const { train, problems } = readFile(file, session);
  const reply = options.json
    ? json(checkJson(problems, language))
    : done(checkText(file, problems, page));
  return { ...reply, exit: train ? 0 : 1 };
}
