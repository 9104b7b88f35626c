import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fraction, fromText, toNumber, toText } from '../../engine/linear/index.ts';
import type { BandSetting } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { type Length, lengthFrom } from '../length/index.ts';
import { judgeBand, readBands } from './index.ts';
import { Tally } from '../../../test/tally.ts';

// Invented bands: one with a screw, one whose rod sets it.
const SCREW: BandSetting = {
  device: 'low band',
  pitch: '1.50 mm',
  lever: 0.5,
  limits: { clearance: { least: '1.30 mm', most: '1.70 mm' } },
};
const ROD: BandSetting = {
  device: 'second band',
  limits: { travel: { least: '2.80 mm', most: '3.60 mm' } },
  shelf: { part: 'servo rod', fitted: '61.0 mm', sizes: ['60.0 mm', '61.0 mm', '62.0 mm'] },
};
const lengths = (texts: readonly string[]) => texts.map((text) => lengthFrom(text) as Length);
const turns = (text: string) => ({ turns: fromText(text) ?? fraction(0) });

describe('a band with a screw', () => {
  it('is clear of its drum by turns × pitch × lever ratio', () => {
    // By hand: 2 × 1.50 mm × 0.5 = 1.50 mm; spread over 330° = 5.76 rad it is 0.26 mm.
    const { clearance, allRound, verdict, backOff } = judgeBand(SCREW, turns('2'), 330);
    expect(clearance && toText(clearance.um)).toBe('1500');
    expect(allRound && toNumber(allRound.um)).toBeCloseTo(1500 / ((330 * Math.PI) / 180), 6);
    expect(verdict).toBe('inside');
    expect(backOff && toText(backOff.best)).toBe('2');
  });

  it('takes a pitch from threads an inch', () => {
    // 18 threads an inch, 2 1/2 turns: 2.5/18 in = 3.528 mm.
    const { travel } = judgeBand({ ...SCREW, pitch: '1/18 in' }, turns('2.5'));
    expect(travel && toNumber(travel.clearance.um)).toBeCloseTo((2.5 * 25400) / 18, 9);
  });

  it('keeps no finer digits than an eighth of a turn', () => {
    const { travel } = judgeBand(SCREW, turns('2.5'));
    expect(travel && toText(travel.clearance.stepUm)).toBe('375/2');
  });

  it('offers eighths of a turn, or what is exact where no eighth is inside', () => {
    const narrow = { clearance: { least: '1.54 mm', most: '1.56 mm' } };
    expect(judgeBand({ ...SCREW, limits: narrow }, {}).backOff?.best).toEqual(fraction(31, 15));
  });
});

describe('a band with a rod', () => {
  it('has the rod chosen that brings the travel nearest to the middle', () => {
    const { verdict, selection } = judgeBand(ROD, { travel: lengths(['4.12 mm', '4.16 mm']) });
    expect(verdict).toBe('too big');
    expect(selection && toText(selection.best.size.um)).toBe('62000');
    expect(selection && toNumber(selection.best.predicted.um)).toBe(3140);
  });

  it('has the best of any shelf chosen, by trying each, in whatever order it was read', () => {
    const um = fc.integer({ min: 500, max: 6000 });
    const shelves = fc.uniqueArray(fc.integer({ min: 560, max: 660 }), {
      minLength: 1,
      maxLength: 8,
    });
    const tally = new Tally({ chosen: 50, kept: 100 });
    fc.assert(
      fc.property(shelves, fc.array(um, { minLength: 1, maxLength: 4 }), (sizes, reads) => {
        const shelf = {
          part: 'servo rod' as const,
          fitted: '61.0 mm',
          sizes: sizes.map((tenths) => `${(tenths / 10).toFixed(1)} mm`),
        };
        const travel = reads.map((its) => ({ um: fraction(its), stepUm: fraction(1) }));
        const one = judgeBand({ ...ROD, shelf }, { travel });
        const other = judgeBand({ ...ROD, shelf }, { travel: travel.toReversed() });
        expect([other.verdict, other.selection, other.remarks]).toEqual([
          one.verdict,
          one.selection,
          one.remarks,
        ]);
        tally.met(one.selection ? 'chosen' : 'kept');
        if (!one.selection) return;
        const mean = reads.reduce((a, b) => a + b, 0) / reads.length;
        const off = sizes.map((tenths) => Math.abs(mean + 61_000 - 100 * tenths - 3200));
        const { predicted } = one.selection.best;
        expect(Math.abs(toNumber(predicted.um) - 3200)).toBeCloseTo(Math.min(...off), 6);
      }),
      { seed: 5, numRuns: 200 },
    );
    tally.enough();
  });
});

describe('nonsense about a band', () => {
  it.each([
    ['nothing at all', SCREW, {}, ['nothing read']],
    [
      'turns without a pitch',
      { device: 'x', limits: { travel: { least: '2 mm', most: '4 mm' } } },
      turns('2.5'),
      ['no pitch'],
    ],
    ['no turns at all', SCREW, turns('0'), ['no slack']],
    ['below nothing', ROD, { travel: lengths(['-3.00 mm']) }, ['no slack']],
    ['inches for millimetres', ROD, { travel: lengths(['3.20 in']) }, ['other unit']],
    ['millimetres for inches', ROD, { travel: lengths(['0.125 mm']) }, ['other unit']],
    ['a pitch in inches', { ...SCREW, pitch: '1.50 in' }, turns('2'), ['other unit']],
    ['travels that differ', ROD, { travel: lengths(['2.80 mm', '3.70 mm']) }, ['uneven']],
    ['no limits', { device: 'x', pitch: '1.50 mm' }, turns('2'), ['no limit']],
    [
      'limits turned round',
      { ...SCREW, limits: { travel: { least: '3 mm', most: '2 mm' } } },
      turns('2'),
      ['limits turned round'],
    ],
    [
      'turns and a travel that differ',
      SCREW,
      { ...turns('2'), travel: lengths(['3.3 mm']) },
      ['turns and travel differ'],
    ],
    ['beyond the shelf', ROD, { travel: lengths(['9.00 mm']) }, ['shelf too short']],
  ] as const)('%s is said, and selects nothing wrong', (_, band, readings, said) => {
    const { remarks, selection } = judgeBand(band, readings);
    expect(remarks.map(({ remark }) => remark)).toEqual(said);
    if (said[0] !== 'turns and travel differ' && said[0] !== 'shelf too short') {
      expect(selection).toBeUndefined();
    }
  });
});

describe('a file of readings of bands', () => {
  const { train } = readTrain(`holdturn: 1
input: crank
output: set.carrier
sets: { set: { sun: 30, ring: 66 } }
joined: { crank: [set.sun] }
devices: { ring band: { band: set.ring } }
bands: { ring band: { pitch: 1.50 mm } }
`);

  it.each([
    ['ring band: { turns: two }', 'expected'],
    ['ring band: { turns: -2 }', 'expected'],
    ['ring band: { turns: .nan }', 'expected'],
    ['ring band: { travel: [3.10] }', 'expected'],
    ['ring band: 2.5', 'expected'],
    ['ring bnad: { turns: 2 }', 'no band'],
  ])('%s: %s', (text, problem) => {
    const { readings, problems } = readBands(text, train as NonNullable<typeof train>);
    expect([readings, problems[0]?.problem]).toEqual([[], problem]);
  });

  it('is read exactly', () => {
    const { readings } = readBands('ring band: { turns: 2.125, travel: [3.10 mm] }');
    expect(readings[0]?.turns).toEqual(fraction(17, 8));
    expect(readings[0]?.travel?.map(({ um }) => toText(um))).toEqual(['3100']);
  });
});
