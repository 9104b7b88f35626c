import { describe, expect, it } from 'vitest';
import { toNumber, toText } from '../../engine/linear/index.ts';
import type { Preload } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { judgePreload, type PreloadReadings, readPreloads } from './index.ts';

// Printed in the US Army's TM 9-2320-302-34, page 0082 00-12 (a heavy truck's axle, read for this):
// the pull of a spring scale is multiplied by the radius; new bearings 5-45 lb-in (0.56-5.08 Nm),
// used ones 10-30 lb-in (1.13-3.39 Nm); a thicker spacer lowers the preload.
const AXLE: Preload = {
  bearings: 'drive gear',
  turning: { least: '5 lb-in', most: '45 lb-in', source: 'TM 9-2320-302-34, p. 0082 00-12' },
  used: { least: '10 lb-in', most: '30 lb-in', source: 'TM 9-2320-302-34, p. 0082 00-12' },
};
// Invented.
const SIDE: Preload = {
  bearings: 'side bearings',
  turning: { least: '0.6 Nm', most: '1.4 Nm' },
  squeeze: { least: '0.04 mm', most: '0.08 mm' },
  shelf: { part: 'shim', fitted: '1.00 mm', sizes: ['1.00 mm', '1.10 mm', '1.20 mm', '1.30 mm'] },
};

function read(text: string): PreloadReadings {
  const { readings, problems } = readPreloads(`it: { ${text} }`);
  expect(problems).toEqual([]);
  return readings[0] as PreloadReadings;
}
const judged = (text: string, preload = SIDE) => judgePreload(preload, read(text));
const said = (text: string, preload = SIDE) =>
  judged(text, preload).remarks.map(({ remark }) => remark);

describe('a preload by its turning torque', () => {
  it('has limits that are those printed in newton metres', () => {
    const { limit } = judged('turning: [1 Nm]', AXLE);
    const { limit: used } = judged('turning: [1 Nm], bearings: used', AXLE);
    const ends = [limit?.least, limit?.most, used?.least, used?.most];
    expect(ends.map((its) => its && toNumber(its.nm).toFixed(2))).toEqual([
      '0.56',
      '5.08',
      '1.13',
      '3.39',
    ]);
  });

  it('is force times radius, by a spring scale', () => {
    // 4 lbf at 2.5 in: 10 lb-in, at the limit of used bearings and on it.
    const its = judged('pull: { force: [4 lbf, 4 lbf], radius: 2.5 in }, bearings: used', AXLE);
    expect([its.by, its.verdict]).toEqual(['pull', 'inside']);
    expect(its.torque && its.limit?.least && toText(its.torque.nm)).toBe(
      toText(its.limit?.least?.nm as NonNullable<typeof its.torque>['nm']),
    );
    expect(judged('pull: { force: [20 N], radius: 50 mm }').torque?.nm).toEqual({ num: 1, den: 1 });
  });

  it.each([
    ['turning: [8 lb-in]', 'inside'],
    ['turning: [8 lb-in], bearings: used', 'too small'],
    ['turning: [35 lb-in]', 'inside'],
    ['turning: [35 lb-in], bearings: used', 'too big'],
    ['turning: [45 lb-in]', 'inside'],
    ['turning: [46 lb-in]', 'too big'],
  ])('%s is %s', (text, verdict) => {
    expect(judged(text, AXLE).verdict).toBe(verdict);
  });
});

describe('a preload by the play', () => {
  it('takes the fitted shim, the play and the squeeze wanted', () => {
    // 1.00 + 0.14 + 0.06 mm: 1.20 mm squeezes by 0.06 mm.
    const { tighter, selection } = judged('gap: [0.14 mm, 0.14 mm]');
    expect([tighter?.leastUm, tighter?.mostUm].map((um) => um && toText(um))).toEqual([
      '180',
      '220',
    ]);
    expect(selection && toText(selection.best.size.um)).toBe('1200');
    expect(selection && toText(selection.best.predicted.um)).toBe('-60');
  });

  it('is squeezed by a spacer that is thinner', () => {
    const spacer = {
      part: 'spacer',
      fitted: '5.00 mm',
      sizes: ['4.70 mm', '4.80 mm', '5.00 mm', '5.20 mm'],
    } as const;
    const { selection } = judged('gap: [0.14 mm]', { ...SIDE, shelf: spacer });
    expect(selection && toText(selection.best.size.um)).toBe('4800');
    expect(selection?.best.verdict).toBe('inside');
  });

  it('that is none tells nothing, and nothing is chosen', () => {
    const { selection, tighter, remarks } = judged('gap: [0.00 mm]');
    expect([selection, tighter, remarks]).toEqual([
      undefined,
      undefined,
      [{ remark: 'gap hidden' }],
    ]);
  });
});

describe('it is said', () => {
  it.each([
    ['turning: [1.0 Nm]', SIDE, []],
    ['bearings: new', SIDE, ['nothing read']],
    ['turning: [10 Nm]', SIDE, ['other torque unit']],
    ['turning: [1.0 Nm], bearings: used', SIDE, ['no limit']],
    ['turning: [1.0 Nm]', { ...SIDE, turning: { source: 'p. 1' } }, ['no limit']],
    ['turning: [1.0 Nm]', { ...SIDE, turning: { least: '2 Nm', most: '1 Nm' } }, ['no limit']],
    ['turning: [1.0 Nm], pull: { force: [30 N], radius: 50 mm }', SIDE, ['wrench and pull differ']],
    ['gap: [0.14 mm]', { bearings: 'x' }, ['no limit']],
    ['gap: [0.14 mm]', { ...SIDE, squeeze: { most: '0.08 mm' } }, ['one limit']],
    ['gap: [0.90 mm]', SIDE, ['shelf too short']],
  ] as const)('of %s', (text, preload, remarks) => {
    expect(said(text, preload)).toEqual(remarks);
  });
});

describe('a file of readings of preloads', () => {
  const { train } = readTrain(`holdturn: 1
input: crank
output: set.carrier
sets: { set: { sun: 30, ring: 66 } }
joined: { crank: [set.sun] }
preload: { side bearings: { turning: { least: 0.6 Nm, most: 12 lb·in } } }
`);

  it.each([
    ['side bearings: { turning: [1.2] }', 'expected'],
    ['side bearings: { turning: [1.2 mm] }', 'expected'],
    ['side bearings: { pull: { force: [22 N] } }', 'missing key'],
    ['side bearings: { pull: { force: [22 kg], radius: 45 } }', 'expected'],
    ['side bearings: [1.2 Nm]', 'expected'],
    ['side bearings: { bearings: old }', 'expected'],
    ['side bearing: { turning: [1.2 Nm] }', 'no preload'],
  ])('%s: %s', (text, problem) => {
    const { readings, problems } = readPreloads(text, train as NonNullable<typeof train>);
    expect([readings, problems[0]?.problem]).toEqual([[], problem]);
  });
});
