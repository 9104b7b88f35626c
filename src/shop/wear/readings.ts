import type { Length } from '../length/index.ts';

/** What was measured of a part, in any order: what is asked itself, or bores and shafts. */
export interface WearReadings {
  readonly part: string;
  /** Clearances by feeler, dial or straight-edge; of springs their free lengths. */
  readonly read?: readonly Length[];
  /** Inside diameters, and those of what runs in them: the clearance is what is between. */
  readonly bore?: readonly Length[];
  readonly shaft?: readonly Length[];
}
