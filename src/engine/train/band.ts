import type { LengthText, FileLimit } from './pack.ts';

/** How the clearance of a band at its drum is set: by a screw that is backed off, or by a rod. */
export interface BandSetting {
  /** The band. */
  readonly device: string;
  /** How far the screw moves in one turn; absent: there is no screw, or nobody wrote it. */
  readonly pitch?: LengthText;
  /** How far the band's end moves for each unit of the screw's or the rod's travel; absent: 1. */
  readonly lever?: number;
  readonly limits?: {
    /** At the drum: what the band's end can move. */
    readonly clearance?: FileLimit;
    /** Of the screw or the servo's rod. Where both are told, this one is judged by. */
    readonly travel?: FileLimit;
  };
  readonly shelf?: RodShelf;
}

/** Rods of several lengths, each of which takes its own from the travel. */
export interface RodShelf {
  readonly part: RodPart;
  /** The one that was in when the travel was measured. */
  readonly fitted: LengthText;
  readonly sizes: readonly LengthText[];
  readonly tolerance?: LengthText;
}

export const ROD_PARTS = ['servo rod', 'apply rod', 'apply pin'] as const;
/** What sets a band, as files say it. */
export type RodPart = (typeof ROD_PARTS)[number];
