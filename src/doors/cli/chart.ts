import { askChart, flowsOf } from '../../asking/gears/index.ts';
import { chartCsv, chartJson } from '../../telling/data/index.ts';
import { chartText } from '../../telling/report/index.ts';
import { Misuse } from '../../command/machine/index.ts';
import {
  done,
  json,
  type Reply,
  type Session,
  speakingOf,
  trainOf,
} from '../../command/session/index.ts';

/** Every combination of the friction devices; with --csv the application chart of the file's gears. */
export function chart(file: string, session: Session): Reply {
  const { options } = session;
  if (options.json && options.csv) throw new Misuse('bad.csv');
  const { train, chart: answer } = askChart(trainOf(file, session), options);
  const { page } = speakingOf(train, session);
  if (options.json) return json(chartJson(answer));
  if (options.csv) return done(chartCsv(train, flowsOf(train), page));
  return done(chartText(train, answer, options.all ?? false, page));
}
