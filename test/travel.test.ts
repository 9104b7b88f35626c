import { expect, test } from 'vitest';
import { chart, type ChartGear } from '../src/engine/chart/index.ts';
import { type Fact, type Flow, flow, vehicleOf } from '../src/engine/flow/index.ts';
import type { GearPair, Train } from '../src/engine/train/index.ts';
import { seedOfRun } from './dice.ts';
import { randomTrain } from './random-train.ts';
import { Tally } from './tally.ts';

const TRAINS = 120;
const seed = seedOfRun();

/** The output through `count` external pairs: each turns the way round, and nothing else. */
function behind(train: Train, count: number): Train {
  const shafts = Array.from({ length: count + 1 }, (_, k) => {
    return k === 0 ? train.output : `shaft ${k} behind`;
  });
  const pairs = shafts.slice(1).map((driven, k): GearPair => {
    return {
      name: `pair ${k} behind`,
      driver: { member: shafts[k] as string, teeth: 20 + k },
      driven: { member: driven, teeth: 31 },
      kind: 'external',
    };
  });
  const { forward } = vehicleOf(train);
  const other = forward === 'clockwise' ? 'anticlockwise' : 'clockwise';
  return {
    ...train,
    output: shafts.at(-1) as string,
    forward: count % 2 === 0 ? forward : other,
    pairs: [...train.pairs, ...pairs],
  };
}

const towardIn = (fact: Fact) => {
  return fact.fact === 'rolls' ? fact.toward : fact.fact === 'tied up' ? fact.rolled : undefined;
};

const told = ({ drive, coast, inReverse }: ChartGear) => [drive, coast, inReverse];

test(`odd or even external pairs behind it, a vehicle does the same (SEED=${seed})`, () => {
  const tally = new Tally({ driving: 1400, reverse: 30, rolled: 15 });
  for (let k = 0; k < TRAINS; k++) {
    const train = randomTrain(seed + k);
    const plain = chart(train).gears;
    for (const count of [1, 2, 3]) {
      const where = `SEED=${seed + k}, behind ${count}`;
      const far = chart(behind(train, count)).gears;
      expect(far.map(told), where).toEqual(plain.map(told));
      for (const [g, { ratio }] of far.entries()) {
        const sign = Math.sign(plain[g]?.ratio?.num as number) * (count % 2 === 0 ? 1 : -1);
        if (!ratio) continue;
        tally.met('driving');
        expect(Math.sign(ratio.num as number), where).toBe(sign);
      }
    }
    const back = plain.find(({ ratio }) => ratio && ratio.num < 0);
    tally.met('reverse', plain.filter(({ ratio }) => ratio && ratio.num < 0).length);
    if (!back || tally.count('rolled') >= 20) continue;
    // And rolled back, in a combination that drives its output anticlockwise.
    tally.met('rolled');
    const [near, far] = [train, behind(train, 1)].map((its) => flow(its, back.on));
    expect(far?.rollback.inputFree.rolls).toBe(near?.rollback.inputFree.rolls);
    expect(far?.rollback.inputHeld.rolls).toBe(near?.rollback.inputHeld.rolls);
    // A hill takes it the other way than it travels, whichever way its output then turns.
    for (const { travels, rollback } of [near, far] as Flow[]) {
      for (const { facts } of [rollback.inputFree, rollback.inputHeld]) {
        expect(facts.map(towardIn)).toContain(travels === 'reverse' ? 'forward' : 'reverse');
      }
    }
    expect(far?.coast.devices.size).toBe(near?.coast.devices.size);
  }
  tally.enough();
});
