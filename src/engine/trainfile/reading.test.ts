import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Dice, seedOfRun, tries } from '../../../test/dice.ts';
import { randomTrain } from '../../../test/random-train.ts';
import { type GearSet, partsOf, setGearing } from '../train/index.ts';
import { readTrain, trainText } from './index.ts';
import { Tally } from '../../../test/tally.ts';

const TRAINS = new URL('../../../trains/', import.meta.url);
const trains = readdirSync(TRAINS)
  .filter((name) => name.endsWith('.train.yaml'))
  .map((name) => [name, readFileSync(new URL(name, TRAINS), 'utf8')] as const);

/** A train with a line of each kind in it. */
const EVERYTHING = `holdturn: 1
name: Everything
about: |
  One of each.

  In two paragraphs.
input: turbine shaft
output: counter gear
sets:
  front: { sun: 30, ring: 66, planets: 3, planet: 18 }
  dual: { sun: 30, ring: 70, pairs: 3, inner: 14, outer: 12 }
  tall: { sun: 20, ring: 88, planets: 3, steps: [24, 44] }
  back: { shares: dual, sun: 36 }
  beside: { shares: front, sun: 24, pairs: 3, inner: 12 }
  odd:
    wheels: { fixed: 100, idler: 20, annulus: 140, __proto__: 99 }
    carried: [idler]
    meshes: [[fixed, idler], [annulus, idler, internal], [idler, __proto__]]
  axle: { sides: [16, 16], pinions: 2, pinion: 10 }
gear pairs:
  transfer: { driver: [counter gear, 41], driven: [layshaft, 43] }
  chain: { driver: [layshaft, 17], driven: [axle.carrier, 62], kind: chain }
joined:
  sun shell: [front.sun, tall.sun, dual.sun]
  case: [tall.ring, odd.annulus]
devices:
  forward clutch: { clutch: [turbine shaft, front.ring] }
  band: { band: sun shell }
  brake: { brake: front.carrier }
  sprag: { one-way: [front.carrier, case], lets: anticlockwise }
ranges:
  D: { "1": [forward clutch], 2: [forward clutch, band] }
  N:
  P: { P: [] }
`;

describe('a train file', () => {
  it('may hold one of everything', () => {
    const { train, problems } = readTrain(EVERYTHING);
    expect(problems).toEqual([]);
    expect(train).toMatchSnapshot();
  });

  it('may be JSON', () => {
    const json =
      '{"holdturn":1,"input":"a.sun","output":"a.carrier","sets":{"a":{"sun":30,"ring":66}}}';
    expect(readTrain(json).train?.sets).toEqual([{ kind: 'plain', name: 'a', sun: 30, ring: 66 }]);
    expect(readTrain(`\ufeff${json.replaceAll(',', ',\r\n')}`).problems).toEqual([]);
  });

  it.each([
    ['a.sun', ['3:1 end taken']],
    ['b.sun', ['3:1 end taken']],
    ['[a.carrier, b.sun]', ['3:21 end taken']],
    ['[a.carrier, b.ring]', ['3:21 end taken']],
    ['a.planet', ['3:1 planet as an end']],
    ['[a.carrier, a.planet]', ['3:21 planet as an end']],
    ['[a.carrier, b.carrier]', []],
  ])('knows whether the output %s is one', (output, told) => {
    const text = `holdturn: 1
input: shaft
output: ${output}
sets: { a: { sun: 30, ring: 66, planets: 3 }, b: { sun: 30, ring: 66, planets: 3 } }
joined: { shaft: [a.sun, b.sun], middle: [a.carrier, b.ring] }
`;
    const { problems } = readTrain(text);
    const shown = problems.map(({ place, problem }) => `${place.line}:${place.column} ${problem}`);
    expect(shown).toEqual(told);
  });

  it('takes the words of other shops', () => {
    const text = `holdturn: 1
input: a.annulus
output: a.arm
sets: { a: { sun gear: 30, annulus: 66, pinions: 3 }, axle: { sides: [16, 16], pinions: 2 } }
joined: { a.cage: [axle.pinion] }
devices: { w: { freewheel: [a.annulus, case], lets: clockwise } }
`;
    const { train, problems } = readTrain(text);
    expect(problems).toEqual([]);
    expect(train?.sets[0]).toEqual({ kind: 'plain', name: 'a', sun: 30, ring: 66, planets: 3 });
    expect([train?.input, train?.output]).toEqual(['a.ring', 'a.carrier']);
    expect(train?.joins).toEqual([{ name: 'a.carrier', members: ['axle.pinion'] }]);
    expect(train?.devices[0]).toMatchObject({ kind: 'one-way', first: 'a.ring' });
  });

  it('tells where everything stands', () => {
    const { place } = readTrain(EVERYTHING);
    const lines = EVERYTHING.split('\n');
    const at = (...path: string[]) => {
      const { line, column, length } = place(...path);
      return lines[line - 1]?.slice(column - 1, column - 1 + length);
    };
    expect(at('sets', 'front')).toBe('front');
    expect(at('sets', 'odd', 'wheels', '__proto__')).toBe('__proto__');
    expect(at('joined', 'sun shell', 'dual.sun')).toBe('dual.sun');
    expect(at('joined', 'sun shell', '0')).toBe('front.sun');
    expect(at('devices', 'sprag', 'lets')).toBe('lets');
    expect(at('ranges', 'D', '2', 'band')).toBe('band');
    expect(at('sets', 'front', 'no such key')).toBe('front');
    expect(place('nowhere')).toEqual({ line: 1, column: 1, length: 1 });
    expect(readTrain('').place('sets')).toEqual({ line: 1, column: 1, length: 1 });
  });
});

describe('a file that is not whole', () => {
  it('tells what could be read so far', () => {
    const { train, soFar } = readTrain('holdturn: 1\ninput: crank\nsets: { a: { sun: 30 } }\n');
    expect(train).toBeUndefined();
    expect(soFar).toMatchObject({ name: '', input: 'crank', output: '', sets: [] });
    expect(readTrain('a: [').soFar).toBeUndefined();
  });
});

describe('a thing that should have entries', () => {
  it.each([
    ['car: 5', ['tyre mm', 'final drive', 'source', 'by']],
    ['bands: { ring band: { limits: [1 mm] } }', ['clearance', 'travel']],
  ])('%j is told by its keys', (text, keys) => {
    expect(readTrain(text).problems).toContainEqual(
      expect.objectContaining({ problem: 'expected keys', keys }),
    );
  });

  it('is not, where it is the whole file', () => {
    expect(readTrain('a train').problems).toMatchObject([{ problem: 'expected', what: 'section' }]);
  });
});

describe('a train of ours', () => {
  it.each(trains)('%s is read, written and read alike', (_, text) => {
    const { train, problems } = readTrain(text);
    expect(problems).toEqual([]);
    expect(readTrain(train ? trainText(train) : '').train).toEqual(train);
  });
});

describe('a train by chance', () => {
  it('is read as it was written', () => {
    for (let seed = 1; seed <= 300; seed++) {
      const train = { ...randomTrain(seed), about: ABOUTS[seed % ABOUTS.length] ?? '' };
      const text = trainText(train);
      const errors = readTrain(text).problems.filter(({ severity }) => severity === 'error');
      expect(errors, text).toEqual([]);
      expect(readTrain(text).train, text).toEqual(train);
    }
  });
});

const ABOUTS = [
  '',
  'Plain.',
  'two\nlines\n',
  ' "quoted": #not a comment\t',
  'null',
  '1e3',
  '—\u2028\ufeff',
  "it's",
];

describe('the parts of a set', () => {
  it('are the members that its gearing has', () => {
    const train = readTrain(EVERYTHING).train;
    const kinds = new Set<GearSet['kind']>();
    for (const set of train?.sets ?? []) {
      const gearing = setGearing(train as NonNullable<typeof train>, set);
      const named = [...gearing.members, ...gearing.planets.map(({ member }) => member)];
      const own = named.filter((name) => name.startsWith(`${set.name}.`));
      expect(new Set(partsOf(set).map((part) => `${set.name}.${part}`))).toEqual(new Set(own));
      kinds.add(set.kind);
    }
    expect(kinds.size).toBe(6);
  });
});

function readOrShow(text: string, said: string) {
  try {
    return readTrain(text);
  } catch (thrown) {
    throw new Error(said, { cause: thrown });
  }
}

describe('hostile text', () => {
  const head = 'holdturn: 1\ninput: a\noutput: b\n';
  const many = (count: number, line: (i: number) => string) =>
    Array.from({ length: count }, (_, i) => line(i)).join('\n');
  it.each([
    ['a megabyte', 'a'.repeat(1_000_000), 'too large'],
    [
      'ten thousand members',
      `${head}joined:\n${many(10_000, (i) => `  j${i}: [m${i}]`)}`,
      'too large',
    ],
    [
      '121 members',
      `${head}joined: { x: [${many(118, (i) => `m${i},`).replaceAll('\n', ' ')}] }`,
      'too many',
    ],
    ['65 devices', `${head}devices:\n${many(65, (i) => `  d${i}: { brake: a }`)}`, 'too many'],
    ['nothing but brackets', '['.repeat(65_000), 'too deep'],
    ['deep nesting', `a: ${'{ a: '.repeat(500)}1${' }'.repeat(500)}`, 'too deep'],
    ['dashes', '- '.repeat(30_000), 'too deep'],
    ['a billion laughs', 'a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\n', 'refused'],
    ['NUL', 'holdturn: 1\0', 'bad character'],
    ['half a character', 'holdturn: 1 # \ud800', 'bad character'],
    ['a mark that turns letters round', 'holdturn: 1 # \u202e', 'bad character'],
    ['the same in an escape', 'holdturn: 1\nname: "a\\u202eb"', 'bad character'],
    ['one in a key', 'holdturn: 1\nsets: { "a\\u200fb": { sun: 30, ring: 66 } }', 'bad character'],
    ['a control character in an escape', 'holdturn: 1\nname: "a\\eb"', 'bad character'],
    [
      'a merge that stopped',
      '<<<<<<< ours\nname: a\n=======\nname: b\n>>>>>>> theirs\n',
      'merge mark',
    ],
    ['empty pairs', '[]'.repeat(30_000), 'syntax'],
    ['commas', `a: [${','.repeat(60_000)}]`, 'syntax'],
    ['closing brackets', ']'.repeat(65_000), 'syntax'],
    ['quotes', '"'.repeat(65_000), 'syntax'],
    ['a long number', `holdturn: ${'9'.repeat(1_000)}`, 'newer version'],
    ['seven thousand keys', many(7_000, (i) => `k${i}: 1`), 'unknown key'],
  ])('of %s has a clear error', (_, text, problem) => {
    const { train, problems } = readTrain(text);
    expect(train).toBeUndefined();
    expect(problems.map((told) => told.problem)).toContain(problem);
    expect(problems.length).toBeLessThanOrEqual(201);
    for (const { place } of problems) {
      expect(place.column - 1 + place.length).toBeLessThanOrEqual(Math.max(1, text.length));
    }
  });

  it('of four hundred mutations or more never throws, and has a train or an error', () => {
    const seed = seedOfRun();
    const dice = new Dice(seed);
    const scraps = [
      '{',
      '}',
      '[',
      ']',
      ':',
      ',',
      ' ',
      '\n',
      '\t',
      '"',
      "'",
      '#',
      '&a',
      '*a',
      '!',
      '|',
      '>',
      '-',
      '?',
      '%',
      '0',
      '-1',
      '.',
      'case',
      'shares: a',
      '\0',
      '\ud800',
      '\ud83d\ude00',
      'null',
      '1e999',
    ];
    const texts = [EVERYTHING, ...trains.map(([, text]) => text)];
    const tally = new Tally({ train: 30, error: 200 });
    for (let turn = 0; turn < tries(400); turn++) {
      let text = dice.pick(texts);
      for (let cuts = dice.whole(1, 4); cuts > 0; cuts--) {
        const from = dice.whole(0, text.length);
        const to = Math.min(text.length, from + dice.pick([0, 0, 1, 3, 20, 200]));
        const put = dice.chance(0.6)
          ? dice.pick(scraps)
          : text.slice(dice.whole(0, text.length)).slice(0, 30);
        text = text.slice(0, from) + put + text.slice(to);
      }
      const said = `seed ${seed}, turn ${turn}:\n${text}`;
      const { train, problems } = readOrShow(text, said);
      expect(train === undefined, said).toBe(problems.some(({ severity }) => severity === 'error'));
      tally.met(train ? 'train' : 'error');
    }
    tally.enough();
  });
});
