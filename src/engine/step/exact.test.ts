import { afterEach, expect, it, vi } from 'vitest';
import { randomTrain } from '../../../test/random-train.ts';
import { Dice, tries } from '../../../test/dice.ts';
import { trainOf } from '../../../test/line.ts';
import { inertiasOf } from '../inertia/index.ts';
import { motionOf } from '../motion/index.ts';
import { BoxedPivots } from './boxed.ts';
import { Stepper } from './index.ts';

afterEach(() => vi.restoreAllMocks());

it('fractions find the motion that float64 finds', () => {
  for (let seed = 1; seed <= tries(12); seed++) {
    const floats = road(seed);
    const told = vi.spyOn(BoxedPivots.prototype, 'solve').mockReturnValue(false);
    const exacts = road(seed);
    expect(told).toHaveBeenCalled();
    told.mockRestore();
    for (const [k, speed] of floats.entries()) {
      const size = Math.max(1, ...floats.map(Math.abs));
      expect(Math.abs(speed - (exacts[k] as number)) / size).toBeLessThan(1e-7);
    }
  }
});

it('three on one reaction settle the speeds, and none takes more than it can', () => {
  const train = trainOf(
    'in drum; out other; first brake holds drum; second brake holds drum; sprag lets drum clockwise',
  );
  const stepper = new Stepper(motionOf(train), inertiasOf(train), ['drum']);
  for (const [first, second, torque, moves] of [
    [30, 20, -500, false], // the sprag holds that way, whatever it takes
    [30, 20, 49, false],
    [30, 20, 51, true],
  ] as const) {
    stepper.start(new Map([['drum', 0]]));
    stepper.pushing[0] = stepper.pulling[0] = first;
    stepper.pushing[1] = stepper.pulling[1] = second;
    stepper.torque[0] = torque;
    stepper.step(1e-3);
    expect(Math.abs(stepper.speed('drum')) > 1e-9).toBe(moves);
    expect(Math.abs(stepper.torqueOf(0))).toBeLessThanOrEqual(first);
    expect(Math.abs(stepper.torqueOf(1))).toBeLessThanOrEqual(second);
  }
});

function road(seed: number): number[] {
  const train = randomTrain(seed);
  const dice = new Dice(seed);
  const stepper = new Stepper(motionOf(train), inertiasOf(train), [train.input, train.output]);
  for (let step = 0; step < 12; step++) {
    for (const [k, { kind }] of train.devices.entries()) {
      if (kind === 'one-way') continue;
      stepper.pushing[k] = stepper.pulling[k] = dice.pick([0, 20, 500]);
    }
    stepper.torque[0] = dice.whole(-200, 200);
    stepper.step(1e-3);
  }
  return [train.input, train.output].map((member) => stepper.speed(member));
}
