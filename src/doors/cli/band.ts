import type { Train } from '../../engine/train/index.ts';
import { judgeBand, readBands } from '../../shop/bands/index.ts';
import { speakAgainst } from '../../shop/limits/index.ts';
import { bandJson, bandText } from '../../telling/report/index.ts';
import { Refusal } from './refusal.ts';
import { json, type Reply, type Session } from './session.ts';
import { refuseFile, textOf, trainOf } from './source.ts';

/** The bands that a file of readings tells of; exit code 1 where one is outside. */
export function band(file: string, readings: string, session: Session): Reply {
  const { options, page, world } = session;
  if (file === '-' && readings === '-') throw new Refusal('bad.stdin twice');
  const train = trainOf(file, session);
  const read = readBands(textOf(readings, world), train);
  if (read.problems.length > 0) refuseFile(readings, read.problems, session);
  if (read.readings.length === 0) throw new Refusal('no.bands', { file: readings });
  const judged = (train.bands ?? []).flatMap((setting) => {
    const its = read.readings.find(({ device }) => device === setting.device);
    return its ? [judgeBand(setting, its, wrapOf(train, setting.device))] : [];
  });
  const wrong = judged.some(({ verdict = 'inside', remarks }) => {
    return verdict !== 'inside' || speakAgainst(remarks);
  });
  const unit = options.inch ? 'in' : 'mm';
  const { text } = options.json
    ? json(bandJson(judged))
    : { text: bandText(train, judged, { ...page, unit }) };
  return { text, exit: wrong ? 1 : 0 };
}

function wrapOf({ capacities = [] }: Train, name: string): number | undefined {
  const capacity = capacities.find(({ device }) => device === name);
  return capacity && 'wrap degrees' in capacity ? capacity['wrap degrees'] : undefined;
}
