import { expect, it } from 'vitest';
import { wordIn, wordsIn } from './word.ts';

it('hears a word that was said alone, and nothing of what was said beside it', () => {
  expect(['Next.', ' right', 'WRONG', 'again'].map((its) => wordIn(its, 'en'))).toEqual([
    'next',
    'right',
    'wrong',
    'again',
  ]);
  expect(['Siguiente', '¡Bien!', 'mal', 'otra vez'].map((its) => wordIn(its, 'es'))).toEqual([
    'next',
    'right',
    'wrong',
    'again',
  ]);
  for (const its of [
    'right it turns neither way',
    'next to the drum',
    'not right',
    'siguiente',
    '',
  ]) {
    expect(wordIn(its, 'en')).toBeUndefined();
  }
  expect(wordIn('next', 'es')).toBeUndefined();
});

it('tells only words that it hears', () => {
  for (const language of ['en', 'es'] as const) {
    for (const word of wordsIn(language)) expect(wordIn(word, language)).toBeDefined();
  }
});
