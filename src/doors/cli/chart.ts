import { chart as chartOf, MOST_DEVICES } from '../../engine/chart/index.ts';
import { isApplied } from '../../engine/train/index.ts';
import { chartJson, chartText } from '../../telling/report/index.ts';
import { Refusal } from './refusal.ts';
import { done, json, type Reply, type Session } from './session.ts';
import { trainOf } from './source.ts';
import { trainAsFound } from './wrong.ts';

/** Every combination of the friction devices. */
export function chart(file: string, session: Session): Reply {
  const { options, page } = session;
  const train = trainAsFound(trainOf(file, session), options);
  const devices = train.devices.filter(isApplied).length;
  if (devices > MOST_DEVICES)
    throw new Refusal('bad.many devices', { count: devices, most: MOST_DEVICES });
  const answer = chartOf(train);
  return options.json
    ? json(chartJson(answer))
    : done(chartText(train, answer, options.all ?? false, page));
}
