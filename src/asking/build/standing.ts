import { MEASURED_KINDS, type MeasuredKind, type Train } from '../../engine/train/index.ts';
import { isClosed, type Selection, speakAgainst, type Verdict } from '../../shop/limits/index.ts';
import type { OpenJob } from '../job/index.ts';
import { askMeasurements, type Judgements, type Measurements } from './measurements.ts';

/** One thing of a train that is measured, what is told of it, and where it stands. */
export type MeasuredThing = {
  readonly name: string;
  readonly stands: MeasuredStanding;
} & {
  [Kind in MeasuredKind]: { readonly kind: Kind; readonly judgement: Judgements[Kind] };
}[MeasuredKind];

/**
 * Nothing was read yet; something speaks against what was read, or it proves nothing alone, so it is
 * `asked` again; there is no limit that judges it; it is outside, or inside while a part of the shelf
 * would bring it nearer to the middle; or nothing is left to do.
 */
export type MeasuredStanding = 'nothing' | 'asked' | 'unjudged' | 'outside' | 'inside' | 'closed';

/** All that is measured of a train, in the order of its file, as it stands in a job. */
export function askStanding(train: Train, job?: OpenJob): readonly MeasuredThing[] {
  const measured = askMeasurements(train, job ? { job } : {});
  return MEASURED_KINDS.flatMap((kind) => thingsOf(kind, measured));
}

function thingsOf<Kind extends MeasuredKind>(kind: Kind, measured: Measurements): MeasuredThing[] {
  return measured[kind].map((judgement) => {
    return { kind, judgement, ...STANDS[kind](judgement) } as MeasuredThing;
  });
}

type Standing = Pick<MeasuredThing, 'name' | 'stands'>;

const STANDS: {
  readonly [Kind in MeasuredKind]: (judgement: Judgements[Kind]) => Standing;
} = {
  pack({ pack, measured, gauge, again, wear: plates, verdict, selection, remarks }) {
    const gaps = measured.length > 0 || again ? [verdict] : gauge ? [gauge.verdict] : [];
    const verdicts = [...gaps, ...plates.map((one) => one.verdict)];
    const left = again ? isClosed(again) : !wouldHelp(selection);
    return { name: pack.device, stands: standingBy(verdicts, remarks, left) };
  },
  endplay({ endPlay, measured, again, verdict, selection, remarks }) {
    const left = again ? isClosed(again) : !wouldHelp(selection);
    const stands = standingBy(measured || again ? [verdict] : [], remarks, left);
    return { name: endPlay.shaft, stands };
  },
  preload({ preload, torque, gap, limit, verdict, remarks }) {
    const stands = standingBy(torque ? [verdict] : [], remarks, true);
    // A play chooses the part; only a torque proves the preload.
    const unproved = !torque && gap && stands === 'nothing';
    const wants = torque && limit && stands === 'unjudged';
    return { name: preload.bearings, stands: unproved || wants ? 'asked' : stands };
  },
  band({ band, travel, turns, verdict, selection, remarks }) {
    const left = !wouldHelp(selection);
    const stands = standingBy(travel || turns ? [verdict] : [], remarks, left);
    return { name: band.device, stands };
  },
  wear({ check, worst, verdict, remarks }) {
    return { name: check.part, stands: standingBy(worst ? [verdict] : [], remarks, true) };
  },
};

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
