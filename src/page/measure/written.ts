import type { FoldedEntry, Told } from '../../shop/records/index.ts';
import type { Loose } from './kept.ts';

/** What was written down of a thing, in a job or in none. */
export interface Written {
  readonly id: string;
  readonly told: Told;
  readonly who: string;
  /** Why it was struck through. */
  readonly struck?: string;
}

/** Of an entry of a job; nothing of one that only strikes another. */
export function writtenOf({ id, told, who, struckBy }: FoldedEntry): Written[] {
  if (!told) return [];
  const because = struckBy?.strikes?.because;
  return [{ id, told, who, ...(because !== undefined && { struck: because }) }];
}

export function looseWritten({ id, told, struck }: Loose): Written {
  return { id, told, who: '', ...(struck !== undefined && { struck }) };
}
