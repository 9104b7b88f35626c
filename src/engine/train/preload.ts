import type { LengthText, FileLimit } from './pack.ts';
import type { TorqueText } from './part.ts';

/** Bearings that are squeezed on purpose, so that nothing can move: the torque that turns them proves it. */
export interface Preload {
  /** What the bearings are of. */
  readonly bearings: string;
  /** The torque that keeps them turning: of new bearings, and of those that run again. */
  readonly turning?: TorqueLimit;
  readonly used?: TorqueLimit;
  /** By how much they are squeezed, beyond no play at all. */
  readonly squeeze?: FileLimit;
  readonly shelf?: PreloadShelf;
}

/** As `FileLimit`, of a torque. */
export interface TorqueLimit {
  readonly least?: TorqueText;
  readonly most?: TorqueText;
  readonly source?: string;
  readonly by?: string;
}

export interface PreloadShelf {
  /** A shim or washer behind a bearing squeezes when it is thicker, a spacer between two when thinner. */
  readonly part: PreloadPart;
  /** The one that is in while the gap is measured. */
  readonly fitted: LengthText;
  readonly sizes: readonly LengthText[];
  readonly tolerance?: LengthText;
}

export const PRELOAD_PARTS = ['shim', 'washer', 'spacer'] as const;
/** What sets a preload, as files say it. */
export type PreloadPart = (typeof PRELOAD_PARTS)[number];
