import type { Length } from '../length/index.ts';
import type { Rational } from '../../engine/linear/index.ts';

/** What was measured of a band. */
export interface BandReadings {
  readonly device: string;
  /** By which the screw stands backed off, from where the maker's torque held the drum. */
  readonly turns?: Rational;
  /** How far the screw or the rod moves until the drum is held: several readings. */
  readonly travel?: readonly Length[];
}
