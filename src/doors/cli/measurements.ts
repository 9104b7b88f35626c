import type { Train } from '../../engine/train/index.ts';
import { judgeEndPlay, readPlays } from '../../shop/endplay/index.ts';
import { judgePack, readReadings } from '../../shop/packs/index.ts';
import type { Measurements } from '../../telling/sheets/index.ts';
import type { OpenJob } from './openjob.ts';
import type { Session } from './session.ts';
import { refuseFile, textOf } from './source.ts';

/**
 * What --readings, --plays and a job tell of the train's packs and shafts, all of which are there.
 * A file that is named goes before the job.
 */
export function measurementsOf(train: Train, session: Session, job?: OpenJob): Measurements {
  const { options, world } = session;
  const read = readReadings(options.readings ? textOf(options.readings, world) : '{}', train);
  if (read.problems.length > 0) refuseFile(options.readings ?? '', read.problems, session);
  const { plays, problems } = readPlays(options.plays ? textOf(options.plays, world) : '{}', train);
  if (problems.length > 0) refuseFile(options.plays ?? '', problems, session);
  const { packs = [], endPlays = [] } = job?.withLimits(train) ?? train;
  const readings = [...read.readings, ...(job?.readings(train) ?? [])];
  const jobPlays = job?.plays(train);
  return {
    packs: packs.map((pack) => {
      const { device } = pack;
      return judgePack(pack, readings.find((its) => its.device === device) ?? { device });
    }),
    plays: endPlays.map((play) => {
      return judgeEndPlay(play, plays.get(play.shaft) ?? jobPlays?.get(play.shaft) ?? []);
    }),
  };
}
