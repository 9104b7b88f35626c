import type { PackReadings } from '../../shop/packs/index.ts';
import { judgePack, readReadings } from '../../shop/packs/index.ts';
import type { Pack, Train } from '../../engine/train/index.ts';
import { packJson, packText } from '../../telling/report/index.ts';
import { drawsAsked } from './draws.ts';
import { Refusal } from './refusal.ts';
import { json, type Reply, type Session } from './session.ts';
import { refuseFile, textOf, trainOf } from './source.ts';

/** The packs that a file of readings tells of; exit code 1 where something is outside. */
export function pack(file: string, readings: string, session: Session): Reply {
  const { options, page, world } = session;
  if (file === '-' && readings === '-') throw new Refusal('bad.stdin twice');
  const train = trainOf(file, session);
  const read = readReadings(textOf(readings, world), train);
  if (read.problems.length > 0) refuseFile(readings, read.problems, session);
  if (read.readings.length === 0) throw new Refusal('no.readings', { file: readings });
  const asked = drawsAsked(options);
  const judged = read.readings.map((its) => judgePack(packOf(train, its), its, asked));
  const wrong = judged.some(({ verdict = 'inside', gauge, wear }) => {
    const others = [gauge, ...wear].map((its) => its?.verdict ?? 'inside');
    return [verdict, ...others].some((its) => its !== 'inside');
  });
  const unit = options.inch ? 'in' : 'mm';
  const { text } = options.json
    ? json(packJson(judged))
    : { text: packText(train, judged, { ...page, unit }) };
  return { text, exit: wrong ? 1 : 0 };
}

// Readings are of packs that the train tells.
function packOf(train: Train, { device }: PackReadings): Pack {
  return train.packs?.find((its) => its.device === device) as Pack;
}
