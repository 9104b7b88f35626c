import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { change, LAID_OUT as FILE } from '../../../test/laidout.ts';
import { put, remove, type Value } from './index.ts';

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

describe('an edit of a train of ours', () => {
  const folder = new URL('../../../trains/', import.meta.url);
  const texts = readdirSync(folder)
    .filter((name) => name.endsWith('.train.yaml'))
    .map((name) => [name, readFileSync(new URL(name, folder), 'utf8')] as const);

  it.each(texts)('%s: a device put in and taken out leaves every byte', (_, text) => {
    const there = put(text, ['devices', 'Zaunkönig'], map({ brake: 'case' }));
    expect('text' in there && remove(there.text, ['devices', 'Zaunkönig'])).toEqual({ text });
  });
});
