import { describe, expect, test } from 'vitest';
import { Tally } from '../../../test/tally.ts';
import { OURS, ours } from '../../../test/trains.ts';
import type { Device, Train } from '../train/index.ts';
import { readTrain, trainText } from '../trainfile/index.ts';
import { check } from './index.ts';
import type { Mend } from './mend.ts';

const warned = (train: Train) => check(readTrain(trainText(train)));

// The causes that are named, and whether they come first.
function causes(train: Train): { readonly mends: Mend[]; readonly odd: number } {
  const warnings = warned(train);
  const isCause = (one: (typeof warnings)[number]) => one.problem === 'one cause';
  const first = warnings.findIndex((one) => !isCause(one));
  const misgivings = warnings.filter(({ problem }) => /^gear |^neutral /u.test(problem));
  const mends = warnings.flatMap((one) => (one.problem === 'one cause' ? [one] : []));
  expect(warnings.slice(first).some(isCause)).toBe(false);
  return { mends, odd: misgivings.length };
}

function edited(train: Train, edit: (device: Device) => Device): Train {
  return { ...train, devices: train.devices.map(edit) };
}

function pairs<T>(all: readonly T[]): [T, T][] {
  return all.flatMap((a, i) => all.slice(i + 1).map((b): [T, T] => [a, b]));
}

describe('the one cause of odd gears', () => {
  test('is a one-way clutch that is turned round, in every train of ours that has one', () => {
    const tally = new Tally({ odd: 5 });
    for (const train of OURS.map(ours)) {
      for (const device of train.devices) {
        if (device.kind !== 'one-way') continue;
        const lets = device.lets === 'clockwise' ? 'anticlockwise' : 'clockwise';
        const { mends, odd } = causes(
          edited(train, (its) => (its === device ? { ...device, lets } : its)),
        );
        if (odd === 0) continue;
        tally.met('odd');
        const right = { mend: 'turned round', device: device.name, lets: device.lets };
        expect(mends).toEqual([expect.objectContaining({ ...right, gears: odd })]);
      }
    }
    tally.enough();
  });

  test('is two devices that are exchanged, or it is not told', () => {
    const tally = new Tally({ told: 17 });
    for (const train of OURS.map(ours)) {
      for (const [a, b] of pairs(train.devices.filter(({ kind }) => kind !== 'one-way'))) {
        if (a.kind !== b.kind) continue;
        const wrong = edited(train, (its) => {
          const place = its === a ? b : its === b ? a : its;
          return { ...its, first: place.first, second: place.second };
        });
        const { mends } = causes(wrong);
        if (mends.length === 0) continue;
        tally.met('told');
        const [mend] = mends;
        expect(mend).toMatchObject({ mend: 'devices exchanged' });
        expect(mend && 'other' in mend && [mend.device, mend.other]).toEqual([a.name, b.name]);
      }
    }
    tally.enough();
  }, 60_000);

  test('is told of no train of ours as it is', () => {
    for (const train of OURS.map(ours)) expect(causes(train)).toEqual({ mends: [], odd: 0 });
  });

  const kestrel = ours('kestrel-three-speed');
  test('is a device that holds another member', () => {
    const wrong = edited(kestrel, (its) =>
      its.name === 'low brake' ? { ...its, first: 'rear.ring' } : its,
    );
    expect(causes(wrong).mends).toEqual([
      expect.objectContaining({
        mend: 'other member',
        device: 'low brake',
        member: 'rear.carrier',
      }),
    ]);
  });
  test('is two members of a set that are exchanged', () => {
    const tally = new Tally({ told: 6 });
    for (const train of OURS.map(ours)) {
      for (const set of train.sets.filter(({ kind }) => kind === 'plain')) {
        for (const [a, b] of pairs(
          ['sun', 'ring', 'carrier'].map((part) => `${set.name}.${part}`),
        )) {
          const named = (name: string) => (name === a ? b : name === b ? a : name);
          const wrong = {
            ...edited(train, (its) => ({
              ...its,
              first: named(its.first),
              second: named(its.second),
            })),
            input: named(train.input),
            output: named(train.output),
            joins: train.joins.map((join) => ({ ...join, members: join.members.map(named) })),
          };
          const { mends } = causes(wrong);
          if (mends.length === 0) continue;
          tally.met('told');
          expect(mends).toEqual([expect.objectContaining({ set: set.name, members: [a, b] })]);
        }
      }
    }
    tally.enough();
  }, 60_000);
});
