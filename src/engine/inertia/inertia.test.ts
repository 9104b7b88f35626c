import { expect, it } from 'vitest';
import { trainOf } from '../../../test/line.ts';
import { ours } from '../../../test/trains.ts';
import { assemble } from '../train/index.ts';
import { ESTIMATE, inertiasOf } from './index.ts';

const kestrel = ours('kestrel-three-speed');

it('gives every body but the case one, and says which are estimated', () => {
  const inertias = inertiasOf(kestrel, new Map([['counter gear', 0.5]]));
  const labels = assemble(kestrel).bodies.map(({ label }) => label);
  expect([...inertias.keys()]).toEqual(labels.filter((label) => label !== 'case'));
  // The counter gear is one body with the main shaft.
  expect(inertias.get('main shaft')).toEqual({ kgm2: 0.5, from: 'given' });
  for (const [label, { kgm2, from }] of inertias) {
    expect([label, kgm2 > 0]).toEqual([label, true]);
    expect(from).toBe(label === 'main shaft' ? 'given' : 'estimated');
  }
});

it('estimates a wheel as a disc of steel as thick as its teeth are wide', () => {
  const inertias = inertiasOf(trainOf('set 40:80 x3; in set.sun; out set.carrier'));
  // ½ m r², r = 40 · 1.5 mm / 2 = 30 mm: 7850 · π · 0.03² · 0.025 = 0.5549 kg.
  const disc = 0.5 * 0.554_883_8 * 0.03 ** 2;
  expect(inertias.get('set.sun')?.kgm2).toBeCloseTo(disc + ESTIMATE.shaftKgm2, 9);
  // Three planets of 20: each r = 15 mm, a sixteenth of the sun's; at 45 mm they weigh on the carrier.
  expect(inertias.get('set.planet')?.kgm2).toBeCloseTo((3 * disc) / 16, 9);
  const carried = 3 * (0.554_883_8 / 4) * 0.045 ** 2;
  expect(inertias.get('set.carrier')?.kgm2).toBeGreaterThanOrEqual(carried);
});

it('refuses what is no inertia, by name', () => {
  for (const wrong of [-1, Number.NaN, Infinity]) {
    expect(() => inertiasOf(kestrel, new Map([['main shaft', wrong]]))).toThrow('main shaft');
  }
});
