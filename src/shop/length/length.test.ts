import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fraction, over, times, toText } from '../../engine/linear/index.ts';
import { digitsIn, type Length, lengthFrom, less, meanOf, sumOf, UM_PER } from './index.ts';

const read = (text: string) => lengthFrom(text) as Length;

// What is written, its micrometres, the tool's step, and how it stands in mm and in inches. The
// inch of 25.4 mm is the international yard and pound agreement's of 1959, from memory.
const WRITTEN: readonly (readonly [string, string, string, string, string])[] = [
  ['0.42 mm', '420', '10', '0.42', '0.0165'],
  ['0,42 mm', '420', '10', '0.42', '0.0165'],
  ['2.10 mm', '2100', '10', '2.10', '0.0827'],
  ['2.1 mm', '2100', '100', '2.1', '0.083'],
  ['420um', '420', '1', '0.420', '0.01654'],
  ['17 thou', '2159/5', '127/5', '0.43', '0.017'],
  ['0.017 in', '2159/5', '127/5', '0.43', '0.017'],
  ['0.0170"', '2159/5', '127/50', '0.432', '0.0170'],
  ['1/64 in', '3175/8', '3175/8', '0.4', '0.02'],
  ['1 3/16 in', '60325/2', '3175/2', '30', '1.19'],
  ['-0.05 mm', '-50', '10', '-0.05', '-0.0020'],
  ['1 in', '25400', '25400', '25', '1'],
];

describe('a length', () => {
  it.each(WRITTEN)('%s', (text, um, step, mm, inch) => {
    const length = read(text);
    expect([toText(length.um), toText(length.stepUm)]).toEqual([um, step]);
    expect([digitsIn(length, 'mm'), digitsIn(length, 'in')]).toEqual([mm, inch]);
  });

  it.each([
    '',
    '7',
    '0.42',
    'mm',
    'NaN mm',
    'Infinity mm',
    '1e3 mm',
    '1/0 in',
    '0.42 furlong',
    '1.2.3 mm',
    '.5 mm',
    '--1 mm',
    '12345678 mm',
  ])('is not %j', (text) => {
    expect(lengthFrom(text)).toBeUndefined();
  });

  it('comes back from inches, every micrometre from 0 to 100 mm', () => {
    const lost: number[] = [];
    for (let um = 0; um <= 100_000; um++) {
      const length = { um: fraction(um), stepUm: fraction(1) };
      const inches = read(`${digitsIn(length, 'in')} in`);
      const exact = times(over(length.um, UM_PER.in), UM_PER.in);
      const back = digitsIn({ um: inches.um, stepUm: fraction(1) }, 'mm');
      if (back !== (um / 1000).toFixed(3) || toText(exact) !== `${um}`) lost.push(um);
    }
    expect(lost).toEqual([]);
  });

  it('comes back from millimetres, every tenth of a thousandth from 0 to 4 inches', () => {
    for (let tenths = 0; tenths <= 40_000; tenths += 7) {
      const inches = (tenths / 10_000).toFixed(4);
      const length = read(`${inches} in`);
      const mm = read(`${digitsIn(length, 'mm')} mm`);
      expect(digitsIn({ ...mm, stepUm: length.stepUm }, 'in')).toBe(inches);
    }
  });

  it('is read again as it is written, to the digit', () => {
    const digits = fc.tuple(fc.integer({ min: 0, max: 99_999 }), fc.integer({ min: 0, max: 4 }));
    fc.assert(
      fc.property(digits, fc.constantFrom('mm' as const, 'in' as const), ([n, d], unit) => {
        const text = (n / 10 ** d).toFixed(d);
        expect(digitsIn(read(`${text} ${unit}`), unit)).toBe(text);
      }),
      { seed: 5 },
    );
  });
});

describe('a sum of lengths', () => {
  it('is exact, and tells no more than its coarsest tool', () => {
    const sum = sumOf([read('1.8 mm'), read('2.10 mm'), read('1/64 in')]);
    expect(toText(sum.um)).toBe('34375/8');
    expect(toText(less(read('1.8 mm'), read('2.103 mm')).um)).toBe('-303');
    expect(digitsIn(less(read('1.8 mm'), read('2.103 mm')), 'mm')).toBe('-0.3');
  });

  it('has a mean that does not depend on the order', () => {
    const readings = ['0.41 mm', '0.42 mm', '0.42 mm', '0.017 in'].map(read);
    expect(meanOf(readings)).toEqual(meanOf(readings.toReversed()));
    expect(digitsIn(meanOf(readings.slice(0, 3)), 'mm')).toBe('0.42');
  });
});
