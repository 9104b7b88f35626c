import { describe, expect, test } from 'vitest';
import { Dice, seedOfRun, tries } from '../../../test/dice.ts';
import { randomTrain } from '../../../test/random-train.ts';
import {
  type LinearForm,
  fraction,
  given as givenRow,
  type Int,
  ONE,
  plus,
  type Rational,
  times,
  toText,
  ZERO,
} from '../linear/index.ts';
import { motionOf } from '../motion/index.ts';
import { isFriction } from '../train/index.ts';
import { readTrain, trainText } from '../trainfile/index.ts';
import {
  isSpan,
  judge,
  observe,
  portsOf,
  provedTorques,
  pushersOf,
  type Quantity,
  type Ruling,
  TorqueBalance,
  type Torques,
  torquesOf,
} from './index.ts';

describe('a balance of torques', () => {
  // A lever: what the sun and the ring push, the carrier bears.
  const { train } = readTrain(`
holdturn: 1
input: shaft
output: drum
sets: { main: { sun: 30, ring: 66, planets: 3 } }
joined: { shaft: [main.sun], drum: [main.carrier] }
`);
  if (!train) throw new Error('a set is a train');
  const motion = motionOf(train);
  const balance = new TorqueBalance(motion);
  const meshes = motion.meshes.map((row) => balance.pusher(row));
  const sun = balance.pusher(motion.speedOf('shaft'));
  const carrier = balance.pusher(motion.speedOf('drum'));
  const ring = balance.pusher(motion.speedOf('main.ring'));

  test('is settled by one torque that is known', () => {
    const found = balance.settle([givenRow(sun, ONE)], [carrier, ring, ...meshes]);
    expect([carrier, ring].map((form) => told(found?.get(form)))).toEqual(['-16/5', '11/5']);
  });
  test('has one way to balance, and nothing that is asked beyond it', () => {
    expect(balance.ways()).toHaveLength(1);
    expect(balance.settle([givenRow(sun, ONE), givenRow(ring, ONE)], [carrier])).toBeUndefined();
    expect(told(balance.settle([], [ring])?.get(ring))).toBe('undefined..undefined');
  });
});

function told(quantity: Quantity | undefined): string {
  if (quantity === undefined) return 'none';
  return isSpan(quantity) ? `${quantity.from?.num}..${quantity.to?.num}` : toText(quantity);
}

const seed = seedOfRun();

test(`what is told of torques holds on trains by chance (SEED=${seed})`, () => {
  let shared = 0;
  for (let k = 0; k < tries(400); k++) {
    const train = randomTrain(seed + k);
    const dice = new Dice(seed + k);
    const on = train.devices.filter((one) => isFriction(one) && dice.chance(0.5));
    const ruling = judge(motionOf(train), {
      on: new Set(on.map(({ name }) => name)),
      given: [{ member: train.input, speed: ONE }],
      reluctant: train.output,
    });
    if (ruling.solution.state !== 'optimal' || provedTorques(ruling, []).reluctant.num === 0)
      continue;
    const { slips } = observe(ruling);
    const all = torquesOf(ruling, slips, portsOf(ruling.motion));
    const where = `SEED=${seed + k} [${on.map(({ name }) => name)}]\n${trainText(train)}`;
    for (const [device, torque] of all.devices) {
      if (!isSpan(torque)) continue;
      shared++;
      // Each end of a span is a way to carry the load: the rest balances with it.
      for (const end of [torque.from, torque.to]) {
        if (end) expect(carriedWith(ruling, device.name, end), where).toBe(true);
      }
    }
    expectBalance(ruling, all, where);
  }
  expect(shared).toBeGreaterThan(20);
});

// The rows are written anew, and the solver is asked without a base.
function carriedWith(ruling: Ruling, device: string, torque: Rational): boolean {
  const { motion, question } = ruling;
  const balance = new TorqueBalance(motion);
  for (const row of motion.meshes) balance.pusher(row);
  const known = pushersOf(ruling, observe(ruling).slips).flatMap((row) => {
    const form = balance.pusher(row.slip);
    const fixed = row.device.name === device ? [givenRow(form, torque)] : [];
    const way = { ...form, coef: [row.pushes], sense: '>=', right: 0 } as const;
    return [...fixed, ...(row.sense === '>=' ? [way] : [])];
  });
  balance.pusher(motion.speedOf(motion.train.input));
  const load = balance.pusher(motion.speedOf(question.reluctant as string));
  const { reluctant } = provedTorques(ruling, []);
  return balance.settle([...known, givenRow(load, reluctant)], [load]) !== undefined;
}

// On each body that only settled torques act on, they come to nothing.
function expectBalance(ruling: Ruling, all: Torques, where: string): void {
  const { motion, question } = ruling;
  const pushes: (readonly [LinearForm, Quantity])[] = [
    ...[...all.given].map(([member, torque]) => [motion.speedOf(member), torque] as const),
    [motion.speedOf(question.reluctant as string), all.reluctant],
    ...motion.devices.map(
      ({ device, slip }) => [slip, all.devices.get(device) as Quantity] as const,
    ),
    ...motion.meshes.map((row) => [row, all.meshes.get(row.mesh) as Quantity] as const),
  ];
  for (const [column, name] of motion.names.entries()) {
    const here = pushes.flatMap(([{ at, coef }, torque]) => {
      const k = at.indexOf(column);
      return k < 0 ? [] : [{ by: fraction(coef[k] as Int), torque }];
    });
    const settled = here.flatMap(({ by, torque }) => (isSpan(torque) ? [] : times(torque, by)));
    if (settled.length < here.length) continue;
    expect(settled.reduce(plus, ZERO).num, `${name}: ${where}`).toBe(0);
  }
}
