import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { offersAt, readTrain } from './index.ts';

const KESTREL = readFileSync(
  new URL('../../../trains/kestrel-three-speed.train.yaml', import.meta.url),
  'utf8',
);
const known = readTrain(KESTREL).train;
if (!known) throw new Error('the Kestrel is a train');

/** What is offered where `|` stands, each as it would be put, `^` where one types on. */
function offered(marked: string): string[] {
  const offset = marked.indexOf('|');
  const { offers } = offersAt(marked.replace('|', ''), offset, known as never) ?? { offers: [] };
  return offers.map(({ put }) => put.replaceAll('\u0000', '^'));
}

const WHERE: [marked: string, some: string[], none: string[]][] = [
  ['|', ['holdturn: ^', 'input: ^', 'sets:\n  ^', 'gear pairs:\n  ^'], ['sun: ^']],
  ['holdturn: 1\nna|', ['name: ^'], ['holdturn: ^']],
  ['holdturn: |', ['1'], []],
  ['input: tur|', ['turbine shaft', 'front.sun', 'case'], ['forward clutch']],
  ['sets:\n  front: |', ['{ sun: ^, ring: ^ }', '{ sides: [^, ^] }'], []],
  ['sets:\n  front: { |', ['sun: ^', 'ring: ^', 'shares: ^'], ['brake: ^']],
  ['sets:\n  front: { sun: 30, |', ['ring: ^', 'planets: ^'], ['sun: ^', 'pairs: ^']],
  ['sets:\n  front: { pairs: 3, |', ['sun: ^', 'inner: ^'], ['steps: ^']],
  ['sets:\n  front:\n    |', ['sun: ^', 'wheels: ^'], ['input: ^']],
  ['sets:\n  back: { shares: fr|', ['front', 'rear'], ['case']],
  ['joined:\n  shell: [front.sun, |', ['rear.sun', 'case'], ['front.sun']],
  ['devices:\n  a: |', ['{ brake: ^ }', '{ clutch: [^, ^] }', '{ one-way: [^, ^], lets: ^ }'], []],
  ['devices:\n  a: { clutch: [turbine shaft, |', ['sun shell', 'case'], ['turbine shaft']],
  ['devices:\n  a: { one-way: [a, b], lets: |', ['clockwise', 'anticlockwise'], ['a']],
  ['ranges:\n  D: { "1": [forward clutch, lo|', ['low brake'], ['forward clutch', 'low sprag']],
  ['ranges:\n  D:\n    "1": [|', ['forward clutch'], ['case']],
  ['gear pairs:\n  a: { driver: [|', ['counter gear'], []],
  ['packs:\n  |', ['forward clutch: ^', 'low brake: ^'], ['low sprag: ^', 'intermediate band: ^']],
  ['teardown:\n  a: { carries: [|', ['low sprag', 'sun shell'], []],
  ['about: >-\n  in|', [], ['input: ^']],
  ['# in|', [], ['input: ^']],
  ['sets:\n  |', [], ['front: ^', 'sets:\n  ^']],
];

describe('what is offered', () => {
  it.each(WHERE)('at %j', (marked, some, none) => {
    const all = offered(marked);
    if (some.length === 0) expect(all).toEqual([]);
    expect(all).toEqual(expect.arrayContaining(some));
    for (const one of none) expect(all).not.toContain(one);
  });

  it('takes the place of the word that is being typed', () => {
    const text = 'joined:\n  shell: [front.sun,  rear.s';
    expect(offersAt(text, text.length, known)?.from).toBe(text.indexOf('rear.s'));
  });

  it('never throws, wherever one types in a train of ours', () => {
    for (let offset = 0; offset <= 4000; offset += 7) offersAt(KESTREL, offset, known);
    expect(offersAt('{"sets": {"a": {', 16, known)?.offers.length).toBeGreaterThan(0);
  });
});
