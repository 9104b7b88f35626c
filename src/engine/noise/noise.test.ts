import { describe, expect, it } from 'vitest';
import type { Train } from '../train/index.ts';
import { trainOf } from '../../../test/line.ts';
import { ours } from '../../../test/trains.ts';
import { atWork, growlers, type Growler } from './index.ts';

const kestrel = ours('kestrel-three-speed');

// An overdrive set ahead of twin sets on a common sun, as in many units; teeth invented.
const AHEAD = trainOf(`
  o 30:72 x3; f 34:74 x4; r 34:74 x4; in shaft = o.carrier; mid = o.ring; shell = f.sun + r.sun;
  out drum = f.carrier + r.ring; od clutch joins o.sun + o.carrier; od brake holds o.sun;
  forward joins mid + f.ring; direct joins mid + shell; second holds race;
  second roller lets shell clockwise in race; low holds r.carrier; low roller lets r.carrier clockwise;
  D 1 applies forward + od clutch; D 2 applies forward + second + od clutch;
  D 3 applies forward + second + direct + od clutch; D 4 applies forward + second + direct + od brake;
  R R applies direct + low + od clutch`);

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
    const work = [...atWork(kestrel, ['forward clutch', 'direct clutch', 'second brake'])];
    const turning = (part: string) =>
      work.filter(([its, { turns }]) => its.part === part && turns !== 'no');
    expect(turning('planets')).toEqual([]);
    expect(turning('races').map(([part]) => part)).toEqual([
      { part: 'races', device: 'second roller' },
      { part: 'races', device: 'low sprag' },
    ]);
  });

  it('in neutral what nothing settles is free, not still', () => {
    const planets = [...atWork(kestrel, [])].filter(([{ part }]) => part === 'planets');
    expect(planets.map(([, { turns }]) => turns)).toEqual(['free', 'free']);
  });
});
