import { describe, expect, it } from 'vitest';
import { inertiasOf } from '../src/engine/inertia/index.ts';
import { motionOf } from '../src/engine/motion/index.ts';
import { Stepper } from '../src/engine/step/index.ts';
import type { Device, Train } from '../src/engine/train/index.ts';
import { Dice, seedOfRun } from './dice.ts';
import { randomTrain } from './random-train.ts';
import { Tally } from './tally.ts';

// The laws of motion in time, on trains and roads by chance: capacities come and go, torques push
// and pull, and in no step is energy made, a one-way clutch passed or a capacity passed.
const seed = seedOfRun();
const TRAINS = 1000;
const STEPS = 80;

describe(`on ${TRAINS} trains and roads by chance (SEED=${seed})`, () => {
  const roads = Array.from({ length: TRAINS }, (_, k) => roadOf(seed + k));

  it('every step balances: what was put in is there, is heat, or is the step’s own loss', () => {
    for (const { seed: which, balance } of roads)
      expect([which, balance < 1e-9]).toEqual([which, true]);
  });

  it('no step makes energy: devices only heat, and the step only loses', () => {
    for (const { seed: which, made } of roads) expect([which, made < 1e-9]).toEqual([which, true]);
  });

  it('no one-way clutch is passed, and no device takes more than it can', () => {
    for (const { seed: which, passed } of roads)
      expect([which, passed < 1e-9]).toEqual([which, true]);
  });

  it('they grip, slip, hold and over-run', () => {
    const tally = new Tally({ grips: 500, holds: 400, 'over-runs': 350, slips: 450 });
    for (const { does } of roads) does.forEach((one) => tally.met(one));
    tally.enough();
  });
});

interface Road {
  readonly seed: number;
  /** Each the worst over the road, in parts of what passed. */
  readonly balance: number;
  readonly made: number;
  readonly passed: number;
  readonly does: readonly Doing[];
}

function roadOf(which: number): Road {
  const train = randomTrain(which);
  const dice = new Dice(which);
  const stepper = new Stepper(motionOf(train), inertiasOf(train), [train.input, train.output]);
  const does = new Set<Doing>();
  let [balance, made, passed] = [0, 0, 0];
  for (let step = 0; step < STEPS; step++) {
    if (step % 10 === 0) change(train, stepper, dice);
    const h = [1e-4, 1e-3, 5e-3][step % 3] as number;
    const before = stepper.energy();
    [stepper.work, stepper.loss] = [0, 0];
    stepper.heat.fill(0);
    stepper.step(h);
    const [after, work, loss] = [stepper.energy(), stepper.work, stepper.loss];
    const heat = stepper.heat.reduce((sum, one) => sum + one, 0);
    // What passes: also what each impulse alone would have done, where they work against each other.
    const impulses = train.devices.map((_, k) => h * Math.abs(stepper.torqueOf(k)));
    const alone = impulses.map((by, k) => by * stepper.mobility(k));
    const against = alone.reduce((sum, slip, k) => sum + (slip * (impulses[k] as number)) / 2, 0);
    const through = Math.abs(work) + heat + loss + after + before + against + 1e-9;
    balance = Math.max(balance, Math.abs(after - before - (work - heat - loss)) / through);
    const least = Math.min(loss, ...stepper.heat);
    made = Math.max(made, -least / through, (after - before - work) / through);
    for (const [k, device] of train.devices.entries()) {
      passed = Math.max(passed, excess(device, k, stepper, Math.max(...alone)));
      does.add(doing(device, k, stepper));
    }
  }
  return { seed: which, balance, made, passed, does: [...does] };
}

function change(train: Train, stepper: Stepper, dice: Dice): void {
  for (const [k, device] of train.devices.entries()) {
    if (device.kind === 'one-way') continue;
    const most = dice.pick([0, 0, 5, 80, 600, 4000]);
    stepper.pushing[k] = most;
    stepper.pulling[k] = device.kind === 'band' ? most / 2 : most;
    stepper.sticking[k] = dice.pick([1, 1, 1.2]);
  }
  stepper.torque[0] = dice.whole(-300, 300);
  stepper.torque[1] = dice.whole(-900, 900);
}

// Beyond its strength, in parts of it; or a slip against the way in which a one-way clutch holds.
function excess(device: Device, k: number, stepper: Stepper, alone: number): number {
  const torque = stepper.torqueOf(k);
  if (device.kind === 'one-way') {
    const sign = device.lets === 'clockwise' ? 1 : -1;
    const speed =
      Math.abs(stepper.speed(device.first)) + Math.abs(stepper.speed(device.second)) + alone + 1;
    return Math.max((-sign * stepper.slipOf(k)) / speed, -sign * torque);
  }
  const most = torque > 0 ? (stepper.pushing[k] as number) : (stepper.pulling[k] as number);
  const reach = most * (stepper.sticking[k] as number);
  return Math.abs(torque) <= reach ? 0 : (Math.abs(torque) - reach) / (reach + 1);
}

type Doing = 'grips' | 'holds' | 'over-runs' | 'slips';

function doing(device: Device, k: number, stepper: Stepper): Doing {
  const still = Math.abs(stepper.slipOf(k)) < 1e-9;
  if (device.kind === 'one-way') return still ? 'holds' : 'over-runs';
  return still ? 'grips' : 'slips';
}
