import type { State } from '../flow/index.ts';
import type { Rational } from '../linear/index.ts';
import type { Quantity } from '../reckon/index.ts';
import type { MemberName } from '../train/index.ts';
import type { Fault } from './fault.ts';

/** Faults against every gear that the ranges name, each against the healthy train. */
export interface FaultMatrix {
  /** In the order of the file, with what the healthy train does. */
  readonly gears: readonly MatrixGear[];
  /** A row a fault, or a pair of faults, in the order of the file. */
  readonly rows: readonly FaultRow[];
  /** Every row stands in one class: no road test parts the rows of a class. */
  readonly classes: readonly FaultClass[];
}

export interface MatrixGear {
  readonly range: string;
  readonly gear: string;
  readonly on: readonly string[];
  readonly drive: Outcome;
  /** As the vehicle travels: the way the gear drives it, else forward. */
  readonly coast: Outcome;
  /** Where the gear drives nothing: the vehicle may be rolled either way. */
  readonly inReverse?: Outcome;
}

/** What one end does with the other. */
export interface Outcome {
  readonly state: State;
  /** Input speed / output speed, under power and on coast; only where it drives. */
  readonly ratio?: Rational;
}

export interface FaultRow {
  /** One fault, or two at once. */
  readonly faults: readonly Fault[];
  /** A cell a gear, in the order of the gears. */
  readonly cells: readonly FaultCell[];
}

export interface FaultCell {
  readonly drive: Changed;
  /** As the vehicle travels while nothing is wrong. */
  readonly coast: Changed;
  readonly inReverse?: Changed;
  /**
   * Engine braking: a train that is tied up on coast has neither lost nor gained it, and what slips
   * has not lost it.
   */
  readonly braking: 'same' | 'lost' | 'gained';
  /** Only where the matrix was asked for it. */
  readonly spins?: { readonly drive: Spins; readonly coast: Spins };
}

export interface Changed extends Outcome {
  readonly is: Change;
}

/**
 * `drives`: where the healthy train is neutral or tied up. `slips`: as in the healthy train up to
 * the load that is still carried; what is told beside it (state, ratio) is so above that.
 */
export type Change = 'same' | 'neutral' | 'tied up' | 'another ratio' | 'drives' | 'slips';

/**
 * The members that the fault lets loose, planets left out. Speeds are per turn of the turned
 * end, clockwise positive.
 */
export interface Spins {
  /** Their speed is settled in the healthy train, and by nothing now. */
  readonly free: readonly MemberName[];
  /** They turn faster than either end, and faster than in the healthy train. */
  readonly fast: ReadonlyMap<MemberName, Quantity>;
}

export interface FaultClass {
  /** Places in the matrix's rows. */
  readonly rows: readonly number[];
  /** True where the faults change nothing in any gear. */
  readonly silent: boolean;
}
