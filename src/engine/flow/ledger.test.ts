import { describe, expect, it } from 'vitest';
import { toNumber } from '../linear/index.ts';
import { isSpan } from '../reckon/index.ts';
import { OURS, ours } from '../../../test/trains.ts';
import { gearsOf } from '../train/index.ts';
import { flow } from './flow.ts';
import { ledgerOf, pushesOf } from './ledger.ts';

describe('the ledger', () => {
  it.each(OURS)('of %s adds up in every gear, in floats too', (name) => {
    const train = ours(name);
    let written = 0;
    for (const { on } of gearsOf(train)) {
      const { drive, coast } = flow(train, on);
      for (const working of [drive, coast]) {
        const { bodies, meshes } = ledgerOf(train, pushesOf(train, working));
        written += bodies.length;
        for (const { entries } of bodies) {
          if (entries.some(({ torque }) => isSpan(torque))) continue;
          const sum = entries.reduce((total, { torque }) => {
            return isSpan(torque) ? total : total + toNumber(torque);
          }, 0);
          expect(sum).toBeCloseTo(0, 9);
        }
        for (const { terms } of meshes) {
          const sum = terms.reduce((total, { coefficient, speed }) => {
            return total + coefficient * toNumber(speed);
          }, 0);
          expect(sum).toBeCloseTo(0, 9);
        }
      }
    }
    expect(written).toBeGreaterThan(0);
  });

  it('says who pushes a held carrier: the set one way, its one-way clutch the other', () => {
    const train = ours('kestrel-three-speed');
    const { bodies } = ledgerOf(train, pushesOf(train, flow(train, ['forward clutch']).drive));
    // 17/7 − 1, the reaction of first gear: output torque less input torque.
    expect(bodies.find(({ member }) => member === 'rear.carrier')?.entries).toEqual([
      { by: 'set', name: 'rear', torque: { num: -10, den: 7 } },
      { by: 'device', name: 'low sprag', torque: { num: 10, den: 7 } },
    ]);
  });

  it('throws where the torques do not balance', () => {
    const train = ours('kestrel-three-speed');
    const pushes = pushesOf(train, flow(train, ['forward clutch']).drive);
    const torn = new Map(pushes.devices).set('low sprag', { num: 1, den: 1 });
    expect(() => ledgerOf(train, { ...pushes, devices: torn })).toThrow('do not balance');
  });
});
