import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Dice, seedOfRun } from '../../../test/dice.ts';
import { withRandomTeardown } from '../../../test/random-teardown.ts';
import { randomTrain } from '../../../test/random-train.ts';
import { assemble, type Part, type Train } from '../train/index.ts';
import { readTrain } from '../trainfile/index.ts';
import { type Grip, MOST_PARTS, plan, type Plan, type Step } from './index.ts';
import { Reach } from './reach.ts';
import { Tally } from '../../../test/tally.ts';

const HEAD = `
holdturn: 1
input: turbine shaft
output: main shaft
sets: { set: { sun: 30, ring: 66 } }
joined: { main shaft: [set.carrier], turbine shaft: [set.sun] }
devices: { ring brake: { brake: set.ring } }
`;

function taken(teardown: string): Train {
  const { train, problems } = readTrain(`${HEAD}teardown:\n${teardown}`);
  if (!train) throw new Error(JSON.stringify(problems));
  return train;
}

function reached(train: Train, step: number): string[] {
  return new Reach(train).after(step).map(({ part }) => part.name);
}

describe('hands reach', () => {
  it('what is not covered, and both ends of the train', () => {
    const train = taken(`
  lid:
  shaft: { carries: [turbine shaft] }
  ring: { carries: [set.ring] }
  pack: { carries: [ring brake] }
  washer:
  carrier: { carries: [main shaft] }
`);
    expect(reached(train, 2)).toEqual(['washer', 'carrier']);
    expect(reached(train, 4)).toEqual(['ring', 'carrier']);
    expect(reached(train, 6)).toEqual(['lid', 'shaft', 'carrier']);
  });

  it('what a wider part leaves open, until the file says that it is hidden', () => {
    const train = taken(`
  lid:
  cover:
  ring: { carries: [set.ring], hidden by: [lid] }
`);
    expect(reached(train, 2)).toEqual(['cover', 'ring']);
    expect(reached(train, 3)).toEqual(['lid']);
  });

  it('nothing that went in from the end that is down now, but for a shaft that sticks out', () => {
    const train = taken(`
  lid: { up: input }
  shaft: { carries: [turbine shaft] }
  cover: { up: output }
  carrier: { carries: [main shaft] }
`);
    expect(reached(train, 2)).toEqual(['cover', 'carrier']);
    expect(reached(train, 3)).toEqual(['shaft', 'carrier']);
    // The lid does not cover what came off from the other end.
    expect(reached(train, 4)).toEqual(['lid', 'shaft', 'carrier']);
  });
});

it('of a part that merely sticks out, the end alone: a half shaft does not turn its case', () => {
  const { train } = readTrain(`
holdturn: 1
input: turbine shaft
output: [left shaft, right shaft]
sets: { axle: { sides: [14, 14] } }
gear pairs: { final drive: { driver: [turbine shaft, 20], driven: [axle case, 60] } }
joined: { axle case: [axle.carrier], left shaft: [axle.left], right shaft: [axle.right] }
devices: { shaft brake: { brake: turbine shaft } }
teardown:
  pump: { carries: [turbine shaft, shaft brake] }
  cover:
  differential: { carries: [axle case, axle.left, axle.right] }
`);
  const members = (step: number) => {
    return new Reach(train as Train).after(step).flatMap(({ carries }) => carries);
  };
  expect(members(1)).toEqual(['axle case', 'axle.left', 'axle.right']);
  expect(members(2)).toEqual(['axle.left', 'axle.right']);
  const grips = (plan(train as Train) as Plan).steps.slice(1).flatMap(gripsOf);
  expect(grips.length).toBeGreaterThan(0);
  expect(grips.map(({ member }) => member)).not.toContain('axle case');
});

describe('common practice, no source', () => {
  const file = new URL('../../../trains/kestrel-three-speed.train.yaml', import.meta.url);
  const { train } = readTrain(fs.readFileSync(file, 'utf8'));

  it('nobody turns a ring gear through two drums, and both ends of a unit can be held', () => {
    const { steps } = plan(train as Train) as Plan;
    const fits = steps.flatMap((step) => (step.does === 'fit' ? [step] : []));
    const last = fits.findIndex(({ part }) => part.name === 'direct drum');
    const gripped = fits.slice(last).flatMap(({ checks }) => {
      return checks.flatMap(({ hold, turn }) => [turn.part, ...(hold ? [hold.part] : [])]);
    });
    expect(gripped.length).toBeGreaterThan(0);
    expect(gripped).not.toContain('front ring');
    expect(new Set(gripped)).toEqual(new Set(['main shaft', 'forward drum']));
  });
});

// Whatever hands take hold of at a step.
function gripsOf(step: Step): Grip[] {
  const both = ({ hold, turn }: { hold?: Grip; turn: Grip }) => (hold ? [hold, turn] : [turn]);
  if (step.does === 'fit') return step.checks.flatMap(both);
  if (step.does === 'tighten') return step.still ? [step.still.turn] : [];
  return step.does === 'air check' && step.check ? both(step.check) : [];
}

describe('law', () => {
  const seed = seedOfRun();

  // Told once more, without `Reach`: step by step, what takes away sight as it goes on.
  const open = (train: Train, step: number): Set<string> => {
    const laid = train.teardown ?? [];
    const build = laid.toReversed();
    let end: Part['up'];
    const ups = new Map(laid.map((part) => [part.name, (end = part.up ?? end)]));
    const seen = new Set<string>();
    for (const part of build.slice(0, step)) {
      const before = laid[laid.indexOf(part) - 1];
      seen.add(part.name);
      const hiders =
        part['hidden by'] ??
        part.under ??
        (before && ups.get(before.name) === ups.get(part.name) ? [before.name] : []);
      if (build.slice(0, step).some(({ name }) => hiders.includes(name))) seen.delete(part.name);
    }
    const now = ups.get(build[step - 1]?.name ?? '');
    for (const name of seen) {
      if (now && ups.get(name) && ups.get(name) !== now) seen.delete(name);
    }
    const { bodyOf } = assemble(train);
    const members = new Set<string>();
    for (const { name, carries } of build.slice(0, step)) {
      const ends = new Set([train.input, train.output].map(bodyOf));
      for (const its of carries) {
        if (seen.has(name) || ends.has(bodyOf(its))) members.add(`${its} of ${name}`);
      }
    }
    return members;
  };

  it(`no check holds or turns what cannot be reached (SEED=${seed})`, () => {
    const tally = new Tally({ trains: 20, grips: 200 });
    for (let its = seed; its < seed + 24; its++) {
      const train = withRandomTeardown(randomTrain(its), new Dice(its));
      if ((train.teardown?.length ?? 0) > MOST_PARTS) continue;
      tally.met('trains');
      let on = 0;
      for (const step of (plan(train) as Plan).steps) {
        if (step.does === 'fit') on += 1;
        const seen = open(train, on);
        const grips = gripsOf(step);
        for (const { part, member } of grips) {
          expect(seen, `train ${its}, step ${step.number}`).toContain(`${member} of ${part}`);
        }
        tally.met('grips', grips.length);
      }
    }
    tally.enough();
  });
});
