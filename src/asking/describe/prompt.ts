import type { Form } from '../../engine/form/index.ts';

/** One plain question, and what may be said to it. */
export interface Prompt {
  /** By which it is answered: no other prompt of its round has it. */
  readonly key: string;
  /** `note`: a text of one line; `decimal`: a bare number; `quantity`: a number with its unit. */
  readonly kind:
    | 'text'
    | 'note'
    | 'number'
    | 'decimal'
    | 'quantity'
    | 'quantities'
    | 'pick'
    | 'several'
    | 'way';
  /** Of `pick` and `several`: what can be picked; of a quantity its units. */
  readonly options: readonly string[];
  /** What the options are, and how they are to be said. */
  readonly of: 'members' | 'names' | 'words';
  /** A name that is not among the options may be given. */
  readonly open: boolean;
  /** Names that may not be given, however they are typed. */
  readonly without: readonly string[];
  /** May be left without an answer. */
  readonly optional: boolean;
  /** Of `number`: the most that the file takes. */
  readonly most: number;
  /** By what its words are found; absent: its key. */
  readonly word?: string;
  /** What it is of, where that is not what its round is about. */
  readonly about?: string;
  /** What the file takes. */
  readonly form?: Form;
}

/** One of a list of words of ours. */
export function words(key: string, options: readonly string[]): Prompt {
  const its = { kind: 'pick', of: 'words', open: false, without: [], optional: false } as const;
  return { ...its, key, options, most: 0 };
}

export function text(key: string): Prompt {
  return { ...words(key, []), kind: 'text' };
}

/** A whole number from 1. */
export function number(key: string, most = 1_000_000): Prompt {
  return { ...words(key, []), kind: 'number', most };
}

export function severalOf(key: string, options: readonly string[]): Prompt {
  return { ...words(key, options), kind: 'several', of: 'names', optional: true };
}
