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
  type Again,
  againRemarks,
  isClosed,
  isMisread,
  standingOf,
  type Bounds,
  boundsOf,
  type GapRemark,
  limitRemarks,
  measuredAgain,
  meanGap,
  type MeanGap,
  middleOf,
  placesOutside,
  readingRemarks,
  select,
  type Selection,
  shelfRemarks,
  speakAgainst,
  thickening,
  usableBounds,
  type Verdict,
  verdictOfReading,
} from '../limits/index.ts';
import type { PlayReadings } from './readings.ts';

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
  /** With another part in: what closes it. */
  readonly again?: Again;
  readonly remarks: readonly GapRemark[];
}

/** A shaft's end play by its readings. */
export function judgeEndPlay(
  endPlay: EndPlay,
  { play: read = [], again: after }: Omit<PlayReadings, 'shaft'>,
  asked?: DrawsAsked,
): EndPlayJudgement {
  const { limit, shelf } = endPlay;
  const stack = endPlay.stack?.map(termOf);
  const bounds = limit && boundsOf(limit);
  const usable = usableBounds(bounds);
  const measured = read.length > 0 ? meanGap(read, usable && middleOf(usable)) : undefined;
  const again = after && measuredAgain(after, measured, shelf, usable);
  const last = standingOf(measured, shelf, again);
  const against = last.measured
    ? readingRemarks(last.measured, usable, endPlay.measure === 'backlash' ? 'teeth' : 'again')
    : [];
  const verdict =
    last.measured && usable && !isMisread(against)
      ? verdictOfReading(last.measured.clearance, usable)
      : undefined;
  const sure = !speakAgainst([...against, ...againRemarks(again)]) && !isClosed(again);
  const sound = last.measured && usable && sure ? { measured: last.measured, usable } : undefined;
  const selection = sound && last.shelf && select(sound.measured, last.shelf, sound.usable);
  const thicker =
    sound && verdict !== 'inside' && endPlay.measure !== 'backlash'
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
    ...(again && { again }),
    remarks: [
      ...against,
      ...limitRemarks(bounds),
      ...(measured && usable ? placesOutside(last.measured ?? measured, usable) : []),
      ...shelfRemarks(last.shelf, selection),
      ...againRemarks(again),
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
