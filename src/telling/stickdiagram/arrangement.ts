import type { NameOf } from '../scene/index.ts';
import type { Assembly } from '../../engine/train/index.ts';
import type { Station } from './station.ts';

/** What stands where, and which axis each body is on: what an arrangement is of. */
export interface Subjects {
  readonly assembly: Assembly;
  readonly stations: readonly Station[];
  readonly strips: readonly number[];
  readonly nameOf: NameOf;
}

/** What can be chosen of a stick diagram before it has lengths; `arrange` chooses it. */
export interface Arrangement {
  /** Stations from the input end on. */
  readonly order: number[];
  /** By station: its choices, in bits. */
  readonly choice: number[];
  /** By body: where its lines meet. */
  readonly route: Route[];
  /** Bodies, those nearer to the axis first. */
  readonly rank: number[];
}

/** Near the axis, outside the sets, or in both places with a disc between. */
export type Route = typeof SHAFT | typeof DRUM | typeof BOTH;
export const SHAFT = 1;
export const DRUM = 2;
export const BOTH = 3;
