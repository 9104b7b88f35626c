import type { Length } from '../length/index.ts';
import type { AgainReadings } from '../limits/index.ts';

/** What was measured of a shaft's end play, in any order. */
export interface PlayReadings {
  readonly shaft: string;
  /** Push, zero, pull: a reading each time. */
  readonly play?: readonly Length[];
  /** With the part that was chosen in: the readings that close it. */
  readonly again?: AgainReadings;
}
