import { describe, expect, it } from 'vitest';
import { trainOf } from '../../../test/line.ts';
import { ours } from '../../../test/trains.ts';
import { flow, isSpan } from '../flow/index.ts';
import { inertiasOf } from '../inertia/index.ts';
import { toNumber } from '../linear/index.ts';
import { motionOf } from '../motion/index.ts';
import { gearsOf } from '../train/index.ts';
import { Stepper } from './index.ts';

const TWO = 'in a; out b; pack joins a + b';

describe('two inertias and a clutch', () => {
  // J. E. Shigley and C. R. Mischke, Mechanical Engineering Design, "Energy considerations" of
  // clutches, from memory: t = ΔωJ₁J₂/(C(J₁ + J₂)), heat ½Δω²J₁J₂/(J₁ + J₂).
  const [first, second, torque, speed] = [0.2, 0.6, 45, 120];
  const together = (first * second) / (first + second);
  const { stepper } = moving(TWO, { a: first, b: second }, ['a', 'b'], { a: speed, b: 0 });
  stepper.pushing[0] = stepper.pulling[0] = torque;
  const h = 1e-4;
  let steps = 0;
  while (Math.abs(stepper.slipOf(0)) > 1e-9 && steps < 100_000) {
    stepper.step(h);
    steps++;
  }

  it('are together when the handbook says', () => {
    expect(steps * h).toBeGreaterThanOrEqual((speed * together) / torque - 1e-12);
    expect(steps * h).toBeLessThan((speed * together) / torque + h + 1e-12);
    expect(stepper.speed('a')).toBeCloseTo((first * speed) / (first + second), 9);
    expect(stepper.speed('b')).toBeCloseTo(stepper.speed('a'), 9);
  });

  it('turn as much into heat, less what the steps themselves lose', () => {
    const heat = (together * speed * speed) / 2;
    expect((stepper.heat[0] as number) + stepper.loss).toBeCloseTo(heat, 9);
    expect(stepper.loss / heat).toBeLessThan(0.02);
  });

  it('stay together, at rest against each other, whatever less than the capacity pulls', () => {
    stepper.torque[0] = 50; // of which the second needs three quarters
    for (let k = 0; k < 1000; k++) stepper.step(h);
    expect(Math.abs(stepper.slipOf(0))).toBeLessThan(1e-9);
    expect(stepper.torqueOf(0)).toBeCloseTo(-37.5, 9);
    stepper.torque[0] = 80;
    for (let k = 0; k < 1000; k++) stepper.step(h);
    expect(stepper.slipOf(0)).toBeGreaterThan(1);
    expect(stepper.torqueOf(0)).toBe(-45);
  });
});

it('steps of a millisecond lose less than a fiftieth of the heat of a shift by themselves', () => {
  const { stepper } = moving(TWO, { a: 0.3, b: 4 }, ['a', 'b'], { a: 400, b: 250 });
  stepper.pushing[0] = stepper.pulling[0] = 150;
  for (let k = 0; k < 500; k++) stepper.step(1e-3);
  expect(Math.abs(stepper.slipOf(0))).toBeLessThan(1e-9);
  expect(stepper.loss).toBeGreaterThan(0);
  expect(stepper.loss / (stepper.heat[0] as number)).toBeLessThan(0.02);
});

it('a device that sticks takes more until it slips', () => {
  const { stepper } = moving(TWO, { a: 1, b: 1 }, ['a', 'b']);
  stepper.pushing[0] = stepper.pulling[0] = 10;
  stepper.sticking[0] = 1.5;
  stepper.torque[0] = 28;
  stepper.step(1e-3);
  expect(stepper.slipOf(0)).toBeCloseTo(0, 12);
  expect(stepper.torqueOf(0)).toBeCloseTo(-14, 12);
  stepper.torque[0] = 32;
  stepper.step(1e-3);
  stepper.step(1e-3);
  expect(stepper.slipOf(0)).toBeGreaterThan(0);
  expect(stepper.torqueOf(0)).toBe(-10);
});

it('a band holds one way better', () => {
  const line = 'in drum; out other; band holds drum';
  for (const [push, held] of [
    [30, true],
    [-30, false],
  ] as const) {
    const { stepper } = moving(line, { drum: 0.1, other: 1 }, ['drum']);
    stepper.pushing[0] = 20; // as it drags the drum clockwise
    stepper.pulling[0] = 50;
    stepper.torque[0] = push;
    stepper.step(1e-3);
    expect(Math.abs(stepper.speed('drum')) < 1e-12).toBe(held);
  }
});

describe('a one-way clutch', () => {
  const line = 'in inner; out outer; roller lets inner clockwise in outer';
  it('over-runs one way and holds the other, and hands on what it holds', () => {
    const { stepper } = moving(line, { inner: 1, outer: 3 }, ['inner']);
    stepper.torque[0] = 8;
    for (let k = 0; k < 100; k++) stepper.step(1e-3);
    expect([stepper.speed('inner'), stepper.speed('outer')]).toEqual([expect.closeTo(0.8, 12), 0]);
    stepper.torque[0] = -8;
    for (let k = 0; k < 300; k++) stepper.step(1e-3);
    // It catches at 0, then both go together: 8 N·m on 4 kg·m² for 0.2 s.
    expect(stepper.speed('outer')).toBeCloseTo(-0.4, 12);
    expect(stepper.slipOf(0)).toBeCloseTo(0, 12);
    expect(stepper.torqueOf(0)).toBeCloseTo(6, 9);
  });

  it('slips back where its strength ends', () => {
    const { stepper } = moving(line, { inner: 1, outer: 3 }, ['inner']);
    stepper.pushing[0] = 5;
    stepper.torque[0] = -8;
    stepper.step(1e-3);
    expect(stepper.torqueOf(0)).toBe(5);
    expect(stepper.slipOf(0)).toBeLessThan(0);
  });
});

describe('a steady stretch of each gear of ours', () => {
  it.each(['avocet-four-speed', 'kestrel-three-speed', 'heron-eight-speed', 'albatross-ten-speed'])(
    '%s: the ratios and, with the inertias taken off, the torques of flow',
    (name) => {
      const train = ours(name);
      for (const { on } of gearsOf(train)) {
        const { drive } = flow(train, on);
        if (!drive.ratio) continue;
        // A load at the output, so that a one-way clutch that is to hold has something to hold.
        const inertias = inertiasOf(train, new Map([[train.output, 50]]));
        const stepper = new Stepper(motionOf(train), inertias, [train.input, train.output]);
        for (const [k, device] of train.devices.entries()) {
          if (device.kind === 'one-way') continue;
          stepper.pushing[k] = stepper.pulling[k] = on.includes(device.name) ? 5000 : 0;
        }
        const ratio = toNumber(drive.ratio);
        stepper.torque[0] = 100;
        for (let k = 0; k < 200; k++) stepper.step(1e-3);
        for (const [member, speed] of drive.speeds) {
          if (isSpan(speed)) continue;
          const is = stepper.speed(member) / stepper.speed(train.input);
          expect(Math.abs(is - toNumber(speed))).toBeLessThan(1e-12 * (1 + Math.abs(is)));
        }
        // The load that lets nothing speed up: then torques are flow's.
        stepper.torque[1] = -100 * ratio;
        stepper.step(1e-3);
        for (const [k, device] of train.devices.entries()) {
          const torque = drive.devices.get(device.name)?.torque;
          if (!torque || isSpan(torque)) continue;
          expect(stepper.torqueOf(k)).toBeCloseTo(100 * toNumber(torque), 7);
        }
      }
    },
  );
});

it('a drive of the four-speed is the same to the last bit, on every run and machine', () => {
  expect(hashOf(throughTheGears())).toBe(hashOf(throughTheGears()));
  expect(hashOf(throughTheGears())).toBe('eb842ace');
});

it('refuses what has no inertia behind it, and friction without an end', () => {
  const train = trainOf(TWO);
  const inertias = inertiasOf(train, new Map([['a', 0]]));
  expect(() => new Stepper(motionOf(train), inertias, ['b'])).toThrow('some motion: a');
  const { stepper } = moving(TWO, { a: 1, b: 1 }, ['a']);
  stepper.pushing[0] = Infinity;
  expect(() => stepper.step(1e-3)).toThrow('has an end to its strength');
});

/** From rest through the gears of the four-speed, each device filling in a tenth of a second. */
function throughTheGears(): Float64Array {
  const train = ours('avocet-four-speed');
  const inertias = inertiasOf(
    train,
    new Map([
      ['turbine shaft', 0.2],
      ['ring flange', 12],
    ]),
  );
  const stepper = new Stepper(motionOf(train), inertias, [train.input, train.output]);
  const gears = train.ranges[0]?.gears ?? [];
  const trace = new Float64Array(gears.length * 1000 * 2);
  for (let step = 0; step < gears.length * 1000; step++) {
    const { on = [] } = gears[Math.floor(step / 1000)] ?? {};
    for (const [k, device] of train.devices.entries()) {
      if (device.kind === 'one-way') continue;
      const to = on.includes(device.name) ? 1000 : 0;
      const from = stepper.pulling[k] as number;
      stepper.pushing[k] = stepper.pulling[k] = from + Math.max(-10, Math.min(10, to - from));
    }
    stepper.torque[0] = 180;
    stepper.torque[1] = -60 - 0.01 * stepper.speed(train.output) * stepper.speed(train.output);
    stepper.step(1e-3);
    trace[2 * step] = stepper.speed(train.input);
    trace[2 * step + 1] = stepper.speed(train.output);
  }
  return trace;
}

// Fowler, Noll and Vo's hash of the bytes, 32 bits.
function hashOf(numbers: Float64Array): string {
  let hash = 0x81_1c_9d_c5;
  for (const byte of new Uint8Array(numbers.buffer)) hash = Math.imul(hash ^ byte, 0x01_00_01_93);
  return (hash >>> 0).toString(16);
}

function moving(
  line: string,
  kgm2: Readonly<Record<string, number>>,
  ports: readonly string[],
  start: Readonly<Record<string, number>> = {},
): { readonly stepper: Stepper } {
  const train = trainOf(line);
  const inertias = inertiasOf(train, new Map(Object.entries(kgm2)));
  const stepper = new Stepper(motionOf(train), inertias, ports);
  if (Object.keys(start).length > 0) stepper.start(new Map(Object.entries(start)));
  return { stepper };
}
