import type { Passage } from './place.ts';

/** A file as entries, lists and scalars with their places; all that a train file may hold. */
export type Node = Scalar | List | SectionNode;

export interface Scalar {
  readonly kind: 'scalar';
  /** null where nothing is written; then the passage is empty, behind its key. */
  readonly value: string | number | boolean | null;
  readonly at: Passage;
}

export interface List {
  readonly kind: 'list';
  readonly items: readonly Node[];
  readonly flow: boolean;
  readonly at: Passage;
}

export interface SectionNode {
  readonly kind: 'section';
  readonly entries: readonly EntryNode[];
  readonly flow: boolean;
  readonly at: Passage;
}

/** What stands in a list or a section. */
export type Within = Pick<List, 'kind' | 'items'> | Pick<SectionNode, 'kind' | 'entries'>;

/** Where a block is that starts at `from`: down to its last value, or to the key of none. */
export function blockPassage(within: Within, { from, to }: Passage): Passage {
  const last = within.kind === 'list' ? within.items.at(-1) : within.entries.at(-1)?.value;
  return { from, to: last?.at.to ?? to };
}

export interface EntryNode {
  readonly key: string;
  readonly keyAt: Passage;
  readonly value: Node;
}

/** A train file has five levels. */
export const MOST_LEVELS = 12;

/**
 * What YAML calls not printable, the mark that a decoder leaves where bytes were no text, and the
 * marks that turn the letters behind them round: a name must read as it is spelt.
 */
export const BAD_CHARACTER =
  /[\p{Cs}\ufffd-\uffff]|(?![\t\n\r\x85])\p{Cc}|[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/u;
