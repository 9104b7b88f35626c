import { describe, expect, it } from 'vitest';
import { flow } from '../src/engine/flow/index.ts';
import { toNumber } from '../src/engine/linear/index.ts';
import { type Train, appliedIn } from '../src/engine/train/index.ts';
import { type EndView, endScene, endView, placeWheels } from '../src/telling/endview/index.ts';
import { Dice, seedOfRun } from './dice.ts';
import { trainOf } from './line.ts';
import { anglesBy, engagedIn, meshesOf, worstMeeting } from './mesh.ts';
import { polygonOf, standing } from './outline.ts';
import { randomTrain } from './random-train.ts';
import { OURS, ours } from './trains.ts';
import { Tally } from './tally.ts';

const seed = seedOfRun();
const views = OURS.map(ours).flatMap((train) =>
  [...train.sets, ...train.pairs].map(({ name }) => ({
    train,
    title: `${train.name}, ${name}`,
    view: endView(train, name) as EndView,
  })),
);
const toothed = views.filter(({ view }) => view.kind !== 'bevel' && view.chain === undefined);

/** The set `a`, alone, of these teeth: `30:66 x3`. */
function setOf(teeth: string): Train {
  return trainOf(`a ${teeth}; in crank; out a.carrier`);
}

function drawn(teeth: string): EndView {
  return endView(setOf(teeth), 'a') as EndView;
}

// How wheels meet at `rounds` angles by chance, the worst in modules; two meshes at each.
function worst(built: Train, view: EndView, rounds: number, dice: Dice) {
  const meshes = meshesOf(built, view);
  const engaged = engagedIn(view, meshes);
  const found = { overlap: 0, gap: 0 };
  for (let round = 0; round < rounds; round++) {
    const angles = anglesBy(dice, built, meshes);
    const { overlap, gap } = worstMeeting(view, dice.several(engaged, 2), angles);
    found.overlap = Math.max(found.overlap, overlap);
    found.gap = Math.max(found.gap, gap);
  }
  return found;
}

// Flanks stand back by 0.015 modules each: wheels that are in the middle of their play are 0.03
// modules apart.
const OVERLAP = 0.005;
const GAP = 0.05;

describe(`teeth mesh at all angles (seed ${seed})`, () => {
  it.each(toothed)('$title', ({ train: built, view }) => {
    const { overlap, gap } = worst(built, view, 50, new Dice(seed));
    expect(overlap).toBeLessThan(OVERLAP);
    expect(gap).toBeLessThan(GAP);
    expect(gap).toBeGreaterThan(0.02);
  });

  it.each(toothed)('$title, as its gears turn it', ({ train: built, view }) => {
    const dice = new Dice(seed);
    const meshes = meshesOf(built, view);
    const engaged = engagedIn(view, meshes);
    for (const { gears } of built.ranges) {
      const gear = dice.pick(gears);
      const { drive } = flow(built, appliedIn(built, gear));
      const turns = dice.whole(1, 999) / 100;
      const angles = new Map(
        [...drive.drawn].map(([member, speed]) => [member, toNumber(speed) * turns * 360]),
      );
      const { overlap, gap } = worstMeeting(view, dice.several(engaged, 2), angles);
      expect(overlap).toBeLessThan(OVERLAP);
      expect(gap).toBeLessThan(GAP);
    }
  });

  it('but not when one is turned out of mesh', () => {
    const { train: built, view } = toothed[0] as (typeof toothed)[0];
    const engaged = engagedIn(view, meshesOf(built, view));
    const wheels = view.wheels.map((wheel) => {
      return wheel.kind === 'sun' ? { ...wheel, phase: wheel.phase + 90 / wheel.teeth } : wheel;
    });
    expect(worstMeeting({ ...view, wheels }, engaged, new Map()).overlap).toBeGreaterThan(0.2);
  });
});

// Of our own making; each says what is peculiar to it.
describe('sets of all kinds mesh', () => {
  it.each([
    ['few teeth', '8:8:24 x4', []],
    ['a small sun', '6:20:46 x4', []],
    ['a ring a tooth larger', '30:18:67 x3', ['not evenly spaced']],
    ['a ring a tooth smaller', '30:18:65 x5', []],
    ['planets that are not even', '30:66 x5', ['not evenly spaced']],
    ['teeth that do not fit', '30:18:75 x3', ['teeth do not fit']],
    ['planets not counted', '30:66', ['planets not counted']],
    ['a pair', '30:14+12:70 x4', []],
    ['a pair not even', '30:14+12:70 x3', ['not evenly spaced']],
    ['a pair not counted', '30:+:70 x4', ['teeth not counted']],
    ['two modules', '20:24-44:100 x3', ['not evenly spaced']],
    ['equal steps', '30:18-18:66 x3', []],
  ])('%s: %s', (_, set, notes) => {
    const view = drawn(set);
    expect(view.notes.map(({ note }) => note)).toEqual(notes);
    const { overlap, gap } = worst(setOf(set), view, 8, new Dice(seed));
    expect(overlap).toBeLessThan(OVERLAP);
    expect(gap).toBeLessThan(GAP);
  });

  it(`by chance (seed ${seed})`, () => {
    const dice = new Dice(seed);
    const tally = new Tally({ plain: 12, pair: 4, stepped: 2, sharing: 3, wheels: 3 });
    for (let k = 0; k < 25; k++) {
      const built = randomTrain(seed + k);
      for (const { name, kind } of built.sets) {
        if (kind === 'bevel') continue;
        tally.met(kind);
        const view = endView(built, name) as EndView;
        const { overlap, gap } = worst(built, view, 2, dice);
        expect(overlap, `train ${seed + k}, ${name}`).toBeLessThan(OVERLAP);
        expect(gap, `train ${seed + k}, ${name}`).toBeLessThan(GAP);
      }
    }
    tally.enough();
  });
});

describe('an outline', () => {
  it.each(toothed)('of $title is closed, round and has its teeth', ({ view }) => {
    for (const { outline, teeth } of view.wheels) {
      const polygon = polygonOf(outline);
      const radii = radiiOf(polygon);
      const [least, most] = [Math.min(...radii), Math.max(...radii)];
      const middle = (least + most) / 2;
      let crossings = 0;
      radii.forEach((radius, i) => {
        if (radius > middle !== (radii.at(i - 1) ?? 0) > middle) crossings += 1;
      });
      expect(crossings).toBe(2 * teeth);
    }
  });

  it('maps onto itself when its wheel turns by a pitch', () => {
    for (const { outline, teeth } of drawn('29:67 x3').wheels) {
      const still = polygonOf(outline);
      const { polygon } = standing(still, false, 0, 0, 360 / teeth);
      const each = still.length / teeth;
      expect(each % 2).toBe(0);
      polygon.forEach((value, i) => {
        expect(Math.abs(value - (still[(i + each) % still.length] ?? 0))).toBeLessThan(0.02);
      });
    }
  });

  // Addendum 1 module, dedendum 1.25, of pitch radii z/2; the planets' pins are 30 modules from
  // the axis.
  it('has standard proportions where no tooth has to give way', () => {
    const view = drawn('30:90 x3');
    const module = (view.wheels.find(({ kind }) => kind === 'planet')?.pin.radius ?? 0) / 30;
    for (const { outline, kind, teeth } of view.wheels) {
      const radii = radiiOf(polygonOf(outline));
      const ends = [Math.min(...radii), Math.max(...radii)].map((r) => r / module - teeth / 2);
      expect(ends[0]).toBeCloseTo(kind === 'ring' ? -1 : -1.25, 2);
      expect(ends[1]).toBeCloseTo(kind === 'ring' ? 1.25 : 1, 2);
    }
  });

  it('of a hundred teeth is less than 12 kB', () => {
    const outlines = drawn('40:100 x4').wheels.map((w) => w.outline);
    for (const outline of outlines) expect(outline.length).toBeLessThan(12_000);
  });
});

function radiiOf(polygon: Float64Array): number[] {
  return Array.from({ length: polygon.length / 2 }, (_, i) =>
    Math.hypot(polygon[2 * i] ?? 0, polygon[2 * i + 1] ?? 0),
  );
}

describe('wheels are placed', () => {
  const view = drawn('30:66 x3');
  const sun = view.wheels.findIndex(({ kind }) => kind === 'sun');
  const planet = view.wheels.findIndex(({ kind }) => kind === 'planet');

  it('clockwise for a positive angle, seen from the input end', () => {
    const still = placeWheels(view, new Map());
    const turned = placeWheels(
      view,
      new Map([
        ['a.sun', 10],
        ['a.carrier', 90],
      ]),
    );
    expect((turned[3 * sun + 2] ?? 0) - (still[3 * sun + 2] ?? 0)).toBeCloseTo(10);
    // The first planet stands at the top; a quarter of a turn clockwise is to the right.
    expect(still[3 * planet + 1]).toBeLessThan(view.axis.y);
    expect(turned[3 * planet]).toBeGreaterThan(view.axis.x + 100);
    expect(turned[3 * planet + 1]).toBeCloseTo(view.axis.y);
  });

  it('as a mirror image, seen from the output end', () => {
    const other = endView(setOf('30:66 x3'), 'a', 'output') as EndView;
    const angles = new Map([
      ['a.sun', 25],
      ['a.carrier', 31],
      ['a.planet', -7],
    ]);
    const [here, there] = [placeWheels(view, angles), placeWheels(other, angles)];
    for (let k = 0; k < view.wheels.length; k++) {
      expect(there[3 * k]).toBeCloseTo(2 * view.axis.x - (here[3 * k] ?? 0), 9);
      expect(there[3 * k + 1]).toBeCloseTo(here[3 * k + 1] ?? 0, 9);
      expect(there[3 * k + 2]).toBeCloseTo(-(here[3 * k + 2] ?? 0), 9);
    }
  });

  it('into the array that is given', () => {
    const places = placeWheels(view, new Map());
    expect(placeWheels(view, new Map([['a.sun', 3]]), places)).toBe(places);
  });

  it('and a scene of them has a group a wheel, in order, where they are', () => {
    const angles = new Map([['a.carrier', 40]]);
    const places = placeWheels(view, angles);
    const groups = endScene(view, angles).marks.flatMap((mark) =>
      mark.mark === 'group' && mark.look?.startsWith('end-wheel') ? [mark] : [],
    );
    expect(groups.map(({ at }) => [at?.x, at?.y, at?.degrees])).toEqual(
      view.wheels.map((_, k) => [...places.subarray(3 * k, 3 * k + 3)]),
    );
    expect(groups.map(({ about }) => about?.name)).toEqual(view.wheels.map(({ label }) => label));
  });
});

describe('a faulty or odd set', () => {
  it('shows a wheel with no teeth left as a disc that touches nothing', () => {
    const whole = setOf('30:66 x3');
    const [set] = whole.sets;
    const stripped = {
      ...whole,
      sets: [{ ...(set as NonNullable<typeof set>), stripped: ['a.sun'] }],
    };
    const sun = endView(stripped, 'a')?.wheels.find(({ kind }) => kind === 'sun');
    expect(sun?.mark).toBe('');
    expect(sun?.outline).toMatch(/^M0-?[\d.]+A/u);
  });

  it('of any teeth at all is drawn with numbers', () => {
    for (const [sun, planet] of [
      [1, 1],
      [2, 9],
      [3, 3],
      [90, 1],
      [1, 90],
    ] as const) {
      const view = drawn(`${sun}:${planet}:${sun + 2 * planet} x3`);
      expect(JSON.stringify(endScene(view))).not.toMatch(/NaN|Infinity|null/u);
    }
  });

  it.each(['30000:90000 x3', '30:70000-19:90000 x3', '100000<>16 x2'])(
    'of too many teeth is drawn without, and says so: %s',
    (set) => {
      const view = drawn(set);
      expect(view.notes.map(({ note }) => note)).toContain('teeth too fine');
      expect(JSON.stringify(endScene(view)).length).toBeLessThan(100_000);
    },
  );

  it('and another name has no view', () => {
    expect(endView(setOf('30:66 x3'), 'b')).toBeUndefined();
  });
});
