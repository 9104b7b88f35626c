import type { Length } from '../length/index.ts';
import type { Torque } from './torque.ts';

/** What was measured of bearings that are squeezed. */
export interface PreloadReadings {
  readonly bearings: string;
  /** What kept them turning, by a torque wrench. */
  readonly turning?: readonly Torque[];
  /** What kept them turning, by a spring balance on a cord; torques by the radius of the hub. */
  readonly pull?: readonly Torque[];
  /** The play with the shelf's fitted part in. */
  readonly gap?: readonly Length[];
  /** Absent: new ones. */
  readonly state?: 'new' | 'used';
}
