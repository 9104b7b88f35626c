import { parse } from '@formatjs/icu-messageformat-parser';
import { en } from './en.ts';
import { es } from './es.ts';
import type { Language } from '../../engine/words/index.ts';
import type { MessageId, Messages } from './messages.ts';

/** A new language is one file with every id of `en`, its name in `LANGUAGES`, and its place here. */
const TEXTS: Readonly<Record<Language, Messages>> = { en, es };

/** What is filled in and joined up. */
export type Message = ReturnType<typeof parse>;

/**
 * Resolves when a language can be spoken: at once, where all of them are at hand. The page carries
 * English and fetches another (its build puts that in this file's place); rejects where it cannot.
 */
export async function learn(language: Language): Promise<void> {
  await Promise.resolve(TEXTS[language]);
}

/**
 * A message of a language: most labels are plain words, and stay a text; of the others the parts.
 * Throws where the language has no such message.
 */
export function messageOf(language: Language, id: MessageId): string | Message {
  const text: string | undefined = TEXTS[language][id];
  if (text === undefined) throw new Error(`no message ${id} in ${language}.ts`);
  return /[{']/.test(text) ? parse(text, { ignoreTag: true }) : text;
}
