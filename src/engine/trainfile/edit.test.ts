import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Edited, put, remove, type Value } from '../yaml/index.ts';
import { readTrain, rename, type Renaming } from './index.ts';

const FILE = `# A file that a person has laid out.
holdturn: 1
input:   turbine shaft   # from the converter
output: front.carrier

sets:
  # the one in front
  front: { sun: 30, ring: 66 }   # plain
  "odd":
    wheels: {fixed: 100, idler: 20,  # a comment inside
             high: 101}
    carried: [idler]
    meshes: [[fixed, idler], [idler, high]]

joined:
  drum: [front.sun, odd.high]

devices:
  low brake: { brake: drum }     # grips the drum
  'high clutch': { clutch: [turbine shaft, drum] }

ranges:
  D: { "1": [low brake, high clutch], "2": ['high clutch'] }
  N:
# The end.
`;

/** The lines that an edit took away and put in, as a person would see them. */
function change(before: string, edited: Edited): string[] {
  if ('refused' in edited) return [`refused: ${edited.refused}`];
  const [old, now] = [before.split('\n'), edited.text.split('\n')];
  let head = 0;
  while (head < old.length && head < now.length && old[head] === now[head]) head++;
  let tail = 0;
  while (tail < Math.min(old.length, now.length) - head && old.at(-1 - tail) === now.at(-1 - tail))
    tail++;
  return [
    ...old.slice(head, old.length - tail).map((line) => `- ${line}`),
    ...now.slice(head, now.length - tail).map((line) => `+ ${line}`),
  ];
}

const map = (entries: Record<string, Value>): Value => new Map(Object.entries(entries));

describe('putting a value', () => {
  it.each<[string, string[], Value, string[]]>([
    [
      'in place of a word',
      ['input'],
      'crank',
      [
        '- input:   turbine shaft   # from the converter',
        '+ input:   crank   # from the converter',
      ],
    ],
    [
      'in a flow section',
      ['sets', 'front', 'sun'],
      31,
      ['-   front: { sun: 30, ring: 66 }   # plain', '+   front: { sun: 31, ring: 66 }   # plain'],
    ],
    [
      'at the end of a flow section',
      ['sets', 'front', 'planets'],
      3,
      [
        '-   front: { sun: 30, ring: 66 }   # plain',
        '+   front: { sun: 30, ring: 66, planets: 3 }   # plain',
      ],
    ],
    [
      'beside a comment',
      ['sets', 'odd', 'wheels', 'low'],
      99,
      ['-              high: 101}', '+              high: 101, low: 99}'],
    ],
    [
      'at the end of a section of lines',
      ['sets', 'rear'],
      map({ sun: 30, ring: 66 }),
      ['+   rear: { sun: 30, ring: 66 }'],
    ],
    [
      'after a comment on the line',
      ['devices', 'band: 2'],
      map({ band: 'drum' }),
      ['+   "band: 2": { band: drum }'],
    ],
    ['in an empty section', ['ranges', 'N', 'N'], [], ['+     N: []']],
    [
      'in an item of a list',
      ['joined', 'drum', '1'],
      'odd.low',
      ['-   drum: [front.sun, odd.high]', '+   drum: [front.sun, odd.low]'],
    ],
    [
      'in a section that is not there',
      ['gear pairs', 'final drive'],
      map({ driver: ['drum', 17] }),
      ['+ ', '+ gear pairs:', '+   final drive: { driver: [drum, 17] }'],
    ],
    ['where lines of a person stand', ['devices'], map({}), ['refused: laid out by hand']],
    ['below a word', ['input', 'x'], 1, ['refused: no such place']],
  ])('%s', (_, path, value, lines) => {
    expect(change(FILE, put(FILE, path, value))).toEqual(lines);
  });

  it.each([
    [
      'an empty section',
      'a: 1\ndevices:   # none yet\nb: 2\n',
      'a: 1\ndevices:   # none yet\n  c: { brake: x }\nb: 2\n',
    ],
    ['no section and no last line end', 'a: 1', 'a: 1\n\ndevices:\n  c: { brake: x }'],
    [
      'lines that end as on another system',
      'devices:\r\n  a: 1\r\n# end\r\n',
      'devices:\r\n  a: 1\r\n  c: { brake: x }\r\n# end\r\n',
    ],
    ['JSON', '{"devices": {"a": 1}}', '{"devices": {"a": 1, "c": { "brake": "x" }}}'],
    ['JSON without the section', '{"a": 1}\n', '{"a": 1, "devices": { "c": { "brake": "x" } }}\n'],
    ['an empty flow section', 'devices: {}\n', 'devices: { c: { brake: x } }\n'],
    [
      'a text of several lines above',
      'about: |\n  Two\n  lines.\ndevices:\n  a: |\n    x\n\nb: 1\n',
      'about: |\n  Two\n  lines.\ndevices:\n  a: |\n    x\n  c: { brake: x }\n\nb: 1\n',
    ],
  ])('in %s', (_, text, wanted) => {
    expect(put(text, ['devices', 'c'], map({ brake: 'x' }))).toEqual({ text: wanted });
  });

  it('fills in what is empty', () => {
    expect(put('input:\noutput: b\n', ['input'], 'a')).toEqual({ text: 'input: a\noutput: b\n' });
    expect(put('input:   # which?\n', ['input'], 'a')).toEqual({ text: 'input: a   # which?\n' });
    expect(put('{ a: , b: 1 }', ['a'], 'x')).toEqual({ text: '{ a: "x" , b: 1 }' });
    expect(put('about: |\n  Two\n  lines.\nb: 1\n', ['about'], 'One.')).toEqual({
      text: 'about: One.\nb: 1\n',
    });
  });

  it('needs a text that can be read', () => {
    expect(put('a: [', ['a'], 1)).toEqual({ refused: 'unreadable' });
    expect(remove('a: 1\na: 2\n', ['a'])).toEqual({ refused: 'unreadable' });
  });
});

describe('removing', () => {
  it.each<[string, string[], string[]]>([
    ['a line', ['devices', 'low brake'], ['-   low brake: { brake: drum }     # grips the drum']],
    ['the only line', ['joined', 'drum'], ['-   drum: [front.sun, odd.high]']],
    [
      'lines',
      ['sets', 'odd', 'wheels'],
      ['-     wheels: {fixed: 100, idler: 20,  # a comment inside', '-              high: 101}'],
    ],
    [
      'the first of a flow section',
      ['sets', 'front', 'sun'],
      ['-   front: { sun: 30, ring: 66 }   # plain', '+   front: { ring: 66 }   # plain'],
    ],
    [
      'the last of a flow section',
      ['sets', 'front', 'ring'],
      ['-   front: { sun: 30, ring: 66 }   # plain', '+   front: { sun: 30 }   # plain'],
    ],
    [
      'what follows a comment',
      ['sets', 'odd', 'wheels', 'high'],
      [
        '-     wheels: {fixed: 100, idler: 20,  # a comment inside',
        '-              high: 101}',
        '+     wheels: {fixed: 100, idler: 20  # a comment inside',
        '+              }',
      ],
    ],
    [
      'the only item of a list',
      ['sets', 'odd', 'carried', '0'],
      ['-     carried: [idler]', '+     carried: []'],
    ],
    ['nothing', ['sets', 'middle'], ['refused: no such place']],
  ])('%s', (_, path, lines) => {
    expect(change(FILE, remove(FILE, path))).toEqual(lines);
  });
});

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

  it.each(texts)('%s: a device put in and taken out leaves every byte', (_, text) => {
    const there = put(text, ['devices', 'Zaunkönig'], map({ brake: 'case' }));
    expect('text' in there && remove(there.text, ['devices', 'Zaunkönig'])).toEqual({ text });
  });
});
