import { describe, expect, it } from 'vitest';
import { voiceOf } from '../narrative/index.ts';
import { fraction } from '../../engine/linear/index.ts';
import { width, wrap } from './lines.ts';
import { type Page, PLAIN } from './page.ts';
import { table } from './table.ts';

const page = (columns: number): Page => ({ voice: voiceOf('en'), columns, ink: PLAIN });

describe('a table', () => {
  it('stands fractions, decimals and signs under one another', () => {
    const rows = [
      ['a', fraction(27, 11)],
      ['b', fraction(-121, 135)],
      ['c', fraction(3)],
      ['d', 'free'],
    ];
    expect(table(['member', 'speed'], rows, page(80))).toEqual([
      'member  speed',
      'a          27/11 =  2.455',
      'b       −121/135 = −0.896',
      'c                   3',
      'd       free',
    ]);
  });

  it('counts two columns for a wide character and one for an accented', () => {
    const rows = [
      ['离合器', 'x'],
      ['é', 'y'],
    ];
    expect(table(['member', 'kind'], rows, page(80))).toEqual([
      'member  kind',
      '离合器  x',
      'é       y',
    ]);
  });

  it('wraps names where they do not fit, and cuts nothing', () => {
    const rows = [['intermediate sprag of the rear planetary set', fraction(1, 3)]];
    expect(table(['device', 'slip'], rows, page(40))).toEqual([
      'device                       slip',
      'intermediate sprag of the    1/3 = 0.333',
      ' rear planetary set',
    ]);
  });

  it('has its head alone where there are no rows', () => {
    expect(table(['device', 'slip'], [], page(80))).toEqual(['device  slip']);
  });

  it('shows what would move the cursor', () => {
    expect(table(['device'], [['a\u001B[2Jb']], page(80))[1]).toBe('a\uFFFD[2Jb');
  });
});

describe('wrapping', () => {
  it('keeps a text that fits', () => {
    expect(wrap('one two', 7)).toEqual(['one two']);
  });

  it('breaks between words, with a hanging indent', () => {
    expect(wrap('one two three', 9, '  ')).toEqual(['one two', '  three']);
  });

  it('never parts a fraction from its decimal', () => {
    expect(wrap('the ratio is 27/11 = 2.455', 20)).toEqual(['the ratio is', '27/11 = 2.455']);
  });

  it('breaks a word only where it must, and marks that', () => {
    expect(wrap('abcdefghij', 6)).toEqual(['abcde…', 'fghij']);
    expect(wrap('离合器离合器', 7)).toEqual(['离合器…', '离合器']);
  });

  it('loses nothing at any width', () => {
    const text = 'The sun shell 离合器 pushes é front.carrier anticlockwise: 16/11 = 1.455 times';
    for (let columns = 16; columns < 90; columns++) {
      const lines = wrap(text, columns, '  ');
      expect(Math.max(...lines.map((line) => width(line)))).toBeLessThanOrEqual(columns);
      expect(lines.map((line) => line.trim()).join(' ')).toBe(text);
    }
  });
});
