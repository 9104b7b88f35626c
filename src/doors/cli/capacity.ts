import { askCapacity } from '../../asking/gears/index.ts';
import { marginJson } from '../../telling/data/index.ts';
import { marginText } from '../../telling/report/index.ts';
import {
  done,
  json,
  type Reply,
  type Session,
  speakingOf,
  trainOf,
} from '../../command/session/index.ts';

/** What each gear can pass before something slips, and at what pressure it holds. */
export function capacity(file: string, session: Session): Reply {
  const { options } = session;
  const report = askCapacity(trainOf(file, session), options);
  if (options.json) return json(marginJson(report.train, report.load, report.gears));
  return done(marginText(report, speakingOf(report.train, session).page));
}
