import type { GearName } from '../../engine/chart/index.ts';
import type { Fault } from '../../engine/faults/index.ts';
import type { Fact, State } from '../../engine/flow/index.ts';
import type { Rational } from '../../engine/linear/index.ts';
import type { MemberName, Way } from '../../engine/train/index.ts';
import type { Misconception } from './misconception.ts';

/** Something that a class can predict before it is shown. Plain data, the same for one seed. */
export interface Question {
  readonly kind: Kind;
  /** What it is about, the first thing first; to be lit on the drawing. */
  readonly subject: readonly Subject[];
  readonly setting: Setting;
  /** From two to five, no two alike, in the order of the seed; just one is right. */
  readonly choices: readonly Choice[];
  /** Why the right one is right: the engine's reasons. */
  readonly facts: readonly Fact[];
}

/** The easy first. */
export const KINDS = [
  'state', // does it drive, is it neutral, is it tied up?
  'way', // which way does the output turn?
  'engine braking',
  'device', // does this device carry, is it idle, does it over-run?
  'hand', // do the hands turn it, and which way does another member go?
  'ratio',
  'carriers', // which devices carry the load?
  'left free', // which members does nothing settle?
  'held torque', // what does a member that stands still put on what holds it?
  'backwards', // what does a one-way clutch fitted backwards do in this gear?
  'comes off', // which of these parts may come off now?
  'faces', // to which end does the face of a part look?
  'fault', // where does a fault show first on the road, and how?
] as const;
export type Kind = (typeof KINDS)[number];

/** A member goes by the label of its body. */
export interface Subject {
  readonly kind: 'member' | 'device' | 'set' | 'part';
  readonly name: string;
}

/** How the train stands while the question is asked. */
export interface Setting {
  readonly on: readonly string[];
  /** Absent on the bench, and where a question is about every gear. */
  readonly gear?: GearName;
  /** Who turns whom: under power, on coast, or hands. */
  readonly end: 'drive' | 'coast' | 'hand';
  /** How the output is turned, on coast. */
  readonly output?: Way;
  /** Only by hand. */
  readonly hold: readonly MemberName[];
  readonly turn?: { readonly member: MemberName; readonly way: Way };
  readonly fault?: Fault;
  /** The parts that are off, where the unit is being stripped. */
  readonly off?: readonly string[];
  /** The face of a part that is asked about. */
  readonly face?: string;
}

/** A wrong choice is what a wrong idea, followed on the same train, leads to. */
export type Choice =
  | { readonly answer: Answer; readonly right: true }
  | { readonly answer: Answer; readonly right: false; readonly misconception: Misconception };

export type Answer =
  | { readonly answer: 'turning'; readonly is: Way | 'still' | 'free' | 'locked' }
  /** Input speed / output speed. */
  | { readonly answer: 'ratio'; readonly ratio: Rational }
  /** `carries` is said of a one-way clutch that holds, too. */
  | { readonly answer: 'device'; readonly does: 'carries' | 'idle' | 'over-runs' }
  | { readonly answer: 'devices'; readonly devices: readonly string[] }
  | { readonly answer: 'members'; readonly members: readonly MemberName[] }
  | { readonly answer: 'yes or no'; readonly yes: boolean }
  /** What pushes the member, per unit of input torque; `pushed` is null where nothing does. */
  | { readonly answer: 'torque'; readonly size: Rational; readonly pushed: Way | null }
  /** What the output does; the ratio is there only where it drives. */
  | { readonly answer: 'state'; readonly state: State; readonly ratio?: Rational }
  | { readonly answer: 'part'; readonly part: string }
  /** The end to which a face looks; `either`: it makes no difference. */
  | { readonly answer: 'facing'; readonly to: 'input' | 'output' | 'either' }
  /** The first gear that works otherwise; null is none. */
  | { readonly answer: 'sign'; readonly sign: FirstSign | null };

/** The gear in which a fault shows first on the road, the end that is driven there, and what it does. */
export interface FirstSign {
  readonly gear: GearName;
  readonly end: 'drive' | 'coast';
  readonly state: State;
  readonly ratio?: Rational;
}
