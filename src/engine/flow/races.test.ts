import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { Dice, seedOfRun, tries } from '../../../test/dice.ts';
import { randomTrain } from '../../../test/random-train.ts';
import { opposite } from '../linear/index.ts';
import { stretched } from '../reckon/index.ts';
import { type Device, gearsOf, isFriction, type Train } from '../train/index.ts';
import { readTrain } from '../trainfile/index.ts';
import { flow, isSpan } from './index.ts';

const seed = seedOfRun();
const MINUS_ONE = opposite({ num: 1, den: 1 });

// The same clutch, described from its other race: that turns free the other way.
function fromTheOtherRace(device: Device): Device {
  if (device.kind !== 'one-way') return device;
  const { first, second, lets } = device;
  const other = lets === 'clockwise' ? 'anticlockwise' : 'clockwise';
  return { ...device, first: second, second: first, lets: other };
}

function* gears(): Generator<{ train: Train; on: readonly string[] }> {
  for (const file of readdirSync('trains').filter((name) => name.endsWith('.train.yaml'))) {
    const { train } = readTrain(readFileSync(`trains/${file}`, 'utf8'));
    for (const { on } of train ? gearsOf(train) : []) yield { train: train as Train, on };
  }
  for (let k = 0; k < tries(100); k++) {
    const train = randomTrain(seed + k);
    const dice = new Dice(seed + k);
    const on = train.devices.filter((device) => isFriction(device) && dice.chance(0.4));
    yield { train, on: on.map(({ name }) => name) };
  }
}

test(`which race of a one-way clutch is told first changes no answer (SEED=${seed})`, () => {
  const barelyFree = { from: 0, to: 0 };
  for (const { train, on } of gears()) {
    const other = { ...train, devices: train.devices.map(fromTheOtherRace) };
    const [one, turned] = [flow(train, on), flow(other, on)];
    for (const side of ['drive', 'coast'] as const) {
      const where = `${train.name}, ${side} with [${on}] on`;
      expect(turned[side].state, where).toBe(one[side].state);
      expect(turned[side].speeds, where).toEqual(one[side].speeds);
      for (const { name, kind } of train.devices) {
        const [its, same] = [one[side].devices.get(name), turned[side].devices.get(name)];
        if (!its || !same) throw new Error(`no work of ${name}`);
        expect(same.state, `${name}: ${where}`).toBe(its.state);
        if (kind !== 'one-way') continue;
        expect(same.slip, `${name}: ${where}`).toEqual(stretched(its.slip, MINUS_ONE));
        expect(same.torque, `${name}: ${where}`).toEqual(stretched(its.torque, MINUS_ONE));
        // Races that may stand or turn free are free; they over-run where they surely turn.
        if (!isSpan(its.slip)) continue;
        for (const end of ['from', 'to'] as const) {
          if (its.slip[end]?.num !== 0) continue;
          barelyFree[end]++;
          expect(its.state, `${name}: ${where}`).toBe('free');
        }
      }
    }
  }
  expect(barelyFree.from).toBeGreaterThan(5);
  expect(barelyFree.to).toBeGreaterThan(5);
});
