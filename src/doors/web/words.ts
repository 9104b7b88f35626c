import { computed, signal } from '@preact/signals';
import { AT_THE_INPUT, type Stand } from '../../asking/request/index.ts';
import type { Language } from '../../telling/narrative/index.ts';

/** The language of the screen. */
export const language = signal<Language>('en');

/** The end from which the reader looks. */
export const seenFrom = signal<Stand['seenFrom']>('input');

/** What the train's file calls the ends of the unit, if it does. */
export const ends = signal<Stand['ends'] | undefined>(undefined);

/** Where the reader of a sentence stands. */
export const stand = computed<Stand>(() => ({
  ...AT_THE_INPUT,
  seenFrom: seenFrom.value,
  ...(ends.value && { ends: ends.value }),
}));

/**
 * A view's own words in every language; each view keeps its table beside it. Reading the words
 * makes the view follow the language: `const say = words()`, then `say.turns`.
 */
export function spoken<Words extends object>(
  table: Readonly<Record<Language, Words>>,
): () => Words {
  return () => table[language.value];
}
