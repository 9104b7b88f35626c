import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fraction, toNumber, toText } from '../../engine/linear/index.ts';
import type { EndPlay } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { type Length, lengthFrom } from '../length/index.ts';
import { judgeEndPlay, readPlays } from './index.ts';

// An invented shaft.
const SHAFT: EndPlay = {
  shaft: 'input shaft',
  limit: { least: '0.30 mm', most: '0.60 mm' },
  shelf: { part: 'washer', fitted: '1.60 mm', sizes: ['1.40 mm', '1.60 mm', '1.80 mm', '2.00 mm'] },
};
const read = (texts: readonly string[]) => texts.map((text) => lengthFrom(text) as Length);
const judged = (texts: readonly string[], change: Partial<EndPlay> = {}) =>
  judgeEndPlay({ ...SHAFT, ...change }, { play: read(texts) });
const said = (texts: readonly string[], change: Partial<EndPlay> = {}) =>
  judged(texts, change).remarks.map(({ remark }) => remark);

describe('an end play', () => {
  it('outside has the washer chosen that brings it nearest to the middle', () => {
    const { verdict, thicker, selection } = judged(['0.82 mm', '0.84 mm', '0.83 mm']);
    expect(verdict).toBe('too big');
    expect([thicker?.leastUm, thicker?.mostUm].map((um) => um && toText(um))).toEqual([
      '230',
      '530',
    ]);
    expect(selection && toText(selection.best.size.um)).toBe('2000');
    expect(selection && toNumber(selection.best.predicted.um)).toBe(430);
    expect(selection?.second && toText(selection.second.size.um)).toBe('1800');
  });

  it('inside may keep its washer', () => {
    const { verdict, thicker, selection } = judged(['0.44 mm']);
    expect([verdict, thicker, selection?.best.stays]).toEqual(['inside', undefined, true]);
  });

  it('is drawn by its stack, at worst and likely', () => {
    const stack = [
      { part: 'case', size: '80.00 mm', tolerance: '0.03 mm', gap: 'opens' },
      { part: 'drum', size: '79.50 mm', tolerance: '0.04 mm', gap: 'fills' },
    ] as const;
    const { drawn } = judged(['0.44 mm'], { stack });
    expect(drawn).toEqual({ um: fraction(500), worstUm: fraction(70), likelyUm: 50 });
  });

  it.each([
    [['0.44 mm'], {}, []],
    [['0.018 mm'], {}, ['other unit']],
    [['0.44 in'], {}, ['other unit']],
    [['17 mm'], {}, ['other unit']],
    [['420 mm'], {}, ['other unit']],
    // Two ends of one limit, and what a dial tells: no unit is in doubt.
    [['0.12 mm'], { limit: { least: '0.00 mm', most: '0.05 mm' } }, ['shelf too short']],
    [['0.012 in'], { limit: { least: '0.00 mm', most: '0.05 mm' } }, ['shelf too short']],
    [['0.02 mm'], {}, ['shelf too short']],
    [['0.012 mm'], {}, ['other unit']],
    [['0.42 mm', '0.44 mm', '0.017 mm'], {}, ['other unit']],
    [['0.34 mm', '0.44 mm'], {}, ['uneven']],
    [['0.30 mm', '0.70 mm'], {}, ['uneven', 'place outside']],
    [['0.44 mm'], { limit: {} }, ['no limit']],
    [['0.44 mm'], { limit: { most: '0.60 mm' } }, ['one limit']],
    [['0.44 mm'], { limit: { least: '0.60 mm', most: '0.30 mm' } }, ['limits turned round']],
    [['2.00 mm'], {}, ['shelf too short']],
    [
      ['0.44 mm'],
      { shelf: { part: 'shim', fitted: '1.62 mm', sizes: ['1.60 mm'] } },
      ['not on the shelf'],
    ],
  ] as const)('%j with %j: %j', (texts, change, remarks) => {
    expect(said(texts, change)).toEqual(remarks);
  });

  it('between teeth differs from tooth to tooth, and no shim is added for it', () => {
    const { shelf: _, ...bare } = SHAFT;
    const { remarks, thicker } = judgeEndPlay(
      { ...bare, measure: 'backlash' },
      { play: read(['0.52 mm', '0.70 mm']) },
    );
    expect(remarks).toMatchObject([{ remark: 'uneven', where: 'teeth' }]);
    expect(thicker).toBeUndefined();
    const { problems } = readTrain(`holdturn: 1
input: crank
output: set.carrier
sets: { set: { sun: 30, ring: 66 } }
joined: { crank: [set.sun] }
endplay:
  mesh: { measure: backlash, shelf: { part: shim, fitted: 1.00 mm, sizes: [1.00 mm] } }
`);
    expect(problems).toMatchObject([{ problem: 'misplaced key', key: 'shelf' }]);
  });

  it('of 0.12 mm where 0.05 mm are allowed has its shim', () => {
    const limit = { least: '0.00 mm', most: '0.05 mm' };
    const shelf = { part: 'shim', fitted: '1.60 mm', sizes: ['1.60 mm', '1.70 mm'] } as const;
    const { selection, verdict } = judged(['0.12 mm'], { limit, shelf });
    expect([verdict, selection && toText(selection.best.size.um)]).toEqual(['too big', '1700']);
  });

  it('that differs by more than the limits allow selects nothing', () => {
    expect(judged(['0.30 mm', '0.70 mm']).selection).toBeUndefined();
    expect(judged(['0.34 mm', '0.44 mm']).selection).toBeDefined();
  });

  it('in another unit selects nothing', () => {
    expect(judged(['0.018 mm']).selection).toBeUndefined();
  });

  it('is closed by measuring again, where that agrees with what was predicted', () => {
    // 0.83 mm with 1.60 mm in: 2.00 mm should leave 0.43 mm.
    const again = (texts: readonly string[]) => {
      const [fitted] = read(['2.00 mm']) as [Length];
      const its = judgeEndPlay(SHAFT, {
        play: read(['0.83 mm']),
        again: { fitted, read: read(texts) },
      });
      const told = its.remarks.map(({ remark }) => remark);
      return [its.again?.verdict, its.again?.agrees, told];
    };
    expect(again(['0.43 mm', '0.44 mm'])).toEqual(['inside', true, []]);
    expect(again(['0.55 mm'])).toEqual(['inside', false, ['not as predicted']]);
    expect(again(['0.63 mm'])).toEqual(['too big', false, ['not as predicted']]);
  });

  it('does not depend on the order of its readings', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 150 }), { minLength: 1, maxLength: 5 }),
        (all) => {
          const lengths = all.map((h) => ({ um: fraction(h * 10), stepUm: fraction(10) }));
          const [one, other] = [lengths, lengths.toReversed()].map((its) => {
            const { verdict, selection, thicker, remarks } = judgeEndPlay(SHAFT, { play: its });
            return { verdict, selection, thicker, said: remarks.map(({ remark }) => remark) };
          });
          expect(one).toEqual(other);
        },
      ),
      { seed: 5, numRuns: 200 },
    );
  });
});

describe('a file of end plays', () => {
  const { train } = readTrain(`holdturn: 1
input: crank
output: set.carrier
sets: { set: { sun: 30, ring: 66 } }
joined: { crank: [set.sun] }
endplay: { input shaft: { limit: { least: 0.30 mm } } }
`);

  it.each([
    ['input shaft: [0.42]', 'expected'],
    ['input shaft: 0.42 mm', 'expected'],
    ['input shaft: []', 'expected'],
    ['input shaft: { play: 0.42 mm }', 'expected'],
    ['input shaft: { again: { fitted: 2.00 mm } }', 'missing key'],
    ['input shift: [0.42 mm]', 'no end play'],
    ['[]', 'expected'],
  ])('%s: %s', (text, problem) => {
    const { readings, problems } = readPlays(text, train as NonNullable<typeof train>);
    expect([readings, problems[0]?.problem]).toEqual([[], problem]);
  });

  it('may be empty', () => {
    expect(readPlays('', train as NonNullable<typeof train>).readings).toEqual([]);
  });
});
