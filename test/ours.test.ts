import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { flow } from '../src/engine/flow/index.ts';
import { toNumber } from '../src/engine/linear/index.ts';
import { assemble, gearsOf, isFriction, type Train } from '../src/engine/train/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';
import cases from './published/cases.json' with { type: 'json' };
import stacks from './published/stacks.json' with { type: 'json' };
import { ROOT } from './sources.ts';

// What is ours is ours: nobody should know a unit of somebody's by a train, a list of ratios, the
// name of a device or an address here. What can be guarded of that is guarded by these tests.
const FOLDER = path.join(ROOT, 'trains');
const OURS = fs
  .readdirSync(FOLDER)
  .filter((file) => file.endsWith('.train.yaml'))
  .map((file) => ({ file, text: fs.readFileSync(path.join(FOLDER, file), 'utf8') }))
  .map(({ file, text }) => ({ file, text, train: readTrain(text).train as Train }));

// Those who published an arrangement are named where their publication is, and nowhere else.
const INVENTORS = /simpson|ravigneaux|lepelletier|polak|wilson|wolfrom|ferguson/iu;

/** The ratios of a published case, as its figures tell them; each once. */
const PUBLISHED = cases
  .map(({ id, title, train, figures }) => ({
    id,
    title,
    train,
    ratios: figures.flatMap(({ what, value }) => {
      return /^ratio \S+(?: manual)?$/u.test(what) && typeof value === 'number' ? [value] : [];
    }),
  }))
  .filter(({ ratios }) => ratios.length >= 3);

describe.each(OURS)('$file', ({ text, train }) => {
  it('says first what of it is ours', () => {
    const said = /^(?:# .*\n)+/u.exec(text)?.[0].replaceAll(/\n# /gu, ' ') ?? '';
    expect(said).toMatch(/\bours\b/u);
    expect(said).toMatch(/arrangement and all|long published|as old as gears/iu);
  });

  it('gears as no published train of our test data does', () => {
    expect(PUBLISHED.length).toBeGreaterThan(4);
    const ratios = ratiosOf(train);
    expect(PUBLISHED.filter((one) => alike(ratios, one.ratios)).map(({ id }) => id)).toEqual([]);
  });

  it('is arranged as none of them is, or says that its arrangement is published', () => {
    const same = PUBLISHED.filter((one) => shapeOf(train) === shapeOf(read(one.train)));
    if (/long published|as old as gears/iu.test(text)) return;
    expect(same.map(({ id }) => id)).toEqual([]);
  });

  it('calls each device by what it does', () => {
    expect(train.devices.map(({ name }) => name).filter((name) => !isWords(name))).toEqual([]);
  });
});

it('knows a list of ratios, and an arrangement, when it meets them again', () => {
  for (const { train, ratios, id } of PUBLISHED) {
    expect([id, alike(ratios, ratios)]).toEqual([id, true]);
    const turned = { ...train, sets: Object.fromEntries(Object.entries(train.sets).toReversed()) };
    expect([id, shapeOf(read(turned))]).toEqual([id, shapeOf(read(train))]);
  }
  expect(new Set(PUBLISHED.map(({ train }) => shapeOf(read(train)))).size).toBeGreaterThan(4);
});

describe.each(cases)('the published case $id', ({ title, train, ...rest }) => {
  it('calls an arrangement by what it is, and devices by what they do', () => {
    expect(title).not.toMatch(INVENTORS);
    const names = Object.keys('devices' in train ? (train.devices ?? {}) : {});
    expect(names.filter((name) => !isWords(name))).toEqual([]);
  });

  it('has no inventor in its address', () => {
    expect('address' in rest ? rest.address : '').not.toMatch(INVENTORS);
  });
});

it('stacks have no inventor in their address', () => {
  for (const stack of stacks)
    expect('address' in stack ? stack.address : '').not.toMatch(INVENTORS);
});

// Two words or more of three letters or more: never a letter and a figure.
function isWords(name: string): boolean {
  return /^[a-z]{3,}(?:[ -][a-z]{3,})+$/u.test(name);
}

function ratiosOf(train: Train): number[] {
  const found = gearsOf(train).flatMap(({ on }) => {
    const { ratio } = flow(train, on).drive;
    return ratio ? [toNumber(ratio)] : [];
  });
  return [...new Set(found)];
}

// Every ratio of theirs is within 1 % of one of ours.
function alike(ours: readonly number[], theirs: readonly number[]): boolean {
  return theirs.every((one) => ours.some((other) => Math.abs(other / one - 1) <= 0.01));
}

function read(file: object): Train {
  const { train, problems } = readTrain(JSON.stringify({ holdturn: 1, ...file }));
  if (!train) throw new Error(problems.map(({ problem }) => problem).join());
  return train;
}

/**
 * What is joined to what, in a form that no name and no order of the sets changes: each body by the
 * members that it is made of, the devices by the bodies between which they stand.
 */
function shapeOf(train: Train): string {
  const shapes = permutations(train.sets.map(({ name }) => name)).map((order) => {
    const bodyOf = bodiesOf(train, order);
    const devices = train.devices.map((device) => {
      const ends = [device.first, device.second].map(bodyOf).toSorted();
      return `${isFriction(device) ? 'friction' : 'one-way'} ${ends.join(' + ')}`;
    });
    return [bodyOf(train.input), bodyOf(train.output), ...devices.toSorted()].join('; ');
  });
  return shapes.toSorted()[0] as string;
}

function bodiesOf(train: Train, order: readonly string[]): (member: string) => string {
  const { bodies, bodyOf } = assemble(train);
  return (member) => {
    const body = bodyOf(member) as number;
    if (body === 0) return 'case';
    const told = (bodies[body]?.names ?? []).flatMap((name) => {
      const [set = '', part = ''] = name.split('.');
      return /^(?:sun|carrier|ring)$/u.test(part) ? [`${order.indexOf(set)}.${part}`] : [];
    });
    return told.toSorted().join('=');
  };
}

function permutations<T>(list: readonly T[]): (readonly T[])[] {
  if (list.length < 2) return [list];
  return list.flatMap((one, k) => {
    return permutations(list.toSpliced(k, 1)).map((rest) => [one, ...rest]);
  });
}
