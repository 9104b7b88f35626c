import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fraction } from '../../engine/linear/index.ts';
import { asWritten, digitsIn, type Length, lengthFrom, meanOf } from '../length/index.ts';
import {
  type Bounds,
  boundsOf,
  type Limited,
  meanGap,
  readingRemarks,
  toldApart,
  unitMeant,
  usableBounds,
  verdictOf,
  verdictOfReading,
} from './index.ts';

const read = (text: string) => lengthFrom(text) as Length;
const limits = (least?: string, most?: string) =>
  boundsOf({ ...(least && { least }), ...(most && { most }) }) as Limited;

describe('two digits exchanged', () => {
  const of = (...texts: string[]) => {
    const its = limits('0.99 mm', '1.44 mm');
    return readingRemarks(meanGap(texts.map(read), undefined), its, 'round').map((remark) => {
      return remark.remark === 'digits swapped' ? asWritten(remark.meant) : remark.remark;
    });
  };

  it('are asked about where one reading would then stand with the others', () => {
    expect(of('1.40 mm', '1.41 mm', '1.14 mm')).toEqual(['1.41 mm']);
    expect(of('1.14 mm', '1.40 mm', '1.41 mm', '1.39 mm')).toEqual(['1.41 mm']);
  });

  it('are not, where the reading was read twice, where no exchange helps, nor of two', () => {
    expect(of('1.40 mm', '1.41 mm', '1.14 mm', '1.14 mm')).toEqual(['uneven']);
    expect(of('1.40 mm', '1.41 mm', '1.22 mm')).toEqual(['uneven']);
    expect(of('1.41 mm', '1.14 mm')).toEqual(['uneven']);
    expect(of('1.40 mm', '1.41 mm', '1.39 mm')).toEqual([]);
  });
});

describe('at a limit', () => {
  it.each([
    ['0.05 mm', undefined, '0.05 mm', 'inside'],
    ['0.051 mm', undefined, '0.05 mm', 'too big'],
    // Manuals print 0.05 mm (0.002 in): 0.0508 mm, which no dial in inches tells from it.
    ['0.002 in', undefined, '0.05 mm', 'inside'],
    ['2 thou', undefined, '0.05 mm', 'inside'],
    ['0.0020 in', undefined, '0.05 mm', 'inside'],
    ['0.0021 in', undefined, '0.05 mm', 'too big'],
    ['0.003 in', undefined, '0.05 mm', 'too big'],
    // A tool that tells hundredths of an inch settles nothing here, and is let off nothing.
    ['0.05 in', undefined, '1.20 mm', 'too big'],
    ['0.012 in', '0.31 mm', undefined, 'too small'],
    ['0.012 in', '0.305 mm', undefined, 'inside'],
    ['0.30 mm', '0.012 in', undefined, 'inside'],
  ] as const)('%s with %s to %s is %s', (text, least, most, verdict) => {
    expect(verdictOfReading(read(text), limits(least, most))).toBe(verdict);
  });

  it('nothing outside reads as if it were the limit', () => {
    const most = limits(undefined, '0.05 mm');
    const mean = meanOf(['0.05 mm', '0.05 mm', '0.06 mm'].map(read));
    expect([verdictOfReading(mean, most), digitsIn(toldApart(mean, most), 'mm')]).toEqual([
      'too big',
      '0.053',
    ]);
    expect(digitsIn(toldApart(read('0.05 mm'), most), 'mm')).toBe('0.05');
  });

  it('is as it is reckoned, exactly, within one unit', () => {
    const um = fc.integer({ min: 0, max: 400 });
    fc.assert(
      fc.property(um, um, um, (its, a, b) => {
        const at = (n: number): Length => {
          return { um: fraction(n), stepUm: fraction(10), written: 'mm' };
        };
        const bounds: Limited = { least: at(Math.min(a, b)), most: at(Math.max(a, b)) };
        const verdict =
          its < Math.min(a, b) ? 'too small' : its > Math.max(a, b) ? 'too big' : 'inside';
        expect(verdictOfReading(at(its), bounds)).toBe(verdict);
        expect(verdictOf(fraction(its), bounds)).toBe(verdict);
      }),
      { seed: 5, numRuns: 300 },
    );
  });
});

describe('nothing is judged', () => {
  it.each([{}, { source: 'p. 12' }, { least: '2 mm', most: '1 mm' }])('by %j', (limit) => {
    const bounds: Bounds = boundsOf(limit);
    expect(usableBounds(bounds)).toBeUndefined();
  });
});

describe('a unit is asked about', () => {
  it.each([
    // Outside in its own unit, inside in another, and with digits that the other's tools tell.
    ['0.028 mm', '0.60 mm', '0.80 mm', 'in'],
    ['0.0280 mm', '0.60 mm', '0.80 mm', 'in'],
    ['28 mm', '0.60 mm', '0.80 mm', 'thou'],
    ['700 mm', '0.60 mm', '0.80 mm', 'um'],
    ['0.70 in', '0.60 mm', '0.80 mm', 'mm'],
    ['0.70 thou', '0.60 mm', '0.80 mm', 'mm'],
    ['0.70 um', '0.60 mm', '0.80 mm', 'mm'],
    ['0.006 mm', undefined, '0.20 mm', 'in'],
    ['2.06 in', '1.90 mm', undefined, 'mm'],
    // Not where it is inside, nor where its digits are its own unit's.
    ['0.70 mm', '0.60 mm', '0.80 mm', undefined],
    ['0.12 mm', '0.00 mm', '0.05 mm', undefined],
    ['0.012 in', '0.00 mm', '0.05 mm', undefined],
    ['0.02 mm', '0.30 mm', '0.60 mm', undefined],
    ['0.02 mm', undefined, '0.20 mm', undefined],
    ['0.00 mm', undefined, '0.15 mm', undefined],
    ['2.06 mm', '1.90 mm', undefined, undefined],
    ['1/64 in', '0.60 mm', '0.80 mm', undefined],
  ] as const)('%s with %s to %s: %s', (text, least, most, unit) => {
    expect(unitMeant(read(text), limits(least, most))).toBe(unit);
  });
});

describe('readings round one gap', () => {
  it.each([
    [['1.40 mm', '1.42 mm', '1.60 mm'], '1.42 mm', 2],
    [['1.10 mm', '1.42 mm', '1.60 mm'], '1.42 mm', 0],
    [['1.50 mm', '1.20 mm', '1.50 mm'], undefined, 1],
    [['1.50 mm'], undefined, 0],
  ])('of %j, where %s is wanted, the worst is at place %d', (places, wanted, worst) => {
    const gap = meanGap(places.map(read), wanted === undefined ? undefined : read(wanted).um);
    expect(gap.worst).toBe(worst);
  });
});
