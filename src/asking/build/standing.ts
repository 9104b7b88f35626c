import type { MeasuredKind, Train } from '../../engine/train/index.ts';
import type { BandJudgement } from '../../shop/bands/index.ts';
import type { EndPlayJudgement } from '../../shop/endplay/index.ts';
import { isClosed, type Selection, speakAgainst, type Verdict } from '../../shop/limits/index.ts';
import type { PackJudgement } from '../../shop/packs/index.ts';
import type { PreloadJudgement } from '../../shop/preload/index.ts';
import type { WearJudgement } from '../../shop/wear/index.ts';
import type { OpenJob } from '../job/index.ts';
import { askMeasurements } from './measurements.ts';

/** One thing of a train that is measured, what is told of it, and where it stands. */
export type MeasuredThing = {
  readonly name: string;
  readonly stands: MeasuredStanding;
} & {
  [Kind in MeasuredKind]: { readonly kind: Kind; readonly judgement: Judgements[Kind] };
}[MeasuredKind];

interface Judgements {
  readonly pack: PackJudgement;
  readonly endplay: EndPlayJudgement;
  readonly preload: PreloadJudgement;
  readonly band: BandJudgement;
  readonly wear: WearJudgement;
}

/**
 * Nothing was read yet; something speaks against what was read, or it proves nothing alone, so it is
 * `asked` again; there is no limit that judges it; it is outside, or inside while a part of the shelf
 * would bring it nearer to the middle; or nothing is left to do.
 */
export type MeasuredStanding = 'nothing' | 'asked' | 'unjudged' | 'outside' | 'inside' | 'closed';

/** All that is measured of a train, in the order of its file, as it stands in a job. */
export function askStanding(train: Train, job?: OpenJob): readonly MeasuredThing[] {
  const { packs, plays, preloads, bands, wear } = askMeasurements(train, job ? { job } : {});
  return [
    ...packs.map((judgement): MeasuredThing => {
      const { pack, measured, gauge, again, wear: plates, verdict, selection, remarks } = judgement;
      const gaps = measured.length > 0 || again ? [verdict] : gauge ? [gauge.verdict] : [];
      const verdicts = [...gaps, ...plates.map((one) => one.verdict)];
      const left = again ? isClosed(again) : !wouldHelp(selection);
      const stands = standingBy(verdicts, remarks, left);
      return { kind: 'pack', name: pack.device, judgement, stands };
    }),
    ...plays.map((judgement): MeasuredThing => {
      const { endPlay, measured, again, verdict, selection, remarks } = judgement;
      const left = again ? isClosed(again) : !wouldHelp(selection);
      const stands = standingBy(measured || again ? [verdict] : [], remarks, left);
      return { kind: 'endplay', name: endPlay.shaft, judgement, stands };
    }),
    ...preloads.map((judgement): MeasuredThing => {
      const { preload, torque, gap, limit, verdict, remarks } = judgement;
      const verdicts = torque ? [verdict] : [];
      const stands = standingBy(verdicts, remarks, true);
      // A play chooses the part; only a torque proves the preload.
      const unproved = !torque && gap && stands === 'nothing';
      const wants = torque && limit && stands === 'unjudged';
      return {
        kind: 'preload',
        name: preload.bearings,
        judgement,
        stands: unproved || wants ? 'asked' : stands,
      };
    }),
    ...bands.map((judgement): MeasuredThing => {
      const { band, travel, turns, verdict, selection, remarks } = judgement;
      const left = !wouldHelp(selection);
      const stands = standingBy(travel || turns ? [verdict] : [], remarks, left);
      return { kind: 'band', name: band.device, judgement, stands };
    }),
    ...wear.map((judgement): MeasuredThing => {
      const { check, worst, verdict, remarks } = judgement;
      const stands = standingBy(worst ? [verdict] : [], remarks, true);
      return { kind: 'wear', name: check.part, judgement, stands };
    }),
  ];
}

function wouldHelp(selection: Selection | undefined): boolean {
  return selection !== undefined && !selection.best.stays && selection.best.verdict === 'inside';
}

// `done`: nothing is left to choose, or what was chosen has been read again.
function standingBy(
  verdicts: readonly (Verdict | undefined)[],
  remarks: readonly { readonly remark: string }[],
  done: boolean,
): MeasuredStanding {
  if (verdicts.length === 0) return 'nothing';
  if (speakAgainst(remarks)) return 'asked';
  if (verdicts.some((its) => its && its !== 'inside')) return 'outside';
  if (verdicts.some((its) => !its)) return 'unjudged';
  return done ? 'closed' : 'inside';
}
