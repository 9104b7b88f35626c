import { describe, expect, test } from 'vitest';
import { toText } from '../linear/index.ts';
import type { Train } from '../train/index.ts';
import { readTrain } from '../trainfile/index.ts';
import { type Limit, marginsOf, type SideMargin } from './index.ts';

const whole = (num: number) => ({ num, den: 1 });
const fixed = (num: number) => ({ fixedNm: whole(num), perKpaNm: whole(0), fromKpa: whole(0) });

// Both outputs of a set are locked to each other: the lock carries any part of what they share out.
function locked(members: string): Train {
  const { train, problems } = readTrain(`
holdturn: 1
input: shaft
output: [left, right]
sets: { main: { sun: 30, ring: 66, planets: 3 } }
joined: { shaft: [main.carrier], left: [main.sun], right: [main.ring] }
devices: { lock: { clutch: [${members}] } }
ranges: { D: { "1": [lock] } }
`);
  if (!train) throw new Error(JSON.stringify(problems));
  return train;
}

function driven(train: Train, limits: readonly Limit[]): SideMargin {
  const load = { pressureKpa: whole(400), engineNm: whole(160), stallRatio: whole(1) };
  const [gear] = marginsOf(train, limits).at(load);
  if (!gear) throw new Error('the train has a gear');
  return gear.drive;
}

describe('a device that may be pushed either way', () => {
  const limits = [{ device: 'lock', clockwise: fixed(70), anticlockwise: fixed(90) }];
  // Of 160 N·m the sun's side shares 50 and the ring's 110: the lock takes from −50 to 110 or back.
  test('is held against its strength the way in which it may be pushed harder', () => {
    const [lock] = driven(locked('left, right'), limits).devices;
    expect(lock?.mustNm).toEqual({ from: whole(-50), to: whole(110) });
    expect(lock?.canNm && toText(lock.canNm)).toBe('70');
  });
  test('so too where its members change places', () => {
    const [lock] = driven(locked('right, left'), limits).devices;
    expect(lock?.mustNm).toEqual({ from: whole(-110), to: whole(50) });
    expect(lock?.canNm && toText(lock.canNm)).toBe('90');
  });
});
