import { expect, it } from 'vitest';
import { COLOURS } from './ink.ts';

// ECMA-48, fifth edition (1991), 8.3.117, select graphic rendition: printed there.
it('dresses words as a terminal reads it, and takes the outer dress up again', () => {
  const { strong, faint, bad, odd } = COLOURS;
  expect(bad('tied up')).toBe('\u001b[31mtied up\u001b[39m');
  expect(odd('free')).toBe('\u001b[33mfree\u001b[39m');
  expect(strong(`a${faint('b')}c`)).toBe('\u001b[1ma\u001b[2mb\u001b[22m\u001b[1mc\u001b[22m');
});
