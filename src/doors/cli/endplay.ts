import { judgeEndPlay, readPlays } from '../../shop/endplay/index.ts';
import { speakAgainst } from '../../shop/limits/index.ts';
import { endPlayJson, endPlayText } from '../../telling/report/index.ts';
import { trialsAsked } from './trials.ts';
import { noted, openJob } from './openjob.ts';
import { Refusal } from './refusal.ts';
import { json, type Reply, type Session } from './session.ts';
import { refuseFile, textOf, trainOf } from './source.ts';

/** The end plays that a file of readings or a job tells of; exit code 1 where one is outside. */
export function endplay(file: string, readings: string | undefined, session: Session): Reply {
  const { options, page, world } = session;
  if (file === '-' && readings === '-') throw new Refusal('bad.stdin twice');
  const job = openJob(session);
  const told = readings ?? options.job;
  if (told === undefined) throw new Refusal('bad.missing readings', { verb: 'endplay' });
  const train = job?.withLimits(trainOf(file, session)) ?? trainOf(file, session);
  const read = readPlays(readings === undefined ? '' : textOf(readings, world), train);
  if (read.problems.length > 0) refuseFile(told, read.problems, session);
  const plays = new Map([...(job?.plays(train) ?? []), ...read.plays]);
  if (plays.size === 0) throw new Refusal('no.plays', { file: told });
  const asked = trialsAsked(options);
  const judged = (train.endPlays ?? []).flatMap((endPlay) => {
    const lengths = plays.get(endPlay.shaft);
    return lengths ? [judgeEndPlay(endPlay, lengths, asked)] : [];
  });
  const wrong = judged.some(({ verdict = 'inside', remarks }) => {
    return verdict !== 'inside' || speakAgainst(remarks);
  });
  const unit = options.inch ? 'in' : 'mm';
  const { text } = options.json
    ? json(endPlayJson(judged))
    : { text: noted(endPlayText(train, judged, { ...page, unit }), job, file, session) };
  return { text, exit: wrong ? 1 : 0 };
}
