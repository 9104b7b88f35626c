import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toNumber, toText } from '../linear/index.ts';
import { type Dimension, formOf, quantityFrom } from './index.ts';
import { UNITS } from './unit.ts';
import { Tally } from '../../../test/tally.ts';

// Of NIST Special Publication 811 (2008), appendix B.8, to seven figures; remembered.
const REMEMBERED: readonly (readonly [Dimension, string, number])[] = [
  ['length', '1 in', 25_400],
  ['length', '1 mil', 25.4],
  ['force', '1 lbf', 4.448222],
  ['force', '1 kgf', 9.80665],
  ['pressure', '1 psi', 6.894757],
  ['pressure', '1 bar', 100],
  ['pressure', '1 kgf/cm2', 98.0665],
  ['torque', '1 lbf ft', 1.355818],
  ['torque', '1 lbf in', 0.1129848],
  ['torque', '1 kgf m', 9.80665],
];

// By definition of the units.
const DEFINED: readonly (readonly [Dimension, string, number])[] = [
  ['length', '1 mm', 1000],
  ['length', '1 um', 1],
  ['length', '1 thou', 25.4],
  ['force', '1 N', 1],
  ['pressure', '1 kPa', 1],
  ['pressure', '1 MPa', 1000],
  ['pressure', '1 mbar', 0.1],
  ['torque', '1 Nm', 1],
  ['torque', '1 Ncm', 0.01],
  ['torque', '1 kgf cm', 0.0980665],
];

describe('a quantity', () => {
  it.each([...REMEMBERED, ...DEFINED])('%s: %s', (dimension, text, size) => {
    const read = quantityFrom(text, dimension);
    expect(read && toNumber(read.size)).toBeCloseTo(size, 6);
  });

  it('is tried in every unit', () => {
    const tried = [...REMEMBERED, ...DEFINED].map(([of, text]) => quantityFrom(text, of)?.unit);
    const all = Object.values(UNITS).flatMap((units) => units.map(({ name }) => name));
    expect(new Set(tried)).toEqual(new Set(all));
  });

  it.each([
    ['length', '0,42 mm', '420', '10', 'mm'],
    ['length', '420 μm', '420', '1', 'um'],
    ['length', '420 µm', '420', '1', 'um'],
    ['length', '1 3/16 in', '60325/2', '3175/2', 'in'],
    ['length', '17 thou', '2159/5', '127/5', 'thou'],
    ['pressure', '3,5 bar', '350', '10', 'bar'],
    ['pressure', '0.9 MPa', '900', '100', 'MPa'],
    // 100 × 4.4482216152605 N × 0.3048 m, by definition.
    [
      'torque',
      '100 ft-lb',
      '3389544870828501/25000000000000',
      '3389544870828501/2500000000000000',
      'lbf ft',
    ],
    ['torque', '12 N·m', '12', '1', 'Nm'],
    ['torque', '120 N cm', '6/5', '1/100', 'Ncm'],
    ['force', '22 N', '22', '1', 'N'],
  ] as const)('%s: %s', (dimension, text, size, step, unit) => {
    const read = quantityFrom(text, dimension);
    expect(read && [toText(read.size), toText(read.step), read.unit]).toEqual([size, step, unit]);
  });

  it.each(['3', '3 furlong', 'kPa', '3 kPa kPa', '1.420,5 kPa', '1e3 kPa', '3 mm', '٣ kPa'])(
    'is not %j kilopascals',
    (text) => {
      expect(quantityFrom(text, 'pressure')).toBeUndefined();
    },
  );

  it('without a unit is of the one that is told, and of none else', () => {
    const read = quantityFrom('900', 'pressure', 'kPa');
    expect(read && toText(read.size)).toBe('900');
    expect(quantityFrom('900', 'pressure')).toBeUndefined();
  });

  it('that the form of a file lets through can be read, each dimension, and what is nearly so', () => {
    const dimensions = ['length', 'pressure', 'force', 'torque'] as const;
    const written = dimensions.map((dimension) => {
      return fc.tuple(fc.constant<Dimension>(dimension), fc.stringMatching(formOf(dimension)));
    });
    const some = fc.oneof(...written);
    const put = fc.constantFrom('', ' ', '.', ',', '/', '0', '-', 'm', '²');
    const tally = new Tally({
      length: 250,
      pressure: 250,
      force: 250,
      torque: 250,
      'nearly so': 150,
    });
    fc.assert(
      fc.property(some, fc.nat(20), put, ([dimension, text], at, scrap) => {
        tally.met(dimension);
        expect(quantityFrom(text, dimension)).toBeDefined();
        const other = text.slice(0, at) + scrap + text.slice(at + 1);
        if (!formOf(dimension).test(other)) return;
        tally.met('nearly so');
        expect(quantityFrom(other, dimension)).toBeDefined();
      }),
      { seed: 5, numRuns: 2000 },
    );
    tally.enough();
  });
});
