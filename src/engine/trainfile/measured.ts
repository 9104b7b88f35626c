import { plainValue } from '../entries/index.ts';
import type { FileLimit, MeasuredKind } from '../train/index.ts';
import { type Edited, mend, type Value } from '../yaml/index.ts';

/** Something of a train that is measured. */
export interface Measurand {
  readonly kind: MeasuredKind;
  readonly name: string;
}

/** A row of parts of which one sets a gap, as files say it. */
export interface ShelfSaid {
  readonly part: string;
  readonly fitted: string;
  readonly sizes: readonly string[];
  readonly tolerance?: string;
}

/**
 * Writes a limit of what is measured: `which` of a pack's, a band's or a preload's, and else 'limit'.
 * Refused as every edit is that would lose a comment.
 */
export function putLimit(text: string, of: Measurand, which: string, limit: FileLimit): Edited {
  const within = of.kind === 'pack' || of.kind === 'band' ? ['limits', which] : [which];
  return mend(text, [SECTION[of.kind], of.name, ...within], plainValue(limit) as Value);
}

/** Writes the shelf of what is measured. */
export function putShelf(text: string, of: Measurand, shelf: ShelfSaid): Edited {
  return mend(text, [SECTION[of.kind], of.name, 'shelf'], plainValue(shelf) as Value);
}

const SECTION = {
  pack: 'packs',
  endplay: 'endplay',
  preload: 'preload',
  band: 'bands',
  wear: 'wear',
} as const satisfies Record<MeasuredKind, string>;
