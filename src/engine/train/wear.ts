import type { FileLimit } from './pack.ts';

/** Something that wears, or sags, and is measured against a limit of the unit's. */
export interface WearCheck {
  /** What it is called. */
  readonly part: string;
  readonly measure: WearKind;
  readonly limit?: FileLimit;
}

/** What is measured: a clearance or a gap, how thick a part still is, how long a spring is when free. */
export const WEAR_KINDS = [
  'bushing',
  'planet side',
  'gear to case',
  'gear to crescent',
  'gear side',
  'ring gap',
  'ring side',
  'drum dish',
  'spline play',
  'thickness',
  'spring length',
] as const;
/** How something that wears is measured, as files say it. */
export type WearKind = (typeof WEAR_KINDS)[number];
