import { askFaults } from '../../asking/faults/index.ts';
import { faultsCsv, faultsJson } from '../../telling/data/index.ts';
import { faultsText } from '../../telling/report/index.ts';
import {
  patiently,
  done,
  json,
  type Reply,
  type Session,
  speakingOf,
  trainOf,
} from '../../command/session/index.ts';
import { Misuse } from '../../command/machine/index.ts';

/** Every fault against every gear; two at once with --pairs, and then no hand checks. */
export function faults(file: string, session: Session): Reply {
  const { options } = session;
  if (options.json && options.csv) throw new Misuse('bad.csv');
  const train = trainOf(file, session);
  const { report, stand } = patiently(session, (tell) => askFaults(train, options, tell));
  const page = { ...speakingOf(train, session).page, stand };
  if (options.json) return json(faultsJson(report, page.voice, stand));
  return done(options.csv ? faultsCsv(report, page) : faultsText(report, page));
}
