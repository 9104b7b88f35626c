import type { Train } from '../../engine/train/index.ts';
import { judgeEndPlay, readPlays } from '../../shop/endplay/index.ts';
import { judgePack, readReadings } from '../../shop/packs/index.ts';
import type { Measurements } from '../../telling/sheets/index.ts';
import type { Session } from './session.ts';
import { refuseFile, textOf } from './source.ts';

/** What --readings and --plays tell of the train's packs and shafts; all of them are there. */
export function measurementsOf(train: Train, session: Session): Measurements {
  const { options, world } = session;
  const read = readReadings(options.readings ? textOf(options.readings, world) : '{}', train);
  if (read.problems.length > 0) refuseFile(options.readings ?? '', read.problems, session);
  const { plays, problems } = readPlays(options.plays ? textOf(options.plays, world) : '{}', train);
  if (problems.length > 0) refuseFile(options.plays ?? '', problems, session);
  return {
    packs: (train.packs ?? []).map((pack) => {
      const { device } = pack;
      return judgePack(pack, read.readings.find((its) => its.device === device) ?? { device });
    }),
    plays: (train.endPlays ?? []).map((play) => judgeEndPlay(play, plays.get(play.shaft) ?? [])),
  };
}
