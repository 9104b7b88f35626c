import { describe, expect, it } from 'vitest';
import { inTurn, mend, put } from './index.ts';

const set = (entries: Record<string, number | number[]>) => new Map(Object.entries(entries));

describe('a file that says nothing yet', () => {
  it.each([
    ['', 'input: crank\n'],
    ['# mine', '# mine\ninput: crank\n'],
    ['# mine\r\n', '# mine\r\ninput: crank\r\n'],
  ])('%j takes its first entry', (text, wanted) => {
    expect(put(text, ['input'], 'crank')).toEqual({ text: wanted });
  });

  it('takes its first section', () => {
    expect(put('', ['sets', 'a'], set({ sun: 30 }))).toEqual({ text: 'sets:\n  a: { sun: 30 }\n' });
  });
});

describe('mending an entry', () => {
  const LINES = `sets:
  front:   # by hand
    sun: 30   # counted twice
    ring: 66
    planets: 3
joined:
  shell: [a,   # the drum
          b]
`;

  it('changes what differs and leaves the layout', () => {
    expect(mend(LINES, ['sets', 'front'], set({ sun: 30, ring: 70, planet: 20 }))).toEqual({
      text: LINES.replace('ring: 66\n    planets: 3', 'ring: 70\n    planet: 20'),
    });
  });

  it('changes nothing where all is said already', () => {
    expect(mend(LINES, ['sets', 'front'], set({ planets: 3, ring: 66, sun: 30 }))).toEqual({
      text: LINES,
    });
  });

  it('is refused where a comment would be lost', () => {
    expect(mend(LINES, ['joined', 'shell'], ['a', 'b', 'c'])).toEqual({
      refused: 'laid out by hand',
    });
  });

  it('puts what is not there', () => {
    expect(mend('a: 1\n', ['sets', 'b'], set({ sun: 3 }))).toEqual({
      text: 'a: 1\n\nsets:\n  b: { sun: 3 }\n',
    });
  });
});

describe('edits in turn', () => {
  it('are one, and refused as one', () => {
    const good = (text: string) => put(text, ['a'], 2);
    const bad = (text: string) => put(text, ['a', 'b'], 2);
    expect(inTurn('a: 1\n', [good, good])).toEqual({ text: 'a: 2\n' });
    expect(inTurn('a: 1\n', [good, bad])).toEqual({ refused: 'no such place' });
  });
});
