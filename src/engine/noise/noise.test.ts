import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Train } from '../train/index.ts';
import { readTrain } from '../trainfile/index.ts';
import { atWork, growlers, type Growler } from './index.ts';

const trainOf = (text: string) => readTrain(text).train as Train;
const kestrel = trainOf(
  fs.readFileSync(
    new URL('../../../trains/kestrel-three-speed.train.yaml', import.meta.url),
    'utf8',
  ),
);

// An overdrive set ahead of twin sets on a common sun, as in many units; teeth invented.
const AHEAD = trainOf(`holdturn: 1
name: overdrive ahead
input: in
output: out
sets:
  o: { sun: 30, ring: 72, planets: 3 }
  f: { sun: 34, ring: 74, planets: 4 }
  r: { sun: 34, ring: 74, planets: 4 }
joined: { in: [o.carrier], mid: [o.ring], shell: [f.sun, r.sun], out: [f.carrier, r.ring] }
devices:
  od clutch: { clutch: [o.sun, o.carrier] }
  od brake: { brake: o.sun }
  forward: { clutch: [mid, f.ring] }
  direct: { clutch: [mid, shell] }
  second: { brake: race }
  second roller: { one-way: [shell, race], lets: clockwise }
  low: { brake: r.carrier }
  low roller: { one-way: [r.carrier, case], lets: clockwise }
ranges:
  D:
    "1": [forward, od clutch]
    "2": [forward, second, od clutch]
    "3": [forward, second, direct, od clutch]
    "4": [forward, second, direct, od brake]
  R: { "R": [direct, low, od clutch] }
`);

function gears(train: Train, named: string) {
  return named.split(', ').map((gear) => {
    const [range = '', name = range] = gear.split(' ');
    const its = train.ranges.find((other) => other.name === range);
    return { gear, on: its?.gears.find((other) => other.name === name)?.on ?? [] };
  });
}

function heard(train: Train, noisy: string, quiet: string): string[] {
  return growlers(train, gears(train, noisy), quiet ? gears(train, quiet) : []).map(told);
}

function told({ part, because, loadedIn }: Growler): string {
  const name =
    part.part === 'planets'
      ? `planets of ${part.set}`
      : part.part === 'pair'
        ? part.pair
        : part.part === 'races'
          ? `races of ${part.device}`
          : `bearing of ${part.member}`;
  return `${name}, ${because}, loaded in ${loadedIn.join(' ')}`;
}

describe('a noise in some gears', () => {
  // Common practice, no source: a set that turns as one block is quiet.
  it('is in the sets that work there, and not in the one that turns as a block', () => {
    const found = heard(AHEAD, 'D 1, D 2, R', 'D 3, D 4').filter((its) =>
      its.startsWith('planets'),
    );
    expect(found).toEqual([
      'planets of f, turns, loaded in D 1 D 2',
      'planets of r, turns, loaded in D 1 R',
    ]);
  });

  it('in top alone is in the overdrive set', () => {
    const found = heard(AHEAD, 'D 4', 'D 1, D 2, D 3, R').filter((its) =>
      its.startsWith('planets'),
    );
    expect(found).toEqual(['planets of o, turns, loaded in D 4']);
  });

  it('is in the loaded set, where the other turns idly in a quiet gear', () => {
    // In second the rear set turns and carries nothing; in first and reverse it carries.
    const found = heard(kestrel, 'D 1, R', 'D 2, D 3').filter((its) => its.includes('rear,'));
    expect(found).toEqual(['planets of rear, loaded, loaded in D 1 R']);
  });

  it('in every gear leaves whatever turns in all of them, and nothing heard leaves nothing', () => {
    const all = heard(kestrel, 'D 1, D 2, D 3', '');
    expect(all.some((its) => its.startsWith('planets'))).toBe(false);
    expect(all).toContain('bearing of turbine shaft, turns, loaded in ');
    expect(growlers(kestrel, [], gears(kestrel, 'D 1'))).toEqual([]);
  });
});

describe('who is at work', () => {
  it('in direct drive nobody turns within a set, and the one-way clutches over-run', () => {
    const work = atWork(kestrel, ['forward clutch', 'direct clutch', 'second brake']);
    const turning = (part: string) =>
      work.filter((its) => its.part.part === part && its.turns !== 'no');
    expect(turning('planets')).toEqual([]);
    expect(turning('races').map(({ part }) => part)).toEqual([
      { part: 'races', device: 'second roller' },
      { part: 'races', device: 'low sprag' },
    ]);
  });

  it('in neutral what nothing settles is free, not still', () => {
    const planets = atWork(kestrel, []).filter(({ part }) => part.part === 'planets');
    expect(planets.map(({ turns }) => turns)).toEqual(['free', 'free']);
  });
});
