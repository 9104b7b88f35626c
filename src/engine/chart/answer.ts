import type { State } from '../flow/index.ts';
import type { Rational } from '../linear/index.ts';
import type { Way } from '../train/index.ts';

/** Every combination of the friction devices, in binary order of the file's devices. */
export interface Chart {
  readonly devices: readonly string[];
  /** How the output turns as the vehicle goes forward. */
  readonly forward: Way;
  readonly gears: readonly ChartGear[];
  /** Pairs of named driving combinations that differ by one device, or by one off-going and one on-coming. */
  readonly shifts: readonly Shift[];
}

export interface ChartGear {
  readonly on: readonly string[];
  readonly drive: State;
  /** Input speed / output speed; only when driving. */
  readonly ratio?: Rational;
  /** The same before the file's final drive, where it has one. */
  readonly beforeFinal?: Rational;
  /** As the vehicle travels: the way the healthy gear drives it, else forward. */
  readonly coast: State;
  /** In reverse, where the devices drive nothing and that is otherwise than forward. */
  readonly inReverse?: State;
  /** The gears of the file's ranges that apply just these devices. */
  readonly named: readonly GearName[];
}

export interface GearName {
  readonly range: string;
  readonly gear: string;
}

/** From one named gear to another (`from` and `to` are indices into `gears`). */
export interface Shift {
  readonly from: number;
  readonly to: number;
  readonly release?: string;
  readonly apply?: string;
  /**
   * A swap has two ways through, each a place in `gears`: both devices on, or both off. Absent for a
   * single change.
   */
  readonly both?: number;
  readonly neither?: number;
}
