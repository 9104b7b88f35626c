import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { flow } from '../../engine/flow/index.ts';
import { toText } from '../../engine/linear/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { discard, readTrain } from '../../engine/trainfile/index.ts';
import { type Reply, type Asked, askNext, inquire, type Inquiry, lacksOf } from './asking.ts';
import { changeOf } from './changing.ts';
import { NOTHING } from './nothing.ts';
import { nextPrompt, promptsOf } from './prompts.ts';
import { written } from './writing.ts';

const soFar = (text: string) => readTrain(text).soFar ?? NOTHING;

/** A person who describes: what they have settled, and the text that their answers made. */
class Person {
  text: string;
  readonly settled = new Set<string>();

  constructor(text = '') {
    this.text = text;
  }

  /** What is asked just now: "set", "join front.sun", "more device", or "nothing". */
  get asked(): string {
    return worded(askNext(soFar(this.text), this.settled));
  }

  /** Answers a round of questions, each by its key; unasked ones are a mistake of the test. */
  say(said: Record<string, Reply>, inquiry = this.inquiry()): void {
    const answers = new Map<string, Reply>();
    const round: Inquiry = { ...inquiry, answers };
    for (let prompt; (prompt = nextPrompt(round, soFar(this.text)));) {
      const answer = said[prompt.key] ?? null;
      if (answer === null && !prompt.optional) throw new Error(`${prompt.key} must be said`);
      const picks = [answer].flat().filter((one) => typeof one === 'string');
      const isOffered = prompt.open || picks.every((one) => prompt.options.includes(one));
      if (prompt.options.length > 0 && !isOffered) throw new Error(`${picks} is not offered`);
      answers.set(prompt.key, answer);
    }
    const unasked = Object.keys(said).filter((key) => !answers.has(key));
    if (unasked.length > 0) throw new Error(`nobody asked for ${unasked}`);
    const edited = written(this.text, soFar(this.text), round);
    if ('refused' in edited) throw new Error(edited.refused);
    this.text = edited.text;
  }

  private inquiry(): Inquiry {
    const asked = askNext(soFar(this.text), this.settled);
    if (asked.ask === 'about') return asked.inquiry;
    if (asked.ask === 'more') return inquire(asked.of);
    throw new Error('nothing is asked');
  }
}

function worded(asked: Asked): string {
  if (asked.ask === 'more') return `more ${asked.of}`;
  if (asked.ask === 'nothing') return 'nothing';
  return [asked.inquiry.topic, asked.inquiry.member].filter(Boolean).join(' ');
}

function describeKestrel(): Person {
  const person = new Person();
  person.say({ name: 'Kestrel' });
  person.say({ member: 'turbine shaft' });
  person.say({ member: 'counter gear' });
  const plain = { 'planets are': 'plain', sun: 36, ring: 84, planets: 3 };
  person.say({ name: 'front', ...plain });
  person.say({ name: 'rear', ...plain });
  person.settled.add('set');
  person.settled.add('turbine shaft');
  person.say({ with: ['front.carrier', 'rear.ring'] });
  person.say({ with: ['rear.sun'], name: 'sun shell' });
  for (const member of ['front.ring', 'rear.carrier']) person.settled.add(member);
  person.say({
    kind: 'clutch',
    name: 'forward clutch',
    first: 'turbine shaft',
    second: 'front.ring',
  });
  person.say({
    kind: 'clutch',
    name: 'direct clutch',
    first: 'turbine shaft',
    second: 'sun shell',
  });
  person.say({ kind: 'band', name: 'intermediate band', first: 'sun shell' });
  person.say({ kind: 'brake', name: 'second brake', first: 'second race' });
  const roller = { kind: 'one-way', inner: 'sun shell', outer: 'second race', lets: 'clockwise' };
  person.say({ name: 'second roller', ...roller });
  person.say({ kind: 'brake', name: 'low brake', first: 'rear.carrier' });
  const sprag = { kind: 'one-way', inner: 'rear.carrier', outer: 'case', lets: 'clockwise' };
  person.say({ name: 'low sprag', ...sprag });
  person.settled.add('device');
  person.say({ range: 'D', gear: '1', on: ['forward clutch'] });
  person.say({ range: 'D', gear: '2', on: ['forward clutch', 'second brake'] });
  person.say({ range: 'R', gear: 'R', on: ['direct clutch', 'low brake'] });
  person.settled.add('gear');
  return person;
}

describe('the guided way', () => {
  it('leads from an empty file to a described train, and then asks nothing more', () => {
    const person = describeKestrel();
    const { train, problems } = readTrain(person.text);
    expect(problems).toEqual([]);
    expect(person.asked).toBe('nothing');
    expect(person.text).toMatchInlineSnapshot(`
      "holdturn: 1
      name: Kestrel
      input: turbine shaft
      output: counter gear

      sets:
        front: { sun: 36, ring: 84, planets: 3 }
        rear: { sun: 36, ring: 84, planets: 3 }

      joined:
        counter gear: [front.carrier, rear.ring]
        sun shell: [front.sun, rear.sun]

      devices:
        forward clutch: { clutch: [turbine shaft, front.ring] }
        direct clutch: { clutch: [turbine shaft, sun shell] }
        intermediate band: { band: sun shell }
        second brake: { brake: second race }
        second roller: { one-way: [sun shell, second race], lets: clockwise }
        low brake: { brake: rear.carrier }
        low sprag: { one-way: [rear.carrier, case], lets: clockwise }

      ranges:
        D: { "1": [forward clutch], "2": [forward clutch, second brake] }
        R: { R: [direct clutch, low brake] }
      "
    `);
    const ratio = (on: string[]) => {
      const { ratio: found } = flow(train as Train, on).drive;
      return found && toText(found);
    };
    // Worked out by hand beside trains/kestrel-three-speed: 17/7, 10/7 and -7/3.
    expect(ratio(['forward clutch'])).toBe('17/7');
    expect(ratio(['forward clutch', 'second brake'])).toBe('10/7');
    expect(ratio(['direct clutch', 'low brake'])).toBe('-7/3');
  });

  it('asks one thing at a time, in the order of a strip-down', () => {
    const person = new Person();
    const asked: string[] = [];
    const round = (answers: Record<string, Reply>) => {
      asked.push(person.asked);
      person.say(answers);
    };
    const settle = (what: string) => {
      asked.push(person.asked);
      person.settled.add(what);
    };
    round({ name: 'Wren' });
    round({ member: 'shaft' });
    round({ member: 'drum' });
    round({ name: 'main', 'planets are': 'plain', sun: 30, ring: 66, planets: 3 });
    settle('set');
    round({ with: ['main.sun'] });
    round({ with: ['main.carrier'] });
    settle('main.ring');
    round({ kind: 'brake', name: 'low', first: 'main.ring' });
    settle('device');
    round({ range: 'D', gear: '1', on: ['low'] });
    settle('gear');
    asked.push(person.asked);
    expect(asked).toEqual([
      'name',
      'input',
      'output',
      'set',
      'more set',
      'join shaft',
      'join drum',
      'join main.ring',
      'device',
      'more device',
      'gear',
      'more gear',
      'nothing',
    ]);
  });

  it('takes up a text that somebody began by hand, and keeps the comments', () => {
    const person = new Person('# stripped on Tuesday\nholdturn: 1\nname: Wren   # so far\n');
    expect(person.asked).toBe('input');
    person.say({ member: 'shaft' });
    expect(person.text).toBe(
      '# stripped on Tuesday\nholdturn: 1\nname: Wren   # so far\ninput: shaft\n',
    );
  });

  it.each([
    [{ 'planets are': 'pair', sun: 30, ring: 70, pairs: 3 }, '{ sun: 30, ring: 70, pairs: 3 }'],
    [
      { 'planets are': 'stepped', sun: 20, ring: 88, 'first step': 24, 'second step': 44 },
      '{ sun: 20, ring: 88, steps: [24, 44] }',
    ],
    [
      {
        'planets are': 'sharing',
        shares: 'front',
        has: 'sun',
        sun: 24,
        reaches: 'through',
        'inner planets': 3,
      },
      '{ shares: front, sun: 24, pairs: 3 }',
    ],
    [
      { 'planets are': 'sharing', shares: 'front', has: 'ring', ring: 80 },
      '{ shares: front, ring: 80 }',
    ],
    [{ 'planets are': 'bevel', left: 16, right: 16, bevels: 2 }, '{ sides: [16, 16], pinions: 2 }'],
  ] as [Record<string, Reply>, string][])('writes the set of %j', (answers, wanted) => {
    const person = new Person('holdturn: 1\nsets:\n  front: { sun: 30, ring: 66 }\n');
    person.say({ name: 'new', ...answers }, inquire('set'));
    expect(person.text).toBe(
      `holdturn: 1\nsets:\n  front: { sun: 30, ring: 66 }\n  new: ${wanted}\n`,
    );
  });

  it('writes gear pairs', () => {
    const person = new Person('holdturn: 1\n');
    const pair = { driver: 'a', 'driver teeth': 17, driven: 'b', 'driven teeth': 62 };
    person.say({ name: 'final drive', ...pair, turns: 'external' }, inquire('gear pair'));
    person.say({ name: 'chain', ...pair, turns: 'chain' }, inquire('gear pair'));
    expect(person.text).toBe(
      'holdturn: 1\n\ngear pairs:\n  final drive: { driver: [a, 17], driven: [b, 62] }\n' +
        '  chain: { driver: [a, 17], driven: [b, 62], kind: chain }\n',
    );
  });
});

describe('what is splined to what', () => {
  const BEGUN =
    'holdturn: 1\ninput: crank\noutput: drum\nsets:\n  a: { sun: 30, ring: 66 }\n  b: { sun: 30, ring: 66 }\n';
  const joinsOf = (text: string) =>
    Object.fromEntries(soFar(text).joins.map(({ name, members }) => [name, members]));
  const join = (text: string, member: string, picked: string[], name?: string) => {
    const person = new Person(text);
    person.say({ with: picked, ...(name !== undefined && { name }) }, inquire('join', { member }));
    return person.text;
  };

  it('takes the name of a piece that has one, and asks for one otherwise', () => {
    expect(joinsOf(join(BEGUN, 'a.sun', ['crank']))).toEqual({ crank: ['a.sun'] });
    expect(joinsOf(join(BEGUN, 'a.ring', ['case']))).toEqual({ case: ['a.ring'] });
    expect(joinsOf(join(BEGUN, 'a.sun', ['b.sun'], 'shell'))).toEqual({
      shell: ['a.sun', 'b.sun'],
    });
    expect(joinsOf(join(BEGUN, 'drum', ['bell']))).toEqual({ bell: ['drum'] });
  });

  it('adds to the piece that is there, and makes one of two', () => {
    const shell = join(BEGUN, 'a.sun', ['b.sun'], 'shell');
    expect(joinsOf(join(shell, 'crank', ['shell']))).toEqual({
      shell: ['a.sun', 'b.sun', 'crank'],
    });
    const both = join(join(shell, 'a.ring', ['drum']), 'drum', ['shell']);
    expect(readTrain(both).problems.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(joinsOf(both)).toEqual({ shell: ['a.sun', 'b.sun'], drum: ['a.ring', 'shell'] });
  });

  it('does not offer a wheel of the same set, or what it is in one piece with already', () => {
    const shell = join(BEGUN, 'a.sun', ['b.sun'], 'shell');
    const [prompt] = promptsOf(inquire('join', { member: 'a.sun' }), soFar(shell));
    expect(prompt?.options).toEqual(
      ['case', 'crank', 'drum', 'a.ring', 'a.carrier', 'b.ring', 'b.carrier'].filter(
        (name) => !name.startsWith('a.'),
      ),
    );
  });

  it('is nothing where nothing is picked', () => {
    expect(join(BEGUN, 'a.sun', [])).toBe(BEGUN);
  });
});

describe('changing what is described', () => {
  const folder = new URL('../../../trains/', import.meta.url);
  const kestrel = readFileSync(new URL('kestrel-three-speed.train.yaml', folder), 'utf8');

  it('starts each prompt from what the file says, and an unchanged answer changes nothing', () => {
    const train = soFar(kestrel);
    const things = [
      ...train.sets.map(({ name }) => ({ thing: 'set', name }) as const),
      ...train.joins.map(({ name }) => ({ thing: 'join', name }) as const),
      ...train.devices.map(({ name }) => ({ thing: 'device', name }) as const),
      { thing: 'gear', within: 'D', name: '2' } as const,
    ];
    for (const thing of things) {
      const inquiry = changeOf(train, thing);
      if (!inquiry) throw new Error(`${thing.name} can be changed`);
      const person = new Person(kestrel);
      person.say(Object.fromEntries(inquiry.before), inquiry);
      expect(person.text).toBe(kestrel);
    }
  });

  it('touches only what is changed', () => {
    const person = new Person(kestrel);
    const inquiry = changeOf(soFar(kestrel), { thing: 'set', name: 'front' });
    if (!inquiry) throw new Error('a plain set can be changed');
    person.say({ ...Object.fromEntries(inquiry.before), ring: 90 }, inquiry);
    expect(person.text).toBe(kestrel.replace('sun: 36, ring: 84', 'sun: 36, ring: 90'));
  });

  it('asks for wheels of any other arrangement, each by its name', () => {
    const text =
      'holdturn: 1\nsets:\n  odd: { wheels: { a: 30, p: 20, r: 70 }, carried: [p], meshes: [[a, p], [r, p, internal]] }\n';
    const inquiry = changeOf(soFar(text), { thing: 'set', name: 'odd' });
    if (!inquiry) throw new Error('it can be changed');
    const person = new Person(text);
    person.say(Object.fromEntries(inquiry.before), inquiry);
    expect(person.text).toBe(text);
    const anew = new Person('holdturn: 1\n');
    anew.say({ name: 'odd', ...Object.fromEntries(inquiry.before) }, inquire('set'));
    expect(soFar(anew.text).sets).toEqual(soFar(text).sets);
  });
});

describe('what is missing', () => {
  it('is all of it at first, and nothing of the Kestrel', () => {
    expect(lacksOf(NOTHING).map(({ lack }) => lack)).toEqual([
      'name',
      'input',
      'output',
      'set',
      'device',
      'gear',
    ]);
    expect(lacksOf(soFar(describeKestrel().text))).toEqual([]);
  });

  it('is what a device holds that leads nowhere', () => {
    const text = describeKestrel().text.replace(
      'low sprag:',
      'odd clutch: { clutch: [turbine shaft, loose drum] }\n  low sprag:',
    );
    expect(lacksOf(soFar(text))).toEqual([{ lack: 'loose', member: 'loose drum' }]);
  });

  it('comes back when a device is taken away', () => {
    const { text } = describeKestrel();
    const edited = discard(text, soFar(text), { thing: 'device', name: 'forward clutch' });
    expect('text' in edited && lacksOf(soFar(edited.text))).toEqual([
      { lack: 'loose', member: 'front.ring' },
    ]);
  });
});
