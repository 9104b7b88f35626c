import type { MeasuredKind, Train } from '../../engine/train/index.ts';
import { type BandJudgement, judgeBand } from '../../shop/bands/index.ts';
import { type EndPlayJudgement, judgeEndPlay, readPlays } from '../../shop/endplay/index.ts';
import { judgePack, type PackJudgement, readReadings } from '../../shop/packs/index.ts';
import { judgePreload, type PreloadJudgement } from '../../shop/preload/index.ts';
import { judgeWear, type WearJudgement } from '../../shop/wear/index.ts';
import type { OpenJob } from '../job/index.ts';
import { type Given, mustBeSound } from '../request/index.ts';
import { wrapOf } from './bands.ts';
import { trainWith } from './kind.ts';
import { spentIn } from './spent.ts';

/** What is told of one thing of each kind. */
export interface Judgements {
  readonly pack: PackJudgement;
  readonly endplay: EndPlayJudgement;
  readonly preload: PreloadJudgement;
  readonly band: BandJudgement;
  readonly wear: WearJudgement;
}

/** What was measured of a train, kind by kind, or nothing yet: then there are boxes to write in. */
export type Measurements = {
  readonly [Kind in MeasuredKind]: readonly Judgements[Kind][];
};

/** Readings of packs, of end plays, and a job, before which the others go. */
export interface MeasurementsRequest {
  readonly readings?: Given;
  readonly plays?: Given;
  readonly job?: OpenJob;
}

/** What is told of the train's packs, shafts, bearings, bands and wear, all of which are there. */
export function askMeasurements(train: Train, request: MeasurementsRequest): Measurements {
  const { readings, plays, job } = request;
  const read = readReadings(readings?.text ?? '{}', train);
  if (readings) mustBeSound(readings, read.problems);
  const played = readPlays(plays?.text ?? '{}', train);
  if (plays) mustBeSound(plays, played.problems);
  const limited = trainWith(job, train);
  const { packs = [], endPlays = [], bands = [], preloads = [], wear = [] } = limited;
  const told = job?.readings(train);
  const packReadings = [...read.readings, ...(told?.packs ?? [])];
  const playReadings = [...played.readings, ...(told?.plays ?? [])];
  const spent = spentIn(train, job);
  return {
    pack: packs.map((pack) => {
      const { device } = pack;
      const its = packReadings.find((one) => one.device === device) ?? { device };
      return judgePack(pack, its, undefined, spent.has(device));
    }),
    endplay: endPlays.map((play) => {
      return judgeEndPlay(play, playReadings.find(({ shaft }) => shaft === play.shaft) ?? {});
    }),
    preload: preloads.map((preload) => {
      const its = told?.preloads.find(({ bearings }) => bearings === preload.bearings);
      return judgePreload(preload, its ?? {});
    }),
    band: bands.map((band) => {
      const { device } = band;
      const its = told?.bands.find((one) => one.device === device) ?? {};
      return judgeBand(band, its, wrapOf(limited, device));
    }),
    wear: wear.map((check) => {
      return judgeWear(check, told?.wear.find(({ part }) => part === check.part) ?? {});
    }),
  };
}
