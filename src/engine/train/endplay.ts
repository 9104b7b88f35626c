import type { LengthText, FileLimit } from './pack.ts';

/** How far a shaft may move along itself, and the part by which it is set. */
export interface EndPlay {
  /** What the end play is of. */
  readonly shaft: string;
  /** Absent: an end play. A backlash is between teeth, on the pitch circle; no shelf sets it. */
  readonly measure?: PlayKind;
  readonly limit?: FileLimit;
  readonly shelf?: WasherShelf;
  /** The parts between the two stops; what is left of them is the end play. */
  readonly stack?: readonly StackPart[];
}

export const PLAY_KINDS = ['end play', 'backlash'] as const;
export type PlayKind = (typeof PLAY_KINDS)[number];

export interface WasherShelf {
  readonly part: WasherPart;
  /** The one that is in while the end play is measured. */
  readonly fitted: LengthText;
  readonly sizes: readonly LengthText[];
  readonly tolerance?: LengthText;
}

export const WASHER_PARTS = ['washer', 'race', 'shim'] as const;
export type WasherPart = (typeof WASHER_PARTS)[number];

export interface StackPart {
  readonly part: string;
  readonly size: LengthText;
  readonly tolerance?: LengthText;
  /** It makes the gap larger (a bore, a case), or it fills it. */
  readonly gap: 'opens' | 'fills';
}
