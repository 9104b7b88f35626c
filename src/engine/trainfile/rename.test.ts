import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { change, LAID_OUT as FILE } from '../../../test/laidout.ts';
import { readTrain, rename, type Renaming } from './index.ts';

describe('renaming', () => {
  it.each<[Renaming, string[]]>([
    [
      { what: 'device', from: 'high clutch', to: 'top clutch' },
      [
        "-   'high clutch': { clutch: [turbine shaft, drum] }",
        '- ',
        '- ranges:',
        `-   D: { "1": [low brake, high clutch], "2": ['high clutch'] }`,
        '+   "top clutch": { clutch: [turbine shaft, drum] }',
        '+ ',
        '+ ranges:',
        '+   D: { "1": [low brake, top clutch], "2": ["top clutch"] }',
      ],
    ],
    [
      { what: 'gear', within: 'D', from: '1', to: 'low' },
      [
        `-   D: { "1": [low brake, high clutch], "2": ['high clutch'] }`,
        `+   D: { "low": [low brake, high clutch], "2": ['high clutch'] }`,
      ],
    ],
    [{ what: 'device', from: 'low brake', to: 'drum' }, ['refused: name taken']],
    [{ what: 'set', from: 'front', to: 'case' }, ['refused: name taken']],
    [{ what: 'set', from: 'front', to: 'a.b' }, ['refused: not a name']],
    [{ what: 'set', from: 'middle', to: 'rear' }, ['refused: no such place']],
  ])('%j', (renaming, lines) => {
    expect(change(FILE, rename(FILE, renaming))).toEqual(lines);
  });

  it.each<[Renaming, RegExp, string]>([
    [{ what: 'set', from: 'front', to: 'rear' }, /\bfront(?=[.:])/g, 'rear'],
    [{ what: 'member', from: 'drum', to: 'sun shell' }, /(?<!the )\bdrum\b/g, 'sun shell'],
    [{ what: 'member', from: 'turbine shaft', to: 'crank' }, /turbine shaft/g, 'crank'],
    [{ what: 'wheel', within: 'odd', from: 'high', to: 'tall' }, /\bhigh\b(?! clutch)/g, 'tall'],
    [{ what: 'set', from: 'odd', to: 'even' }, /\bodd\b/g, 'even'],
  ])('%j changes just these words', (renaming, words, to) => {
    expect(rename(FILE, renaming)).toEqual({ text: FILE.replace(words, to) });
  });
});

describe('renaming a gear pair', () => {
  it.each(['final drive: last', 'final drive: [last]'])('changes %j too', (drive) => {
    const text = `${drive}\ngear pairs:\n  last: { driver: [a, 17], driven: [b, 62] }\n`;
    const edited = rename(text, { what: 'gear pair', from: 'last', to: 'axle' });
    expect(edited).toEqual({ text: text.replaceAll('last', 'axle') });
  });
});

describe('renaming what parts feed, close and set', () => {
  const text = `holdturn: 1
input: crank
output: set.carrier
sets: { set: { sun: 30, ring: 66 } }
devices:
  low band: { band: set.ring }
teardown:
  lid: { feeds: [low band], closes: [low band] }
  pin: { sets: low band, carries: [low band] }
bands:
  low band: { pitch: 1.5 mm }
`;

  it('changes each of them', () => {
    const renaming = { what: 'device', from: 'low band', to: 'ring band' } as const;
    expect(rename(text, renaming)).toEqual({ text: text.replaceAll('low band', 'ring band') });
  });
});

describe('renaming what parts carry', () => {
  const text = `holdturn: 1
input: crank
output: set.carrier
sets: { set: { sun: 30, ring: 66 } }
devices:
  sprag: { one-way: [set.ring, race], lets: clockwise }
teardown:
  shaft: { carries: [crank, set.sun], covers: [cage] }
  cage: { carries: [sprag, sprag.outer, race] }   # the rollers
  rest: { carries: [set.ring, set.carrier, sprag.inner], under: [cage] }
`;

  it.each<[Renaming, string[]]>([
    [
      { what: 'device', from: 'sprag', to: 'low sprag' },
      [
        '-   sprag: { one-way: [set.ring, race], lets: clockwise }',
        '- teardown:',
        '-   shaft: { carries: [crank, set.sun], covers: [cage] }',
        '-   cage: { carries: [sprag, sprag.outer, race] }   # the rollers',
        '-   rest: { carries: [set.ring, set.carrier, sprag.inner], under: [cage] }',
        '+   low sprag: { one-way: [set.ring, race], lets: clockwise }',
        '+ teardown:',
        '+   shaft: { carries: [crank, set.sun], covers: [cage] }',
        '+   cage: { carries: [low sprag, low sprag.outer, race] }   # the rollers',
        '+   rest: { carries: [set.ring, set.carrier, low sprag.inner], under: [cage] }',
      ],
    ],
    [
      { what: 'part', from: 'cage', to: 'rollers' },
      [
        '-   shaft: { carries: [crank, set.sun], covers: [cage] }',
        '-   cage: { carries: [sprag, sprag.outer, race] }   # the rollers',
        '-   rest: { carries: [set.ring, set.carrier, sprag.inner], under: [cage] }',
        '+   shaft: { carries: [crank, set.sun], covers: [rollers] }',
        '+   rollers: { carries: [sprag, sprag.outer, race] }   # the rollers',
        '+   rest: { carries: [set.ring, set.carrier, sprag.inner], under: [rollers] }',
      ],
    ],
    [{ what: 'device', from: 'sprag', to: 'cage' }, ['refused: name taken']],
    [{ what: 'part', from: 'cage', to: 'sprag' }, ['refused: name taken']],
    [
      { what: 'part', from: 'cage', to: 'race' },
      [
        '-   shaft: { carries: [crank, set.sun], covers: [cage] }',
        '-   cage: { carries: [sprag, sprag.outer, race] }   # the rollers',
        '-   rest: { carries: [set.ring, set.carrier, sprag.inner], under: [cage] }',
        '+   shaft: { carries: [crank, set.sun], covers: [race] }',
        '+   race: { carries: [sprag, sprag.outer, race] }   # the rollers',
        '+   rest: { carries: [set.ring, set.carrier, sprag.inner], under: [race] }',
      ],
    ],
  ])('%j', (renaming, lines) => {
    const edited = rename(text, renaming);
    expect(change(text, edited)).toEqual(lines);
    if ('text' in edited) expect(readTrain(edited.text).problems).toEqual([]);
  });
});

describe('an edit of a train of ours', () => {
  const folder = new URL('../../../trains/', import.meta.url);
  const texts = readdirSync(folder)
    .filter((name) => name.endsWith('.train.yaml'))
    .map((name) => [name, readFileSync(new URL(name, folder), 'utf8')] as const);

  it.each(texts)('%s: a name there and back leaves every byte', (_, text) => {
    const { train } = readTrain(text);
    expect(train).toBeDefined();
    const names: Renaming[] = [
      ...(train?.sets ?? []).map(
        ({ name }) => ({ what: 'set', from: name, to: 'Zaunkönig' }) as const,
      ),
      ...(train?.devices ?? []).map(
        ({ name }) => ({ what: 'device', from: name, to: 'Zaunkönig' }) as const,
      ),
    ];
    for (const renaming of names) {
      const there = rename(text, renaming);
      expect('text' in there && there.text).toContain('Zaunkönig');
      const back = { what: renaming.what, from: renaming.to, to: renaming.from } as Renaming;
      expect('text' in there && rename(there.text, back)).toEqual({ text });
    }
  });
});
