import {
  assemble,
  companyOf,
  type Mesh,
  setGearing,
  type Train,
} from '../src/engine/train/index.ts';
import { type EndView, placeWheels } from '../src/telling/endview/index.ts';
import type { Dice } from './dice.ts';
import { type Meeting, meetingOf, polygonOf, standing } from './outline.ts';

/** Two wheels of a view, by their places in it, that mesh, and their module. */
export interface Engaged {
  readonly a: number;
  readonly b: number;
  readonly module: number;
}

/** The meshes of a view's wheels as the train has them; planets whose teeth it draws as it likes
 * have the view's. */
export function meshesOf(train: Train, view: EndView): Mesh[] {
  const pair = train.pairs.find(({ name }) => name === view.name);
  if (pair) {
    const { driver: a, driven: b, kind } = pair;
    const turns = kind === 'external' ? 'opposite' : 'same';
    return [{ within: pair.name, a, b, carrier: 'case', kind, turns }];
  }
  const company = companyOf(train, view.name);
  const own = (name: string) => (name === view.name ? 0 : 1);
  const sets = train.sets
    .filter(({ name }) => companyOf(train, name) === company)
    .toSorted((a, b) => own(a.name) - own(b.name));
  const planets = sets.flatMap((set) => setGearing(train, set).planets);
  const unknown = new Set(planets.flatMap(({ member, known }) => (known ? [] : [member])));
  const drawn = (wheel: Mesh['a']) => {
    const found = view.wheels.find(({ member }) => member === wheel.member);
    return unknown.has(wheel.member) && found ? { ...wheel, teeth: found.teeth } : wheel;
  };
  return sets
    .flatMap((set) => setGearing(train, set).meshes)
    .map((mesh) => ({ ...mesh, a: drawn(mesh.a), b: drawn(mesh.b) }))
    .filter(({ a, b }) => [a, b].every((wheel) => placesOf(view, wheel).length > 0));
}

function placesOf({ wheels }: EndView, { member, teeth }: Mesh['a']): number[] {
  return wheels.flatMap((w, k) => (w.member === member && w.teeth === teeth ? [k] : []));
}

/** Every two wheels of a view that mesh. */
export function engagedIn(view: EndView, meshes: readonly Mesh[]): Engaged[] {
  const at = placeWheels(view, new Map());
  const apart = (a: number, b: number) =>
    Math.hypot((at[3 * a] ?? 0) - (at[3 * b] ?? 0), (at[3 * a + 1] ?? 0) - (at[3 * b + 1] ?? 0));
  return meshes.flatMap((mesh) => {
    const [as, bs] = [placesOf(view, mesh.a), placesOf(view, mesh.b)];
    const teeth =
      mesh.kind === 'internal'
        ? Math.abs(mesh.a.teeth - mesh.b.teeth)
        : mesh.a.teeth + mesh.b.teeth;
    const all = as.flatMap((a) => bs.map((b) => ({ a, b, module: (2 * apart(a, b)) / teeth })));
    // A wheel that is drawn twice meshes in the plane of its mate.
    const plane = (k: number) => view.wheels[k]?.plane;
    const level = all.filter(({ a, b }) => plane(a) === plane(b));
    const found = level.length > 0 ? level : all;
    if (as.length === 1 || bs.length === 1) return found;
    // Planets that mesh one another belong to one copy; the copies are in one order.
    const copy = (k: number, of: readonly number[]) =>
      of.filter((other) => plane(other) === plane(k)).indexOf(k);
    return found.filter(({ a, b }) => copy(a, as) === copy(b, bs));
  });
}

/**
 * Angles by chance that every mesh allows, in degrees: the carrier's and one wheel's are chosen,
 * and Willis's relation gives the others. Planets that are joined turn as one.
 */
export function anglesBy(dice: Dice, train: Train, meshes: readonly Mesh[]): Map<string, number> {
  const { bodyOf, gearing } = assemble({ ...train, devices: [] });
  const planets = gearing.planets.map(({ member }) => member);
  const carrier = meshes[0]?.carrier ?? 'case';
  const carried = carrier === 'case' ? 0 : dice.whole(-7200, 7200) / 10;
  const angles = new Map([[carrier, carried]]);
  const joinedTo = (planet: string) =>
    planets.filter(
      (other) => bodyOf(other) === bodyOf(planet) && bodyOf(other) !== bodyOf(carrier),
    );
  const set = (member: string, angle: number) => {
    const all = planets.includes(member) ? [member, ...joinedTo(member)] : [member];
    for (const each of all) angles.set(each, angle);
  };
  for (let round = 0; round <= meshes.length; round++) {
    for (const { a, b, turns } of meshes) {
      if (!angles.has(a.member) && !angles.has(b.member) && round === 0 && angles.size < 2)
        set(a.member, dice.whole(-7200, 7200) / 10);
      for (const [from, to] of [
        [a, b],
        [b, a],
      ] as const) {
        const known = angles.get(from.member);
        if (known === undefined || angles.has(to.member)) continue;
        const way = turns === 'same' ? 1 : -1;
        set(to.member, carried + (way * (known - carried) * from.teeth) / to.teeth);
      }
    }
  }
  return angles;
}

/** The worst of how wheels meet at some angles, in modules. */
export function worstMeeting(
  view: EndView,
  engaged: readonly Engaged[],
  angles: ReadonlyMap<string, number>,
): Meeting {
  const places = placeWheels(view, angles);
  const stood = (k: number) => {
    const { outline, kind } = view.wheels[k] as EndView['wheels'][0];
    const [x = 0, y = 0, degrees = 0] = places.subarray(3 * k, 3 * k + 3);
    return standing(polygonBy(outline), kind === 'ring', x, y, degrees);
  };
  let worst: Meeting = { overlap: 0, gap: 0 };
  for (const { a, b, module } of engaged) {
    const { overlap, gap } = meetingOf(stood(a), stood(b), 0.7 * module);
    worst = {
      overlap: Math.max(worst.overlap, overlap / module),
      gap: Math.max(worst.gap, gap / module),
    };
  }
  return worst;
}

const polygons = new Map<string, Float64Array>();

// Reading an outline takes longer than turning it.
function polygonBy(outline: string): Float64Array {
  const polygon = polygons.get(outline) ?? polygonOf(outline, 4);
  polygons.set(outline, polygon);
  return polygon;
}
