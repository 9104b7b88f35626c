import { judgeWear, readWear } from '../../shop/wear/index.ts';
import { speakAgainst } from '../../shop/limits/index.ts';
import { wearJson, wearText } from '../../telling/report/index.ts';
import { Refusal } from './refusal.ts';
import { json, type Reply, type Session } from './session.ts';
import { refuseFile, textOf, trainOf } from './source.ts';

/** The worn parts that a file of readings tells of; exit code 1 where one is outside. */
export function wear(file: string, readings: string, session: Session): Reply {
  const { options, page, world } = session;
  if (file === '-' && readings === '-') throw new Refusal('bad.stdin twice');
  const train = trainOf(file, session);
  const read = readWear(textOf(readings, world), train);
  if (read.problems.length > 0) refuseFile(readings, read.problems, session);
  if (read.readings.length === 0) throw new Refusal('no.wear', { file: readings });
  const judged = (train.wear ?? []).flatMap((check) => {
    const its = read.readings.find(({ part }) => part === check.part);
    return its ? [judgeWear(check, its)] : [];
  });
  const wrong = judged.some(({ verdict = 'inside', remarks }) => {
    return verdict !== 'inside' || speakAgainst(remarks);
  });
  const unit = options.inch ? 'in' : 'mm';
  const { text } = options.json
    ? json(wearJson(judged))
    : { text: wearText(train, judged, { ...page, unit }) };
  return { text, exit: wrong ? 1 : 0 };
}
