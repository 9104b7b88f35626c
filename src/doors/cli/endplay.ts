import { judgeEndPlay, readPlays } from '../../shop/endplay/index.ts';
import { endPlayJson, endPlayText } from '../../telling/report/index.ts';
import { drawsAsked } from './draws.ts';
import { Refusal } from './refusal.ts';
import { json, type Reply, type Session } from './session.ts';
import { refuseFile, textOf, trainOf } from './source.ts';

/** The end plays that a file of readings tells of; exit code 1 where one is outside. */
export function endplay(file: string, readings: string, session: Session): Reply {
  const { options, page, world } = session;
  if (file === '-' && readings === '-') throw new Refusal('bad.stdin twice');
  const train = trainOf(file, session);
  const { plays, problems } = readPlays(textOf(readings, world), train);
  if (problems.length > 0) refuseFile(readings, problems, session);
  if (plays.size === 0) throw new Refusal('no.plays', { file: readings });
  const asked = drawsAsked(options);
  const judged = (train.endPlays ?? []).flatMap((endPlay) => {
    const read = plays.get(endPlay.shaft);
    return read ? [judgeEndPlay(endPlay, read, asked)] : [];
  });
  const wrong = judged.some(({ verdict = 'inside' }) => verdict !== 'inside');
  const unit = options.inch ? 'in' : 'mm';
  const { text } = options.json
    ? json(endPlayJson(judged))
    : { text: endPlayText(train, judged, { ...page, unit }) };
  return { text, exit: wrong ? 1 : 0 };
}
