import { describe, expect, test } from 'vitest';
import {
  fraction,
  fromText,
  over,
  plus,
  type Rational,
  toNumber,
} from '../../src/engine/linear/index.ts';
import type { Pack } from '../../src/engine/train/index.ts';
import { type Length, lengthFrom, stackUp } from '../../src/shop/length/index.ts';
import { judgeEndPlay } from '../../src/shop/endplay/index.ts';
import { judgePack } from '../../src/shop/packs/index.ts';
import { type Mark, markOf } from './marks.ts';
import cases from './stacks.json' with { type: 'json' };

// Stack-ups and shims that somebody has published, each with its source in stacks.json.
const [gap, shim, pack] = cases as unknown as readonly [Case, Case, Case];
type Figure = { readonly value: number; readonly tolerance?: number; readonly from: Mark };
type Case = Readonly<Record<string, unknown>>;

test('each figure is marked, and what the sources print is not fewer than it was', () => {
  const marks = [gap, shim, pack].flatMap((one) =>
    Object.values(one).flatMap((its) => {
      return typeof its === 'object' && its !== null && 'value' in its ? [markOf(its)] : [];
    }),
  );
  expect(marks.filter((mark) => mark === 'printed').length).toBeGreaterThanOrEqual(6);
});

const length = (text: unknown) => lengthFrom(text as string) as Length;
const mm = (um: Rational) => over(um, fraction(1000));
const published = (one: Case, key: string) => fromText(`${(one[key] as Figure).value}`);

describe(`${gap['title']} (${gap['source']})`, () => {
  const parts = gap['stack'] as readonly (readonly [string, string, string])[];
  const found = stackUp(
    parts.map(([sign, size, tolerance]) => ({
      adds: sign === '+' ? 1 : -1,
      um: length(size).um,
      tolUm: length(tolerance).um,
    })),
  );
  test('gap, worst case', () => {
    expect(mm(found.um)).toEqual(published(gap, 'gapMm'));
    expect(mm(found.worstUm)).toEqual(published(gap, 'worstMm'));
  });
  test('root sum square', () => {
    const { value, tolerance } = gap['likelyMm'] as Required<Figure>;
    expect(Math.abs(found.likelyUm / 1000 - value)).toBeLessThanOrEqual(tolerance);
  });
});

describe(`${shim['title']} (${shim['source']})`, () => {
  const limit = { least: shim['least'] as string, most: shim['most'] as string };
  const judged = (read: unknown) =>
    judgeEndPlay({ shaft: 'shaft', limit }, { play: [length(read)] });
  test('thinnest and thickest shim', () => {
    const found = judged(shim['measured']).thicker;
    expect(found && mm(found.leastUm)).toEqual(published(shim, 'thinnestMm'));
    expect(found && mm(found.mostUm)).toEqual(published(shim, 'thickestMm'));
  });
  test('0.02 mm measured is refused: even the thickest shim would have to be below nothing', () => {
    const { value } = shim['refused'] as { readonly value: string };
    const { verdict, thicker } = judged(value);
    expect(verdict).toBe('too small');
    expect(thicker && toNumber(thicker.mostUm)).toBeLessThan(0);
  });
});

describe(`${pack['title']} (${pack['source']})`, () => {
  const limits = { clearance: { least: pack['least'] as string, most: pack['most'] as string } };
  // The manual's plates are not told; one of an invented thickness stands for them.
  const plates = [{ kind: 'friction', thickness: '2.00 mm' }] as const;
  const described: Pack = { device: 'brake', plates, limits };
  const [depth, edge, stack] = ['depth', 'edge', 'stack'].map((key) => length(pack[key]));
  const judged = judgePack(described, {
    device: 'brake',
    depthGauge: { depth: depth as Length, edge: edge as Length, stack: stack as Length },
  });
  test('depth below the edge: the clearance and the stack', () => {
    const clearance = judged.measured[0]?.clearance.um as Rational;
    expect(mm(plus(clearance, length(pack['stack']).um))).toEqual(published(pack, 'depthMm'));
  });
  test('clearance, and that it is outside', () => {
    expect(mm(judged.measured[0]?.clearance.um as Rational)).toEqual(
      published(pack, 'clearanceMm'),
    );
    expect(judged.verdict === 'inside').toBe((pack['inside'] as { value: boolean }).value);
  });
  test('smallest and largest shim to add', () => {
    expect(judged.thicker && mm(judged.thicker.leastUm)).toEqual(published(pack, 'thinnestMm'));
    expect(judged.thicker && mm(judged.thicker.mostUm)).toEqual(published(pack, 'thickestMm'));
  });
});
