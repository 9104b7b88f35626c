import type { AgainReadings } from '../limits/index.ts';
import type { Length } from '../length/index.ts';

/** What somebody measured of a pack. No order of readings means anything but the place. */
export interface PackReadings {
  readonly device: string;
  /** Between snap ring and backing plate, the plate lifted against the ring: a place each. */
  readonly feeler?: readonly Length[];
  /** Dial indicator on the backing plate, lifted: down, zero, up. */
  readonly lifted?: readonly Length[];
  /** Dial indicator on the backing plate, air on the piston. */
  readonly onAir?: { readonly pressure: string; readonly strokes: readonly Length[] };
  /** From a straight-edge across the drum's lip, whose own height is taken off. */
  readonly depthGauge?: {
    readonly depth: Length;
    readonly edge?: Length;
    /** The height of the plates that fill it. */
    readonly stack: Length;
  };
  /** Steps that fit between ring and backing plate, and that do not. */
  readonly stepGauge?: { readonly fits?: Length; readonly doesNotFit?: Length };
  /** With the part that was chosen in: the readings that close it. */
  readonly again?: AgainReadings;
  /** Thicknesses of the friction discs, of the steels. */
  readonly friction?: readonly Length[];
  readonly steel?: readonly Length[];
  /** Gaps under a straight-edge on the steels. */
  readonly cone?: readonly Length[];
}
