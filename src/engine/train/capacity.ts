import type { Way } from './member.ts';

/**
 * How much a device can carry, by its sizes or as a torque: the shape is the file's, and a unit
 * stands last in each name. Without a source it is shown as unsourced.
 */
export type Capacity = Sourced & { readonly device: string } & (
    | PlateSizes
    | BandSizes
    | Rating
    | SignedRating
  );

/** What the engine gives, and by how much the converter multiplies it at stall. */
export interface Engine extends Sourced {
  readonly 'torque Nm'?: number;
  readonly 'stall ratio'?: number;
}

export interface Sourced {
  readonly source?: string;
  /** The initials of whoever wrote it down. */
  readonly by?: string;
}

export interface PlateSizes {
  /** Rubbing faces: two a friction disc. */
  readonly faces: number;
  readonly friction: number;
  /** Outer and inner diameter. */
  readonly 'lining mm': readonly [number, number];
  readonly 'piston mm': readonly [number, number];
  readonly 'springs N': number;
  /** Absent: uniform pressure, as a new lining. */
  readonly presses?: 'uniform pressure' | 'uniform wear';
}

export interface BandSizes {
  readonly 'drum mm': number;
  readonly 'wrap degrees': number;
  readonly friction: number;
  readonly 'servo mm': readonly [number, number];
  readonly 'springs N': number;
  /** Pull on the band over the servo's force; absent: 1. */
  readonly lever?: number;
  /** A drum that is pushed this way drags the band towards its anchor. */
  readonly tightens: Way;
}

/** Whichever way it is pushed; of a one-way clutch, the way in which it holds. */
export interface Rating {
  readonly 'torque Nm': number;
}

/** Of the device's first-named member, pushed clockwise or anticlockwise. */
export interface SignedRating {
  readonly 'clockwise Nm': number;
  readonly 'anticlockwise Nm': number;
}
