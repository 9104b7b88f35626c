import type { State } from '../flow/index.ts';
import type { Rational } from '../linear/index.ts';
import type { Quantity } from '../reckon/index.ts';

/** What is asked of a train: the pressure at every piston, and what the engine gives. */
export interface Load {
  readonly pressureKpa: Rational;
  readonly engineNm: Rational;
  /** By how much the converter multiplies the engine's torque at stall; 1 without one. */
  readonly stallRatio: Rational;
}

/** Whether a gear holds, under power and on coast. */
export interface GearMargin {
  readonly range: string;
  readonly gear: string;
  readonly on: readonly string[];
  /** With the engine's torque times the stall ratio at the input. */
  readonly drive: SideMargin;
  /** With the engine's torque at the input: an engine that is turned drags with less. */
  readonly coast: SideMargin;
  /** On coast in reverse, where the gear drives nothing and yet turns the engine on coast. */
  readonly inReverse?: SideMargin;
}

export interface SideMargin {
  /** Where the train does not drive there is no torque to carry. */
  readonly state: State;
  readonly askedNm: Rational;
  /** The most torque at the input before something slips; null: nothing known limits it. */
  readonly mostNm: Rational | null;
  /** What slips then; several together where they share a reaction. */
  readonly letsGo: readonly string[];
  /** The least pressure at which what is asked holds; null: none does. */
  readonly leastKpa: Rational | null;
  /** Those that carry something, in the order of the file. */
  readonly devices: readonly DeviceMargin[];
}

export interface DeviceMargin {
  readonly device: string;
  /** On its first-named member, clockwise positive; a range where a reaction is shared. */
  readonly mustNm: Quantity;
  /** The most that it can put there, that way; null where nobody has said. */
  readonly canNm: Rational | null;
}
