import type { Train } from '../../engine/train/index.ts';
import { speakAgainst, type Verdict } from '../../shop/limits/index.ts';
import type { OpenJob } from '../job/index.ts';
import { askMeasurements } from './measurements.ts';

/**
 * What a job has measured and not closed: outside, in doubt, or a preload that no torque has proved.
 * It is told to whoever signs, and prevents nothing.
 */
export function openIn(train: Train, job: OpenJob): readonly string[] {
  const { packs, plays, bands, preloads, wear } = askMeasurements(train, { job });
  const all: readonly (readonly [string, boolean, readonly (Verdict | undefined)[], Remarks])[] = [
    ...packs.map((its) => {
      const { pack, measured, again, wear: plates, verdict, remarks } = its;
      const gaps = measured.length > 0 || again ? [verdict] : [];
      const verdicts = [...gaps, ...plates.map((one) => one.verdict)];
      return [pack.device, verdicts.length > 0, verdicts, remarks] as const;
    }),
    ...plays.map(({ endPlay, measured, again, verdict, remarks }) => {
      return [endPlay.shaft, Boolean(measured ?? again), [verdict], remarks] as const;
    }),
    ...bands.map(({ band, travel, turns, verdict, remarks }) => {
      return [band.device, Boolean(travel ?? turns), [verdict], remarks] as const;
    }),
    ...preloads.map(({ preload, torque, gap, verdict, remarks }) => {
      return [preload.bearings, Boolean(torque ?? gap), [verdict], remarks] as const;
    }),
    ...wear.map(({ check, worst, verdict, remarks }) => {
      return [check.part, Boolean(worst), [verdict], remarks] as const;
    }),
  ];
  return all.flatMap(([name, read, verdicts, remarks]) => {
    const closed = verdicts.every((one) => one === 'inside') && !speakAgainst(remarks);
    return read && !closed ? [name] : [];
  });
}

type Remarks = readonly { readonly remark: string }[];
