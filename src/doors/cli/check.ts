import { askCheck } from '../../asking/gears/index.ts';
import { checkJson } from '../../telling/data/index.ts';
import { checkText } from '../../telling/report/index.ts';
import { done, json, type Reply, type Session, textOf } from '../../command/session/index.ts';

/** Every error and warning of a file; a file with an error is a clear no. */
export function check(file: string, { options, page, world }: Session): Reply {
  const { train, problems } = askCheck(textOf(file, world));
  const reply = options.json
    ? json(checkJson(problems, page.voice))
    : done(checkText(file, problems, page));
  return { ...reply, exit: train ? 0 : 1 };
}
