import type { Fault } from '../faults/index.ts';
import type { MemberName, Part } from '../train/index.ts';

/** How a member moves under the hand; clockwise is seen from the input end. */
export type Felt = 'both ways' | 'clockwise only' | 'anticlockwise only' | 'neither way';

/** The build of a train: its teardown replayed backwards, with what to look at and to feel. */
export interface Plan {
  readonly steps: readonly Step[];
  /** Everything that the builder of these parts can get wrong, in the order of the steps. */
  readonly mistakes: readonly Watched[];
  /** How many hand checks the steps have. */
  readonly checks: number;
  /** Whether no fewer do, each mistake felt as early as it can be; false: search cut off. */
  readonly proven: boolean;
}

/** One part goes on; `number` counts from 1. The part's own notes are what to look at. */
export interface Step {
  readonly number: number;
  readonly part: Part;
  readonly checks: readonly PlannedCheck[];
}

/** Hold one member or none, turn another both ways, on the train as built so far. */
export interface PlannedCheck {
  readonly hold?: Grip;
  readonly turn: Grip;
  /** What a right build does. */
  readonly right: Felt;
  /** What wrong builds do that no check before this one has caught. */
  readonly wrong: readonly { readonly felt: Felt; readonly mistakes: readonly Mistake[] }[];
}

/** What a hand takes hold of: a member, by the part that carries it. */
export interface Grip {
  readonly part: string;
  readonly member: MemberName;
  /** Whether the part is one piece in the hand; else the member tells which of its pieces. */
  readonly whole: boolean;
}

/** A fault that is built in, or a slip that turns nothing the wrong way. */
export type Mistake = Fault | Slip;

export interface Slip {
  readonly what: 'slip';
  readonly part: string;
  readonly is: 'wrong way round' | 'out of line' | 'miscounted' | 'wrong thickness';
}

export interface Watched {
  readonly mistake: Mistake;
  /** The part to put right. */
  readonly part: string;
  /** The step at which it is made. */
  readonly made: number;
  /** The last step at which it can be put right without stripping again. */
  readonly rightUntil: number;
  /** The step of the hand check that catches it, or what does where no hand check can. */
  readonly caughtBy: { readonly step: number } | { readonly inspection: Inspection };
}

export type Inspection = 'look' | 'count' | 'measure' | 'air check';
