import { describe, expect, it } from 'vitest';
import { LANGUAGES, voiceOf } from '../narrative/index.ts';
import { LOOKS } from './index.ts';

// What a broken line may mean, by what its rule is about, and what its first stroke must be.
const MEANINGS: readonly (readonly [RegExp, (first: number, pattern: string) => boolean])[] = [
  [/still|held/u, (first) => first >= 10],
  [/free/u, (first) => first <= 2],
  [/axis/u, (_, pattern) => pattern === '18 5 3 5'],
  [/teeth/u, (first) => first < 1],
];

describe('a broken line', () => {
  it('means one thing in every drawing: dashes stand still, dots are free', () => {
    const rules = [...LOOKS.matchAll(/([^{}]+)\{[^}]*stroke-dasharray: ([\d. ]+);/gu)];
    expect(rules.length).toBeGreaterThan(5);
    for (const [, about = '', pattern = ''] of rules) {
      const meaning = MEANINGS.filter(([word]) => word.test(about));
      expect(meaning.length, about).toBe(1);
      expect(meaning[0]?.[1](parseFloat(pattern), pattern), `${about}: ${pattern}`).toBe(true);
    }
  });

  it.each(LANGUAGES)('is told in the same words by every legend in %s', (language) => {
    const voice = voiceOf(language);
    const told = {
      en: 'Dashes stand still; dots are free.',
      es: 'A trazos: quieto; a puntos: libre.',
    };
    for (const legend of ['marks.picture', 'drawn.circles'] as const)
      expect(voice.say(legend)).toContain(told[language as 'en']);
  });
});
