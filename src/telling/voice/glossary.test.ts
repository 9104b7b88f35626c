import { expect, it } from 'vitest';
import { against, plainText, type Said } from '../../../test/glossary.ts';
import { fraction, fromText } from '../../engine/linear/index.ts';
import { GLOSSARY } from '../../engine/words/index.ts';
import { en } from './en.ts';
import { es } from './es.ts';
import { voiceOf } from './voice.ts';

// What the command, its help, the answers and the sheets say. The page's words, the README and
// the trains are read in test/.
const messages = Object.keys(en).map((id): Said => {
  const key = id as keyof typeof en;
  return { where: id, en: plainText(en[key]), es: plainText(es[key]) };
});

it('every message says one word for one thing, in both languages', () => {
  expect(messages.flatMap((its) => against(GLOSSARY, its))).toEqual([]);
});

it('a minus is a minus in every sentence, and a hyphen in what is typed', () => {
  const said = messages.flatMap(({ where, en: english = '', es: spanish = '' }) =>
    [english, spanish].flatMap((text) => {
      const typed = text.replaceAll(/\b(?:or|o) - (?:for|para)\b|--?[a-z][\w-]*/g, ' ');
      return (/(?:^|[\s(=])-\s?[\d\p{L}]/u.exec(typed) ?? []).map((found) => `${where}: ${found}`);
    }),
  );
  expect(said).toEqual([]);
  expect(voiceOf('en').number(fraction(-7, 3))).toBe('\u22127/3 = \u22122.333');
  expect(voiceOf('es').decimal(fraction(-7, 3))).toBe('\u22122,333');
  expect(fromText('\u22127/3')).toEqual(fraction(-7, 3));
});
