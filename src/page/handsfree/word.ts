import type { Language } from '../../telling/narrative/index.ts';

/** What may be said instead of pressed. There is no word for a stop. */
export type Word = 'next' | 'right' | 'wrong' | 'again';

/**
 * The word that somebody said, if that was all they said: what is said beside it, to somebody
 * else or by the page itself, is no answer.
 */
export function wordIn(heard: string, language: Language): Word | undefined {
  const said = heard
    .toLowerCase()
    .replaceAll(/[^\p{L}\s]/gu, '')
    .trim();
  return SAID[language].find(([, words]) => words.includes(said))?.[0];
}

/** The words as they are told to somebody who may say them. */
export function wordsIn(language: Language): readonly string[] {
  return SAID[language].flatMap(([, [first]]) => (first === undefined ? [] : [first]));
}

const SAID: Readonly<Record<Language, readonly (readonly [Word, readonly string[]])[]>> = {
  en: [
    ['next', ['next', 'done']],
    ['right', ['right']],
    ['wrong', ['wrong']],
    ['again', ['again', 'repeat']],
  ],
  es: [
    ['next', ['siguiente', 'hecho']],
    ['right', ['bien']],
    ['wrong', ['mal']],
    ['again', ['otra vez', 'repite']],
  ],
};
