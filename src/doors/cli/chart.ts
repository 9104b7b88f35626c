import { askChart } from '../../asking/gears/index.ts';
import { chartJson, chartText } from '../../telling/report/index.ts';
import { done, json, type Reply, type Session } from './session.ts';
import { trainOf } from './source.ts';

/** Every combination of the friction devices. */
export function chart(file: string, session: Session): Reply {
  const { options, page } = session;
  const { train, chart: answer } = askChart(trainOf(file, session), options);
  return options.json
    ? json(chartJson(answer))
    : done(chartText(train, answer, options.all ?? false, page));
}
