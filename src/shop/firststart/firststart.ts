/** One thing that is done when a rebuilt unit runs for the first time. */
export interface StartStep {
  readonly does:
    | 'cooler'
    | 'converter'
    | 'fill'
    | 'prime'
    | 'pressure'
    | 'ranges'
    | 'leaks'
    | 'level'
    | 'drive'
    | 'after';
  /** Something is read there that is written down. */
  readonly reads?: true;
  /** What can hurt there. */
  readonly danger?: 'oil' | 'car' | 'wheels' | 'stall';
}

/**
 * The first start after a build, in order: what was flushed before, oil before it turns, pressure
 * before load, and a gentle drive that is read. Common practice, no source: the unit's maker has
 * the last word on every line.
 */
export const FIRST_START: readonly StartStep[] = [
  { does: 'cooler' },
  { does: 'converter' },
  { does: 'fill' },
  { does: 'prime', danger: 'car' },
  { does: 'pressure', reads: true, danger: 'wheels' },
  { does: 'ranges', reads: true, danger: 'wheels' },
  { does: 'leaks', danger: 'oil' },
  { does: 'level', danger: 'oil' },
  { does: 'drive', reads: true, danger: 'stall' },
  { does: 'after', reads: true, danger: 'oil' },
];
