import { describe, expect, it } from 'vitest';
import type { OneWayClutch, Way } from '../../engine/train/index.ts';
import type { Group, Mark, Path } from '../scene/index.ts';
import { freeWay, jammingScene } from './jamming.ts';

const WAYS: readonly Way[] = ['clockwise', 'anticlockwise'];
const clutch = (lets: Way): OneWayClutch => ({
  kind: 'one-way',
  name: 'low sprag',
  first: 'hub',
  second: 'case',
  lets,
});

// Of the first sprag, the radius and the angle (degrees, clockwise from the top) of each end's middle.
function ends(device: OneWayClutch, holds: boolean, seenFrom: 'input' | 'output') {
  const { marks } = jammingScene(device, { holds, seenFrom, title: '' });
  const outer = marks.find((mark): mark is Group => mark.mark === 'group' && isOuter(mark));
  const sprag = outer?.marks.find((mark): mark is Path => isJam(mark));
  const numbers = [...(sprag?.d ?? '').matchAll(/-?\d*\.?\d+/gu)].map(Number);
  const points: [number, number][] = [];
  for (let k = 0; k < numbers.length; k += 2) {
    const [x = 0, y = 0] = points.at(-1) ?? [];
    points.push([x + (numbers[k] ?? 0), y + (numbers[k + 1] ?? 0)]);
  }
  const middle = (a = 0, b = 0) => {
    const [[ax, ay], [bx, by]] = [points[a] ?? [0, 0], points[b] ?? [0, 0]];
    const [x, y] = [(ax + bx) / 2, (ay + by) / 2];
    return { radius: Math.hypot(x, y), degrees: (Math.atan2(x, -y) * 180) / Math.PI };
  };
  return { outer: middle(0, 1), inner: middle(2, 3) };
}

const isOuter = ({ look }: Group) => look === 'races-outer';
const isJam = (mark: Mark) => mark.mark === 'path' && mark.look === 'races-jam';

describe.each(WAYS)('a one-way clutch whose inner race may turn %s', (lets) => {
  it.each(['input', 'output'] as const)('slants as it must, seen from the %s', (seenFrom) => {
    const device = clutch(lets);
    const way = freeWay(device, seenFrom) === 'clockwise' ? 1 : -1;
    const [stands, lies] = [true, false].map((holds) => ends(device, holds, seenFrom));
    const lean = (its = stands) => way * ((its?.inner.degrees ?? 0) - (its?.outer.degrees ?? 0));
    // The free race carries the inner end on: it lies; the other way it stands up.
    expect(lean(stands)).toBeGreaterThan(2);
    expect(lean(lies)).toBeGreaterThan(lean(stands) + 4);
    // Standing it reaches both races, whose gap is less than it is long; lying it is clear of one.
    expect(stands?.inner.radius).toBeLessThan(51);
    expect(lies?.inner.radius).toBeGreaterThan(53);
  });

  it('is seen the other way round from the other end', () => {
    expect(freeWay(clutch(lets), 'input')).toBe(lets);
    expect(freeWay(clutch(lets), 'output')).not.toBe(lets);
  });
});
