import fs from 'node:fs';
import { describe, expect, test } from 'vitest';
import { toNumber, toText } from '../linear/index.ts';
import { motionOf } from '../motion/index.ts';
import { readTrain } from '../trainfile/index.ts';
import type { Train } from '../train/index.ts';
import { chart, STATES, sweep, sweeper } from './index.ts';

const FOLDER = new URL('../../../trains/', import.meta.url);
const TRAINS = fs.readdirSync(FOLDER).filter((name) => name.endsWith('.train.yaml'));

function trainOf(name: string): Train {
  const { train } = readTrain(fs.readFileSync(new URL(name, FOLDER), 'utf8'));
  if (!train) throw new Error(`${name} is no train`);
  return train;
}

describe('the sweep says what the exact chart says', () => {
  test.each(TRAINS)('%s', (name) => {
    const train = trainOf(name);
    const { gears } = chart(train);
    const swept = sweep(motionOf(train));
    gears.forEach(({ drive, coast, ratio }, mask) => {
      expect([STATES[swept.drive[mask] as number], STATES[swept.coast[mask] as number]]).toEqual([
        drive,
        coast,
      ]);
      if (ratio) expect(1 / (swept.driveSpeed[mask] as number)).toBeCloseTo(toNumber(ratio), 9);
    });
  });
});

test('what rounding leaves open is told, and answered exactly', () => {
  // Teeth without a common factor, so large that their products leave float64: whether the
  // two sets agree to the last tooth decides whether this ties up.
  const text = `
holdturn: 1
name: two long words that say the same
input: shaft
output: drum
sets:
  a: { sun: 999983, ring: 999979, planets: 1, planet: 7 }
  b: { sun: 999983, ring: 999979, planets: 1, planet: 11 }
  c: { sun: 999961, ring: 999959, planets: 1, planet: 13 }
  d: { sun: 999961, ring: 999959, planets: 1, planet: 17 }
joined:
  shaft: [a.sun, b.sun]
  drum: [c.carrier, d.carrier]
  first: [a.carrier, c.sun]
  second: [b.carrier, d.sun]
devices:
  one: { brake: a.ring }
  two: { brake: b.ring }
  three: { brake: c.ring }
  four: { brake: d.ring }
`;
  const { train } = readTrain(text);
  const motion = motionOf(train as Train);
  const all = 0b1111;
  expect(sweeper(motion)().unsure).toContain(all);
  const swept = sweep(motion);
  expect(STATES[swept.drive[all] as number]).toBe('driving');
  expect(chart(train as Train).gears[all]?.drive).toBe('driving');
});

describe('the chart of the common-sun train', () => {
  const { devices, gears, shifts } = chart(trainOf('kestrel-three-speed.train.yaml'));
  const at = (...on: string[]) => gears.findIndex((gear) => gear.on.join() === on.join());

  test('has every combination once, in binary order', () => {
    expect(gears).toHaveLength(2 ** devices.length);
    expect(gears[5]?.on).toEqual([devices[0], devices[2]]);
    expect(new Set(gears.map(({ on }) => on.join())).size).toBe(gears.length);
  });
  test('knows which gears the ranges name', () => {
    expect(gears[at('forward clutch')]?.named).toEqual([{ range: 'D', gear: '1' }]);
    expect(gears[at()]?.named).toEqual([{ range: 'N', gear: 'N' }]);
  });
  test('gives ratios as fractions', () => {
    const ratios = gears.flatMap(({ ratio }) => (ratio ? [toText(ratio)] : []));
    expect(new Set(ratios)).toEqual(new Set(['17/7', '10/7', '1', '-7/3']));
  });
  test('tells what a swap passes through', () => {
    const swap = shifts.find(
      ({ release, apply }) => release === 'forward clutch' && apply === 'direct clutch',
    );
    const through = [swap?.both, swap?.neither].map((place) => gears[place ?? -1]?.drive);
    expect(through).toEqual(['tied up', 'neutral']);
    const plain = shifts.find(
      ({ from, to }) => gears[from]?.named[0]?.gear === '1' && gears[to]?.named[0]?.gear === '2',
    );
    expect(plain).toEqual({
      from: at('forward clutch'),
      to: at('forward clutch', 'second brake'),
      apply: 'second brake',
    });
  });
});
