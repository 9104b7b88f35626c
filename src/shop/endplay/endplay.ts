import type { EndPlay, StackPart } from '../../engine/train/index.ts';
import {
  type Draws,
  type DrawsAsked,
  drawStacks,
  type Gap,
  type Length,
  lengthFrom,
  stackUp,
} from '../length/index.ts';
import {
  type Bounds,
  boundsOf,
  type GapRemark,
  limitRemarks,
  meanGap,
  type MeanGap,
  middleOf,
  placesOutside,
  readingDoubts,
  select,
  type Selection,
  shelfRemarks,
  speakAgainst,
  thickening,
  usableBounds,
  type Verdict,
  verdictOfReading,
} from '../limits/index.ts';

/** What the readings of a shaft's end play say. */
export interface EndPlayJudgement {
  readonly endPlay: EndPlay;
  /** Absent where nothing was measured. */
  readonly measured?: MeanGap;
  readonly bounds?: Bounds;
  readonly verdict?: Verdict;
  /** How thick a part must be added: from `leastUm` to `mostUm`, below 0 for thinner. */
  readonly thicker?: ReturnType<typeof thickening>;
  /** What the file's own sizes leave. */
  readonly drawn?: Gap;
  /** What those sizes leave by chance, where it was asked. */
  readonly draws?: Draws;
  readonly selection?: Selection;
  readonly remarks: readonly GapRemark[];
}

/** A shaft's end play by its readings (push, zero, pull), in any order. */
export function judgeEndPlay(
  endPlay: EndPlay,
  readings: readonly Length[],
  asked?: DrawsAsked,
): EndPlayJudgement {
  const { limit, shelf } = endPlay;
  const stack = endPlay.stack?.map(termOf);
  const bounds = limit && boundsOf(limit);
  const usable = usableBounds(bounds);
  const measured = readings.length > 0 ? meanGap(readings, usable && middleOf(usable)) : undefined;
  const verdict = measured && usable && verdictOfReading(measured.clearance, usable);
  const doubts = measured ? readingDoubts(measured, usable, 'again') : [];
  const sound = measured && usable && !speakAgainst(doubts) ? { measured, usable } : undefined;
  const selection = sound && shelf && select(sound.measured, shelf, sound.usable);
  const thicker =
    sound && verdict !== 'inside'
      ? thickening(sound.measured.clearance.um, sound.usable)
      : undefined;
  return {
    endPlay,
    ...(measured && { measured }),
    ...(bounds && { bounds }),
    ...(verdict && { verdict }),
    ...(thicker && { thicker }),
    ...(stack && { drawn: stackUp(stack) }),
    ...(stack && asked && { draws: drawStacks(stack, asked, usable) }),
    ...(selection && { selection }),
    remarks: [
      ...doubts,
      ...limitRemarks(bounds),
      ...(measured && usable ? placesOutside(measured, usable) : []),
      ...shelfRemarks(shelf, selection),
    ],
  };
}

function termOf({ size, tolerance, gap }: StackPart) {
  return {
    adds: gap === 'opens' ? (1 as const) : (-1 as const),
    um: (lengthFrom(size) as Length).um,
    ...(tolerance !== undefined && { tolUm: (lengthFrom(tolerance) as Length).um }),
  };
}
