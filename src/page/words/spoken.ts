import { signal } from '@preact/signals';
import type { Language } from '../../telling/narrative/index.ts';

/** The language of the screen. */
export const language = signal<Language>('en');

/**
 * A view's own words in every language; each view keeps its table beside it. Reading the words
 * makes the view follow the language: `const say = words()`, then `say.turns`.
 */
export function spoken<Words extends object>(
  table: Readonly<Record<Language, Words>>,
): () => Words {
  return () => table[language.value];
}
