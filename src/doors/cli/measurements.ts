import type { Train } from '../../engine/train/index.ts';
import { judgeBand } from '../../shop/bands/index.ts';
import { judgeEndPlay, readPlays } from '../../shop/endplay/index.ts';
import { judgePack, readReadings } from '../../shop/packs/index.ts';
import { judgePreload } from '../../shop/preload/index.ts';
import { judgeWear } from '../../shop/wear/index.ts';
import type { Measurements } from '../../telling/sheets/index.ts';
import { wrapOf } from './band.ts';
import { trainWith } from './measuring.ts';
import type { OpenJob } from './openjob.ts';
import type { Session } from './session.ts';
import { refuseFile, textOf } from './source.ts';

/**
 * What --readings, --plays and a job tell of the train's packs, shafts, bands and wear, all of
 * which are there. A file that is named goes before the job.
 */
export function measurementsOf(train: Train, session: Session, job?: OpenJob): Measurements {
  const { options, world } = session;
  const inFile = (file: string | undefined) => (file ? textOf(file, world) : '{}');
  const read = readReadings(inFile(options.readings), train);
  if (read.problems.length > 0) refuseFile(options.readings ?? '', read.problems, session);
  const played = readPlays(inFile(options.plays), train);
  if (played.problems.length > 0) refuseFile(options.plays ?? '', played.problems, session);
  const limited = trainWith(job, train);
  const { packs = [], endPlays = [], bands = [], preloads = [], wear = [] } = limited;
  const told = job?.readings(train);
  const packReadings = [...read.readings, ...(told?.packs ?? [])];
  const playReadings = [...played.readings, ...(told?.plays ?? [])];
  return {
    packs: packs.map((pack) => {
      const { device } = pack;
      return judgePack(pack, packReadings.find((its) => its.device === device) ?? { device });
    }),
    plays: endPlays.map((play) => {
      return judgeEndPlay(play, playReadings.find(({ shaft }) => shaft === play.shaft) ?? {});
    }),
    preloads: preloads.map((preload) => {
      const its = told?.preloads.find(({ bearings }) => bearings === preload.bearings);
      return judgePreload(preload, its ?? {});
    }),
    bands: bands.map((band) => {
      const { device } = band;
      const its = told?.bands.find((one) => one.device === device) ?? {};
      return judgeBand(band, its, wrapOf(limited, device));
    }),
    wear: wear.map((check) => {
      return judgeWear(check, told?.wear.find(({ part }) => part === check.part) ?? {});
    }),
  };
}
