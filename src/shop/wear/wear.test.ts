import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fraction, toText } from '../../engine/linear/index.ts';
import { WEAR_KINDS, type WearCheck } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { type Length, lengthFrom } from '../length/index.ts';
import { judgeWear, readWear } from './index.ts';

// Invented limits.
const BUSHING: WearCheck = {
  part: 'stator bushing',
  measure: 'bushing',
  limit: { least: '0.03 mm', most: '0.10 mm' },
};
const SPRINGS: WearCheck = {
  part: 'springs',
  measure: 'spring length',
  limit: { least: '31.5 mm' },
};
const lengths = (...texts: string[]) => texts.map((text) => lengthFrom(text) as Length);

describe('wear', () => {
  it('of a bushing is its widest bore on the thinnest shaft', () => {
    const bore = lengths('38.12 mm', '38.10 mm');
    const shaft = lengths('38.03 mm', '38.01 mm', '38.02 mm');
    const { smallest, largest, worst, verdict } = judgeWear(BUSHING, { bore, shaft });
    expect([smallest, largest, worst].map((its) => its && toText(its.um))).toEqual([
      '70',
      '110',
      '110',
    ]);
    expect(verdict).toBe('too big');
  });

  it('counts the worst reading, and not the mean', () => {
    const planets: WearCheck = { ...BUSHING, measure: 'planet side' };
    expect(judgeWear(planets, { read: lengths('0.05 mm', '0.06 mm', '0.11 mm') }).verdict).toBe(
      'too big',
    );
    expect(judgeWear(planets, { read: lengths('0.09 mm', '0.02 mm') }).verdict).toBe('too small');
  });

  it('of springs is the shortest of the set', () => {
    const { worst, verdict } = judgeWear(SPRINGS, { read: lengths('31.8 mm', '30.9 mm') });
    expect([worst && toText(worst.um), verdict]).toEqual(['30900', 'too small']);
  });

  it('of a thrust washer is its thinnest place, and of a seal ring its widest gap', () => {
    const washer: WearCheck = { part: 'w', measure: 'thickness', limit: { least: '1.50 mm' } };
    const read = lengths('1.58 mm', '1.47 mm', '1.57 mm');
    expect(judgeWear(washer, { read })).toMatchObject({
      verdict: 'too small',
      worst: { um: fraction(1470) },
    });
    const limit = { least: '0.10 mm', most: '0.40 mm' };
    const ring: WearCheck = { part: 'r', measure: 'ring gap', limit };
    expect(judgeWear(ring, { read: lengths('0.30 mm', '0.42 mm') }).verdict).toBe('too big');
    // A drum with no dish at all is no drum without slack.
    const drum: WearCheck = { part: 'd', measure: 'drum dish', limit: { most: '0.10 mm' } };
    expect(judgeWear(drum, { read: lengths('0.00 mm') })).toMatchObject({
      verdict: 'inside',
      remarks: [],
    });
  });

  it('of splines is their widest play', () => {
    const splines: WearCheck = { part: 's', measure: 'spline play', limit: { most: '0.15 mm' } };
    const its = judgeWear(splines, { read: lengths('0.10 mm', '0.17 mm', '0.11 mm') });
    expect(its).toMatchObject({ verdict: 'too big', worst: { um: fraction(170) } });
  });

  it('of a spring at its new length is none', () => {
    expect(judgeWear(SPRINGS, { read: lengths('32.0 mm') }).verdict).toBe('inside');
  });

  it('does not depend on the order of readings', () => {
    const reads = fc.array(fc.integer({ min: -50, max: 300 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(fc.constantFrom(...WEAR_KINDS), reads, reads, (measure, a, b) => {
        const all = (ums: readonly number[]) =>
          ums.map((um) => ({ um: fraction(um), stepUm: fraction(10) }));
        const check = { ...BUSHING, measure };
        const [one, other] = [
          judgeWear(check, { read: all(a), bore: all(b), shaft: all(a) }),
          judgeWear(check, {
            read: all(a.toReversed()),
            bore: all(b.toReversed()),
            shaft: all(a.toReversed()),
          }),
        ];
        expect(other).toEqual(one);
      }),
      { seed: 5, numRuns: 300 },
    );
  });
});

describe('nonsense about wear', () => {
  it.each([
    ['nothing', BUSHING, {}, ['nothing read']],
    ['a bore without its shaft', BUSHING, { bore: lengths('38.10 mm') }, ['nothing read']],
    [
      'a shaft larger than its bore',
      BUSHING,
      { bore: lengths('38.00 mm'), shaft: lengths('38.10 mm') },
      ['no slack'],
    ],
    ['below nothing', BUSHING, { read: lengths('-0.05 mm') }, ['no slack']],
    ['inches for millimetres', BUSHING, { read: lengths('0.05 in') }, ['other unit']],
    ['millimetres for inches', BUSHING, { read: lengths('0.002 mm') }, ['other unit']],
    [
      'inches for millimetres, one limit',
      { ...BUSHING, limit: { most: '0.10 mm' } },
      { read: lengths('0.05 in') },
      ['other unit'],
    ],
    ['no limit', { part: 'x', measure: 'bushing' }, { read: lengths('0.05 mm') }, ['no limit']],
    [
      'limits turned round',
      { ...BUSHING, limit: { least: '0.10 mm', most: '0.03 mm' } },
      { read: lengths('0.05 mm') },
      ['limits turned round'],
    ],
  ] as const)('%s is said, and nothing is judged', (_, check, readings, said) => {
    const { remarks, verdict } = judgeWear(check, readings);
    expect([verdict, remarks.map(({ remark }) => remark)]).toEqual([undefined, said]);
  });
});

describe('a file of readings of worn parts', () => {
  const { train } = readTrain(`holdturn: 1
input: crank
output: set.carrier
sets: { set: { sun: 30, ring: 66 } }
joined: { crank: [set.sun] }
wear: { pump side: { measure: gear side } }
`);

  it.each([
    ['pump side: [0.04 mm]', 'expected'],
    ['pump side: { read: [0.04] }', 'expected'],
    ['pump side: { read: [-0.04 mm] }', 'expected'],
    ['pump side: { read: [NaN mm] }', 'expected'],
    ['pump side: { raed: [0.04 mm] }', 'unknown key'],
    ['pump sied: { read: [0.04 mm] }', 'no wear'],
  ])('%s: %s', (text, problem) => {
    const { readings, problems } = readWear(text, train as NonNullable<typeof train>);
    expect([readings, problems[0]?.problem]).toEqual([[], problem]);
  });
});
