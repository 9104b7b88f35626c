import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fraction, toNumber, toText } from '../../engine/linear/index.ts';
import type { Pack, Train } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { digitsIn, type Length, lengthFrom } from '../length/index.ts';
import { gapByCount, judgePack, readReadings } from './index.ts';
import { Tally } from '../../../test/tally.ts';

// An invented pack; each case changes it, or its readings, in a word or two.
const PLATES = `[{ kind: steel, thickness: 1.80 mm }, { kind: friction, thickness: 2.10 mm }, \
{ kind: steel, thickness: 1.80 mm }, { kind: friction, thickness: 2.10 mm }, \
{ kind: backing plate, thickness: 5.00 mm }]`;
const SHELF =
  'part: backing plate, fitted: 5.00 mm, sizes: [4.60 mm, 4.80 mm, 5.00 mm, 5.20 mm, 5.40 mm]';
const PACK = `{ plates: ${PLATES}, shelf: { ${SHELF} }, \
limits: { clearance: { least: 0.60 mm, most: 0.80 mm } } }`;

function trainWith(pack: string): Train {
  const { train, problems } = readTrain(`holdturn: 1
input: crank
output: set.carrier
sets: { set: { sun: 30, ring: 66 } }
joined: { crank: [set.sun] }
devices: { brake: { brake: set.ring } }
packs: { brake: ${pack} }
`);
  if (!train) throw new Error(JSON.stringify(problems));
  return train;
}

function judged(readings: string, pack = PACK) {
  const train = trainWith(pack);
  const read = readReadings(`brake: { ${readings} }`, train);
  expect(read.problems).toEqual([]);
  const [of] = read.readings;
  return judgePack(train.packs?.[0] as Pack, of as NonNullable<typeof of>);
}

const mm = (um: Length['um']) => `${toNumber(um) / 1000}`;
const remarks = (readings: string, pack = PACK) =>
  judged(readings, pack).remarks.map(({ remark, ...told }) => {
    const words = Object.values(told).filter(
      (its) => typeof its !== 'object' || Array.isArray(its),
    );
    return [remark, ...words].join(' ');
  });

describe('the clearance', () => {
  it('is the mean of feeler readings, with their spread', () => {
    const [feeler] = judged('feeler: [0.70 mm, 0.72 mm, 0.71 mm, 0.71 mm]').measured;
    expect(feeler && mm(feeler.clearance.um)).toBe('0.71');
    expect(feeler && mm(feeler.spreadUm)).toBe('0.02');
  });

  it('on air has the squash of the cushion plate taken off', () => {
    const cushion = PACK.replace(
      '[{',
      '[{ kind: cushion, thickness: 1.50 mm, squash: 0.12 mm, at: 300 kPa }, {',
    );
    const { measured, remarks: said } = judged(
      'on air: { pressure: 3 bar, strokes: [0.82 mm, 0.84 mm] }',
      cushion,
    );
    expect(measured[0] && mm(measured[0].clearance.um)).toBe('0.71');
    expect(said).toEqual([]);
    expect(remarks('on air: { pressure: 30 psi, strokes: [0.82 mm] }', cushion)).toEqual([
      'other pressure 300 kPa 30 psi',
    ]);
    const untold = cushion.replace(', squash: 0.12 mm, at: 300 kPa', '');
    const unsure = judged('on air: { pressure: 3 bar, strokes: [0.82 mm] }', untold);
    expect([unsure.verdict, unsure.remarks]).toEqual([undefined, [{ remark: 'squash unknown' }]]);
  });

  it('by depth gauge is what depth, straight-edge and stack leave, inches too', () => {
    const { measured } = judged(
      'depth gauge: { depth: 1.000 in, edge: 0.250 in, stack: 18.35 mm }',
    );
    expect(measured[0] && mm(measured[0].clearance.um)).toBe('0.7');
    expect(measured[0] && digitsIn(measured[0].clearance, 'mm')).toBe('0.70');
  });

  it('is shared among the friction discs, and may be limited for each', () => {
    const { eachFriction, bounds, verdict } = judged(
      'feeler: [0.70 mm, 0.70 mm, 0.70 mm]',
      PACK.replace(
        'clearance: { least: 0.60 mm, most: 0.80 mm',
        'each friction: { least: 0.30 mm, most: 0.34 mm',
      ),
    );
    expect(eachFriction && mm(eachFriction.um)).toBe('0.35');
    expect([mm(bounds?.least?.um as Length['um']), verdict]).toEqual(['0.6', 'too big']);
  });

  it('that the file draws is its depth less its plates, with the worst and the likely error', () => {
    const drawn = judged(
      'feeler: [0.70 mm, 0.70 mm, 0.70 mm]',
      PACK.replace('shelf:', 'depth: { size: 13.50 mm, tolerance: 0.04 mm }, shelf:').replace(
        'thickness: 5.00 mm',
        'thickness: 5.00 mm, tolerance: 0.03 mm',
      ),
    ).drawn;
    expect(drawn && [mm(drawn.um), mm(drawn.worstUm), drawn.likelyUm]).toEqual(['0.7', '0.07', 50]);
  });
});

describe('a step gauge', () => {
  it.each([
    ['fits: 0.60 mm, does not fit: 0.80 mm', 'inside'],
    ['fits: 0.90 mm', 'too big'],
    ['does not fit: 0.60 mm', 'too small'],
    ['fits: 0.50 mm, does not fit: 0.70 mm', undefined],
    ['fits: 0.90 mm, does not fit: 0.70 mm', undefined],
  ])('%s: %s', (steps, verdict) => {
    expect(judged(`step gauge: { ${steps} }`).gauge?.verdict).toBe(verdict);
  });
});

describe('readings that differ by more than the limits allow', () => {
  it.each([
    ['0.91 mm, 0.36 mm, 0.80 mm', undefined],
    ['1.12 mm, 1.60 mm, 1.30 mm', undefined],
    ['0.62 mm, 0.66 mm, 0.68 mm', 'inside'],
  ])('are not judged by their mean: %s', (read, verdict) => {
    expect(judged(`feeler: [${read}]`).verdict).toBe(verdict);
  });
});

// Readings, and what is said of them; a third entry changes the pack.
const SAID: readonly (readonly [string, readonly string[], (readonly [string, string])?])[] = [
  ['feeler: [0.70 mm, 0.71 mm, 0.70 mm]', []],
  ['feeler: [0.70 mm, 0.71 mm]', ['few places feeler 2']],
  ['feeler: [0.60 mm, 0.85 mm, 0.65 mm]', ['uneven round true', 'place outside 2']],
  ['feeler: [0.62 mm, 0.66 mm, 0.68 mm]', ['uneven round false']],
  ['feeler: [1.12 mm, 1.60 mm, 1.30 mm]', ['uneven round true']],
  ['feeler: [0.70 mm, 0.71 mm, 0.028 mm]', ['other unit in 3']],
  ['on air: { pressure: 300 kPa, strokes: [0.70 mm, 0.78 mm] }', ['uneven again false']],
  [
    'friction: [2.06 mm, 2.06 in]',
    ['other unit of a plate mm friction 2'],
    ['limits: {', 'limits: { friction: { least: 1.90 mm },'],
  ],
  [
    'cone: [0.004 mm]',
    ['other unit of a plate in cone 1'],
    ['limits: {', 'limits: { cone: { most: 0.15 mm },'],
  ],
  ['feeler: [2.50 mm, 2.50 mm, 2.50 mm]', ['plate missing steel,friction']],
  ['feeler: [0.70 in, 0.70 in, 0.70 in]', ['other unit mm']],
  ['feeler: [0.028 mm, 0.028 mm, 0.028 mm]', ['other unit in']],
  [
    'depth gauge: { depth: 20.00 mm, stack: 21.20 mm }',
    ['no gap depth gauge', 'plate doubled steel,friction'],
  ],
  ['depth gauge: { depth: 20.00 mm, stack: 20.00 mm }', ['no gap depth gauge']],
  ['feeler: [0.70 mm, 0.70 mm, 0.70 mm], lifted: [0.78 mm]', ['ways differ feeler,lifted']],
  [
    'feeler: [0.70 mm, 0.70 mm, 0.70 mm]',
    ['no limit'],
    ['{ least: 0.60 mm, most: 0.80 mm }', '{}'],
  ],
  ['feeler: [0.70 mm, 0.70 mm, 0.70 mm]', ['one limit'], ['least: 0.60 mm, ', '']],
  ['feeler: [0.70 mm, 0.70 mm, 0.70 mm]', ['limits turned round'], ['0.60 mm', '0.90 mm']],
  ['feeler: [0.70 mm, 0.70 mm, 0.70 mm]', ['not on the shelf'], ['fitted: 5.00', 'fitted: 5.02']],
  ['feeler: [1.30 mm, 1.30 mm, 1.30 mm]', ['shelf too short'], [', 5.20 mm, 5.40 mm', '']],
  ['step gauge: { fits: 0.90 mm, does not fit: 0.70 mm }', ['gauge turned round']],
  [
    'friction: [2.00 mm, 1.85 mm]',
    ['worn friction'],
    ['limits: {', 'limits: { friction: { least: 1.90 mm },'],
  ],
  [
    'cone: [0.10 mm, 0.30 mm]',
    ['coned or warped'],
    ['limits: {', 'limits: { cone: { most: 0.15 mm },'],
  ],
  ['cone: [0.30 mm]', ['coned or warped']],
  [
    'friction: [2.00 mm, 1.85 mm], step gauge: { fits: 0.70 mm }',
    ['no limit'],
    [
      'limits: { clearance: { least: 0.60 mm, most: 0.80 mm }',
      'limits: { clearance: {}, friction: { source: p. 12 }',
    ],
  ],
  ['cone: [0.00 mm]', []],
];

describe('it is said', () => {
  it.each(SAID.map(([readings, said, change = ['', '']]) => [readings, said, change] as const))(
    'of %s: %j',
    (readings, said, [from, to]) => {
      expect(PACK).toContain(from);
      expect(remarks(readings, PACK.replace(from, to))).toEqual(said);
    },
  );

  it('that a cone may be meant', () => {
    const coned = PACK.replace('1.80 mm }', '1.80 mm, coned: 0.30 mm }').replace(
      'limits: {',
      'limits: { cone: { most: 0.15 mm },',
    );
    expect(judged('cone: [0.30 mm]', coned).remarks[0]).toMatchObject({
      remark: 'coned on purpose',
    });
  });

  it('and nothing is selected, where plates have to be counted first', () => {
    expect(judged('feeler: [2.50 mm, 2.50 mm, 2.50 mm]').selection).toBeUndefined();
  });
});

describe('nothing is inside no limit:', () => {
  const bare = PACK.replace(
    '{ clearance: { least: 0.60 mm, most: 0.80 mm } }',
    '{ clearance: {}, friction: {}, steel: { least: 1.80 mm, most: 1.70 mm } }',
  );
  it.each(['friction: [2.00 mm]', 'steel: [1.75 mm]'])('%s', (readings) => {
    expect(judged(readings, bare).wear[0]?.verdict).toBeUndefined();
  });
  it('a clearance, a step gauge, and what is read again', () => {
    const { verdict, gauge, again, selection } = judged(
      'feeler: [0.70 mm, 0.70 mm, 0.70 mm], step gauge: { fits: 0.60 mm, does not fit: 0.80 mm }, again: { fitted: 5.20 mm, read: [0.50 mm] }',
      bare,
    );
    expect([verdict, gauge?.verdict, again?.verdict, selection]).toEqual(Array(4).fill(undefined));
  });
});

describe('the selection', () => {
  it('predicts what the exchange gives, at worst and likely', () => {
    const { selection } = judged('feeler: [1.10 mm, 1.12 mm, 1.11 mm]');
    const { best, second } = selection as NonNullable<typeof selection>;
    expect(mm(best.size.um)).toBe('5.4');
    expect(mm(best.predicted.um)).toBe('0.71');
    // Half the spread, and half of the last digit of either plate.
    expect(mm(best.predicted.worstUm)).toBe('0.02');
    expect(best.predicted.likelyUm).toBeCloseTo(Math.sqrt(100 + 25 + 25), 9);
    expect([mm((second as typeof best).size.um), (second as typeof best).verdict]).toEqual([
      '5.2',
      'too big',
    ]);
  });

  // By brute force, on floats of whole hundredths: the least distance from the middle.
  it('is closed by measuring again, where that agrees with what was predicted', () => {
    // 1.30 mm with 5.00 mm in; 5.60 mm are not on the shelf but 5.40 mm are: 0.90 mm, ± 0.02.
    const before = 'feeler: [1.30 mm, 1.30 mm, 1.30 mm]';
    const again = (read: string, fitted = '5.40 mm') => {
      const its = judged(`${before}, again: { fitted: ${fitted}, read: [${read}] }`);
      const { verdict, agrees, predicted } = its.again ?? {};
      const said = its.remarks.some(({ remark }) => remark === 'not as predicted');
      return [predicted && mm(predicted.um), verdict, agrees, said];
    };
    expect(again('0.91 mm')).toEqual(['0.9', 'too big', true, false]);
    expect(again('0.70 mm')).toEqual(['0.9', 'inside', false, true]);
    expect(again('0.70 mm, 0.71 mm', '5.60 mm')).toEqual(['0.7', 'inside', true, false]);
  });

  it('is the best of the shelf, and the second the best of the others', () => {
    const hundredths = fc.integer({ min: 300, max: 700 });
    const shelves = fc.uniqueArray(hundredths, { minLength: 2, maxLength: 8 });
    const tally = new Tally({ chosen: 280 });
    fc.assert(
      fc.property(hundredths, shelves, fc.integer({ min: 1, max: 500 }), (fitted, sizes, gap) => {
        const text = (h: number) => `${(h / 100).toFixed(2)} mm`;
        const pack: Pack = {
          device: 'brake',
          plates: [{ kind: 'friction', thickness: '90.00 mm' }],
          shelf: { part: 'backing plate', fitted: text(fitted), sizes: sizes.map(text) },
          limits: { clearance: { least: '0.10 mm', most: '1.30 mm' } },
        };
        const feeler = [lengthFrom(text(gap)) as Length];
        const { selection, remarks: said } = judgePack(pack, { device: 'brake', feeler });
        if (said.some(({ remark }) => remark === 'other unit')) return;
        tally.met('chosen');
        const off = (size: number) => Math.abs(gap + fitted - size - 70);
        const ranked = sizes.toSorted((a, b) => off(a) - off(b) || b - a);
        const chosen = [selection?.best, selection?.second].map(
          (its) => its && toText(its.size.um),
        );
        expect(chosen).toEqual(ranked.slice(0, 2).map((size) => `${size * 10}`));
      }),
      { seed: 5, numRuns: 300 },
    );
    tally.enough();
  });
});

describe('the order of readings', () => {
  it('changes no verdict, no selection and no remark but the place', () => {
    const feelers = fc.array(fc.integer({ min: 40, max: 130 }), { minLength: 3, maxLength: 6 });
    fc.assert(
      fc.property(feelers, (hundredths) => {
        const feeler = hundredths.map((h) => ({ um: fraction(h * 10), stepUm: fraction(10) }));
        const pack = trainWith(PACK).packs?.[0] as Pack;
        const [one, other] = [feeler, feeler.toReversed()].map((its) => {
          const {
            verdict,
            selection,
            thicker,
            remarks: said,
          } = judgePack(pack, {
            device: 'brake',
            feeler: its,
          });
          return { verdict, selection, thicker, said: said.map(({ remark }) => remark) };
        });
        expect(one).toEqual(other);
      }),
      { seed: 5, numRuns: 200 },
    );
  });
});

describe('a file of readings', () => {
  it.each([
    ['brake: { feeler: [0.70, 0.71] }', 'expected length'],
    ['brake: { feeler: [-0.70 mm] }', 'expected length'],
    ['brake: { feeler: [NaN mm] }', 'expected length'],
    ['brake: { feeler: [] }', 'expected lengths'],
    ['brake: { on air: { strokes: [0.70 mm] } }', 'missing key'],
    ['brake: { on air: { pressure: 300, strokes: [0.70 mm] } }', 'expected air'],
    ['brake: { on air: { pressure: 300 kPa, strokes: [] } }', 'expected lengths'],
    ['brake: { depth gauge: { depth: 20.00 mm } }', 'missing key'],
    ['brake: { step gauge: 7 }', 'expected step gauge'],
    ['brake: { feler: [0.70 mm] }', 'unknown key'],
    ['brak: { feeler: [0.70 mm] }', 'no pack'],
    ['[]', 'expected section'],
  ])('%s: %s', (text, said) => {
    const { readings, problems } = readReadings(text, trainWith(PACK));
    expect(readings).toEqual([]);
    const { problem, what } = problems[0] as { problem: string; what?: string };
    expect(what === undefined ? problem : `${problem} ${what}`).toBe(said);
  });

  it('may be empty', () => {
    expect(readReadings('', trainWith(PACK))).toEqual({ readings: [], problems: [] });
  });
});

describe('a length of a file', () => {
  const problemsOf = (written: string) => {
    const text = JSON.stringify({ brake: { feeler: [written] } });
    return readReadings(text, trainWith(PACK)).problems;
  };

  it.each([
    '0.42 mm',
    '0,42mm',
    '17 thou',
    '0.017"',
    '1/64 in',
    '1 3/16 inches',
    '420 µm',
    '9 mil',
  ])('may be %s', (written) => {
    expect(problemsOf(written)).toEqual([]);
  });

  it('that is let through can be read', () => {
    const text = fc.stringMatching(
      /^[0-9]{0,3}[ .,/]?[0-9]{1,3} ?(?:mm|um|µm|in|inch|inches|"|thou|mil|m)$/,
    );
    fc.assert(
      fc.property(text, (written) => {
        if (problemsOf(written).length === 0) expect(lengthFrom(written)).toBeDefined();
      }),
      { seed: 5, numRuns: 400 },
    );
  });
});

it('what is counted otherwise changes the clearance by the plates that are missing or too many', () => {
  const plates = [
    { kind: 'steel', thickness: '1.80 mm' },
    { kind: 'friction', thickness: '2.00 mm' },
    { kind: 'friction', thickness: '2.10 mm' },
  ] as const;
  const pack = { device: 'low brake', plates };
  const change = (friction: number, steel: number) => {
    const gap = gapByCount(pack, { friction, steel });
    return gap && [gap.least, gap.most].map((its) => toText(its.um));
  };
  expect(change(1, 0)).toEqual(['2000', '2100']);
  expect(change(2, -1)).toEqual(['2200', '2400']);
  expect(change(0, -1)).toEqual(['-1800', '-1800']);
  expect(change(0, 0)).toBeUndefined();
  expect(
    gapByCount({ ...pack, plates: plates.slice(1) }, { friction: 0, steel: 1 }),
  ).toBeUndefined();
});
