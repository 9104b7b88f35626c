import { describe, expect, it } from 'vitest';
import { fraction, toNumber } from '../../engine/linear/index.ts';
import { type Limit, strengthNm } from '../../engine/margin/index.ts';
import { readTrain, trainText } from '../../engine/trainfile/index.ts';
import { limitsOf } from './index.ts';

const FILE = `
holdturn: 1
input: crank
output: set.carrier
sets: { set: { sun: 30, ring: 66 } }
joined: { crank: [set.sun] }
devices:
  ring brake: { brake: set.ring }
  ring band: { band: set.ring }
  ring sprag: { one-way: [set.ring, case], lets: clockwise }
  sun clutch: { clutch: [crank, set.ring] }
capacities:
  ring brake:
    { faces: 10, friction: 0.13, lining mm: [136, 100], piston mm: [130, 70], springs N: 800, by: TW }
  ring band:
    { drum mm: 130, wrap degrees: 320, friction: 0.12, servo mm: [60, 20], springs N: 0, tightens: clockwise }
  ring sprag: { torque Nm: 900.5, source: a manual }
  sun clutch: { clockwise Nm: 300, anticlockwise Nm: 200 }
engine: { torque Nm: 220, stall ratio: 2.1, by: TW }
`;

const { train, problems } = readTrain(FILE);
const limits = new Map(train && limitsOf(train).map((limit) => [limit.device, limit]));
const at = (device: string, kpa: number) => {
  const { clockwise, anticlockwise } = limits.get(device) as Limit;
  return [clockwise, anticlockwise].map((way) => toNumber(strengthNm(way, fraction(kpa))));
};

describe('what devices can put on their first-named members, clockwise and anticlockwise', () => {
  it('is read from a file, and written again', () => {
    expect(problems).toEqual([]);
    expect(train?.engine).toEqual({ 'torque Nm': 220, 'stall ratio': 2.1, by: 'TW' });
    expect(readTrain(train ? trainText(train) : '').train).toEqual(train);
  });

  it('is the same both ways for plates, and rounded down by next to nothing', () => {
    // 230, 594 and 1031 N m: common practice, no source.
    for (const [kpa, torque] of [
      [400, 230],
      [900, 594],
      [1500, 1031],
    ] as const) {
      const [clockwise = 0, anticlockwise] = at('ring brake', kpa);
      expect(Math.round(clockwise)).toBe(torque);
      expect(anticlockwise).toBe(clockwise);
    }
    expect(at('ring brake', 80)).toEqual([0, 0]);
  });

  it('is the greater against the push that drags a band towards its anchor', () => {
    // A drum that is pushed clockwise is held by an anticlockwise torque.
    const [clockwise = 0, anticlockwise = 0] = at('ring band', 900);
    expect(anticlockwise / clockwise).toBeCloseTo(Math.exp((0.12 * 320 * Math.PI) / 180), 4);
  });

  it('is what was written, at any pressure, for a torque', () => {
    expect(at('ring sprag', 0)[0]).toBe(900.5);
    expect(at('sun clutch', 0)).toEqual([200, 300]);
    expect(at('sun clutch', 1500)).toEqual([200, 300]);
  });
});
