import { describe, expect, it } from 'vitest';
import { baseRadius, type Blank, type Engagement } from './blank.ts';
import { closeDistance } from './cut.ts';
import { angleOfInv, inv, PRESSURE_ANGLE } from './involute.ts';

const radians = (degrees: number) => (degrees * Math.PI) / 180;

// Machinery's Handbook, table of involute functions (from memory).
describe('the involute function', () => {
  it.each([
    [10, 0.001794],
    [14.5, 0.005545],
    [20, 0.014904],
    [25, 0.029975],
    [30, 0.053751],
    [45, 0.214602],
  ])('of %d° is %d', (degrees, value) => {
    expect(inv(radians(degrees))).toBeCloseTo(value, 6);
  });

  it('is undone', () => {
    for (let degrees = 0.01; degrees < 89; degrees += 0.37) {
      expect(angleOfInv(inv(radians(degrees)))).toBeCloseTo(radians(degrees), 9);
    }
    expect(angleOfInv(0)).toBe(0);
    expect(angleOfInv(-1)).toBe(0);
  });
});

// Stock-gear technical handbook, sections on profile-shifted spur gears and on internal gears,
// worked examples (from memory): module 3; 12 and 24 teeth, shifts 0.6 and 0.36; 16 teeth in
// a ring of 24, shifts 0 and 0.5.
describe('profile-shifted wheels', () => {
  it('mesh at the published distance outside one another', () => {
    const { a, b } = engaged([12, 0.6], [24, 0.36]);
    expect(closeDistance({ a, b, internal: false })).toBeCloseTo(56.4999, 3);
  });

  it('mesh at the published distance inside one another', () => {
    const { a, b } = engaged([16, 0], [24, 0.5], true);
    expect(closeDistance({ a, b, internal: true })).toBeCloseTo(13.1683, 3);
  });

  it('mesh at the pitch radii without shift, with one base pitch', () => {
    const { a, b } = engaged([17, 0], [43, 0]);
    expect(closeDistance({ a, b, internal: false })).toBeCloseTo((3 * 60) / 2, 9);
    const pitches = [a, b].map((blank) => (2 * Math.PI * baseRadius(blank)) / blank.teeth);
    expect(pitches[0]).toBeCloseTo(Math.PI * 3 * Math.cos(PRESSURE_ANGLE), 9);
    expect(pitches[1]).toBeCloseTo(pitches[0] as number, 9);
  });
});

type Cut = readonly [teeth: number, shift: number];

function engaged(one: Cut, other: Cut, internal = false): Engagement {
  const blank = ([teeth, shift]: Cut, ring: boolean): Blank => {
    return { member: '', teeth, ring, module: 3, shift, tip: 0, root: 0 };
  };
  return { a: blank(one, false), b: blank(other, internal), internal };
}
