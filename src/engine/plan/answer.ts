import type { Fault } from '../faults/index.ts';
import type {
  BandSetting,
  Bolts,
  End,
  EndPlay,
  Fluid,
  FrictionDevice,
  MemberName,
  Pack,
  OneWayClutch,
  Part,
  Pawl,
  Preload,
} from '../train/index.ts';

/** How a member moves under the hand; clockwise is seen from the input end. */
export type Felt = 'both ways' | 'clockwise only' | 'anticlockwise only' | 'neither way';

/** The build of a train: its teardown replayed backwards, with all that is done at its place. */
export interface Plan {
  readonly steps: readonly Step[];
  /** Everything that the builder of these parts can get wrong, in the order of the steps. */
  readonly mistakes: readonly Watched[];
  /** How many hand checks the steps have, those with air left out. */
  readonly checks: number;
  /** How many parts are taken to be hidden by the one above, for the file does not say. */
  readonly assumed: number;
  /** Whether no fewer do, each mistake felt as early as it can be; false: search cut off. */
  readonly proven: boolean;
}

/** `number` counts from 1; `up` is the end of the unit that is up at the step, where it is known. */
export type Step = Doing & { readonly number: number; readonly up?: End };

export type Doing =
  /**
   * A part goes on. Its own notes are what to look at. `oneWays`: one-way clutches that are whole
   * with it and backwards to no later hand check; their races are tried before they are covered.
   */
  | {
      readonly does: 'fit';
      readonly part: Part;
      readonly checks: readonly PlannedCheck[];
      readonly oneWays?: readonly OneWayClutch[];
    }
  /** The unit is turned over; `up` is as it is then. */
  | { readonly does: 'turn over' }
  /** How far a part stands below the face of the case. */
  | { readonly does: 'height'; readonly part: Part }
  /** `still`: what hands feel of the input between one round of tightening and the next. */
  | {
      readonly does: 'tighten';
      readonly part: Part;
      readonly bolts: Bolts;
      readonly still?: Still;
    }
  | { readonly does: 'clearance'; readonly pack: Pack }
  | { readonly does: 'band'; readonly band: BandSetting }
  | { readonly does: 'end play'; readonly endPlay: EndPlay }
  | { readonly does: 'preload'; readonly preload: Preload }
  /** `check`: with the air on; absent where hands reach nothing that shows it. */
  | { readonly does: 'air check'; readonly device: FrictionDevice; readonly check?: PlannedCheck }
  /** `check`: with the pawl engaged by hand, as in the range that parks. */
  | { readonly does: 'pawl check'; readonly device: Pawl; readonly check?: PlannedCheck }
  | { readonly does: 'fill'; readonly fluid: Fluid };

/** Hold one member or none, turn another both ways, on the train as built so far. */
export interface PlannedCheck {
  readonly hold?: Grip;
  readonly turn: Grip;
  /** What a right build does. */
  readonly right: Felt;
  /** What wrong builds do that no hand check has caught before; with air, that none catches. */
  readonly wrong: readonly { readonly felt: Felt; readonly mistakes: readonly Mistake[] }[];
}

export interface Still {
  readonly turn: Grip;
  readonly felt: Felt;
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

/** Never: caught before it is made, or later than `until`. */
export interface Watched {
  readonly mistake: Mistake;
  /** The part to put right. */
  readonly part: string;
  /** The step at which it is made. */
  readonly made: number;
  readonly caught: { readonly step: number; readonly by: Catcher };
  /** The last step at which it can be caught. */
  readonly until: number;
  /** The last step at which it can be put right without stripping: then something covers it. */
  readonly open: number;
}

export type Catcher = 'hand check' | Glance | Measuring;
/** At the step of the part itself: what eyes and a tray of parts tell. */
export type Glance = 'look' | 'count' | 'measure';
/** At a step of its own. */
export type Measuring = Exclude<Doing['does'], 'fit' | 'turn over' | 'tighten' | 'fill'>;
