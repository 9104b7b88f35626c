import { describe, expect, it } from 'vitest';
import { readTrain } from '../trainfile/index.ts';
import { assemble, coversOf, halfBuilt, setGearing, type Train } from './index.ts';

const { train } = readTrain(`
holdturn: 1
input: turbine shaft
output: main shaft
sets:
  front: { sun: 30, ring: 66 }
  rear: { sun: 30, ring: 66 }
joined:
  sun shell: [front.sun, rear.sun]
  main shaft: [front.carrier, rear.ring, counter gear]
devices:
  forward clutch: { clutch: [turbine shaft, front.ring] }
  low sprag: { one-way: [rear.carrier, case], lets: clockwise }
teardown:
  cover: { under: [] }
  drum: { carries: [turbine shaft, forward clutch, front.ring], covers: [suns, shell] }
  front carrier: { carries: [front.carrier], covers: [suns] }
  shell: { carries: [sun shell] }
  suns: { carries: [front.sun, rear.sun] }
  rear carrier: { carries: [rear.carrier, low sprag.inner] }
  cage: { carries: [low sprag], under: [shell] }
  race: { carries: [low sprag.outer] }
  shaft: { carries: [main shaft, rear.ring] }
`) as { train: Train };

function on(...parts: string[]): Train {
  return halfBuilt(train, ({ name }) => parts.includes(name));
}

function meshes(half: Train): string[] {
  return half.sets.flatMap((set) =>
    setGearing(half, set).meshes.map((m) => `${m.a.member} ${m.b.member}`),
  );
}

function together(half: Train, a: string, b: string): boolean {
  const { bodyOf } = assemble(half);
  return bodyOf(a) !== undefined && bodyOf(a) === bodyOf(b);
}

function open(half: Train): string[] {
  return half.devices.filter(({ stuck }) => stuck === 'open').map(({ name }) => name);
}

describe('a half-built train', () => {
  it('has meshes only between wheels that are there; planets come with their carrier', () => {
    expect(meshes(on('shaft', 'suns'))).toEqual([]);
    expect(meshes(on('shaft', 'rear carrier'))).toEqual(['rear.planet rear.ring']);
    expect(meshes(on('shaft', 'rear carrier', 'suns'))).toEqual([
      'rear.sun rear.planet',
      'rear.planet rear.ring',
    ]);
  });

  it('joins what is there, through the part that has the join’s name', () => {
    expect(together(on('shaft'), 'rear.ring', 'main shaft')).toBe(true);
    expect(together(on('front carrier'), 'front.carrier', 'main shaft')).toBe(false);
    expect(together(on('front carrier', 'shaft'), 'front.carrier', 'rear.ring')).toBe(true);
    expect(together(on('shaft'), 'front.carrier', 'rear.ring')).toBe(false);
  });

  it('keeps what one part carries in one piece', () => {
    expect(together(on('suns'), 'front.sun', 'rear.sun')).toBe(true);
    expect(together(on('suns'), 'front.sun', 'sun shell')).toBe(false);
  });

  it('has a one-way clutch when its races, its cage and its members are there', () => {
    const all = ['race', 'cage', 'rear carrier'];
    for (const part of all) {
      expect(open(on(...all.filter((other) => other !== part)))).toContain('low sprag');
    }
    expect(open(on(...all))).toEqual(['forward clutch']);
  });

  it('is the whole train with every part on, and is half built again the same', () => {
    expect(halfBuilt(train, () => true).devices).toEqual(train.devices);
    expect(meshes(halfBuilt(train, () => true))).toEqual(meshes(train));
    const some = ['shaft', 'race', 'cage', 'rear carrier'];
    const again = halfBuilt(on(...some, 'suns'), ({ name }) => some.includes(name));
    expect(meshes(again)).toEqual(meshes(on(...some)));
    expect(open(again)).toEqual(open(on(...some)));
  });
});

describe('what covers a part', () => {
  const covers = (name: string) => {
    const teardown = train.teardown ?? [];
    return coversOf(teardown, teardown.find((part) => part.name === name) as (typeof teardown)[0]);
  };

  it.each([
    ['cover', []],
    ['drum', ['cover']],
    ['suns', ['drum', 'front carrier']],
    ['shell', ['drum']],
    ['cage', ['shell']],
    ['race', ['cage']],
  ])('the %s: %j', (name, by) => {
    expect(covers(name)).toEqual(by);
  });
});
