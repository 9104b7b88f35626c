import { signal } from '@preact/signals';
import type { Train } from '../../engine/train/index.ts';
import { type Language, type Voice, voiceOf } from '../../telling/narrative/index.ts';

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

/** The train whose things are spoken of, if there is one. */
export const spokenOf = signal<Train | undefined>(undefined);

/** In whose words the reader is told of the train. A view that asks follows both. */
export function voiceNow(): Voice {
  return voiceOf(language.value, spokenOf.value);
}
