import { CASE, type Device, type Way } from '../../engine/train/index.ts';
import { type Arrangement, SHAFT } from './arrangement.ts';
import {
  BELOW,
  CASE_BAND,
  DRUM,
  HUB,
  HUB_AT_CASE,
  MIDDLE,
  MIDDLE_HEIGHT,
  pinOf,
  UNDER,
} from './levels.ts';
import type { Places } from './place.ts';
import { companyColumns, halfIn, RIM_HIGH, RIM_STEP, rimsIn } from './exits.ts';
import { type Group, type Mark, type Path, type SceneSubject, symbol } from '../scene/index.ts';
import { type Company, holdsToCase, type Station } from './station.ts';
import { type Drafting, STUB } from './strokes.ts';
import { stripOf } from './strips.ts';

/** A set, a device, a gear pair or an end: its symbol, and its name beside it. */
export interface Figure {
  readonly about?: SceneSubject;
  readonly marks: readonly Mark[];
  readonly names: readonly string[];
  /** The right end of the first line of the name. */
  readonly nameX: number;
  readonly nameY: number;
}

/**
 * The symbols of everything that stands along the axes. `bare` names the meshes and the gear pairs
 * that have lost teeth.
 */
export function figuresOf(
  drafting: Drafting,
  arrangement: Arrangement,
  places: Places,
  bare: ReadonlySet<string>,
): Figure[] {
  return drafting.subjects.stations.flatMap((station, s): Figure[] => {
    const strip = stripOf(drafting.subjects, s);
    const draft = {
      drafting,
      places,
      bare,
      choice: arrangement.choice[s] ?? 0,
      x: (column: number) => places.x((drafting.starts[s] ?? 0) + column),
      y: (height: number) => places.y(strip, height),
      strip,
    };
    const drawn = draw(station, draft);
    if (!drawn) return [];
    const { lines = [], x = 0, y = 0 } = places.names[s] ?? {};
    return [{ ...drawn, names: lines, nameX: x, nameY: y }];
  });
}

interface Draft {
  readonly drafting: Drafting;
  readonly places: Places;
  readonly bare: ReadonlySet<string>;
  readonly choice: number;
  readonly x: (column: number) => number;
  readonly y: (height: number) => number;
  readonly strip: number;
}

type Drawn = Pick<Figure, 'about' | 'marks'>;

function draw(station: Station, draft: Draft): Drawn | undefined {
  switch (station.kind) {
    case 'company':
      return {
        about: { kind: 'set', name: station.name },
        marks: station.company.bevel
          ? bevelSet(station.company, draft)
          : planetarySet(station.company, draft),
      };
    case 'device':
      return {
        about: { kind: 'device', name: station.name },
        marks: device(station.device, draft),
      };
    case 'pair':
      return { about: { kind: 'pair', name: station.name }, marks: pair(station, draft) };
    case 'end':
      return { marks: end(station, draft) };
    case 'disc':
      return undefined;
  }
}

function planetarySet(company: Company, draft: Draft): Mark[] {
  const { x, y, choice } = draft;
  const columns = companyColumns(company, choice);
  const marks: Mark[] = [];
  const pin = (planet: number) =>
    y(MIDDLE + pinOf(company.planets[planet]?.level ?? 0, company.levels));
  let rings = 0;
  company.columns.forEach((column, c) => {
    const at = x(columns.mesh(c));
    const rims = rimsIn(company, column);
    for (const { planet } of column.planets) {
      marks.push(symbol.planet(at, pin(planet), halfIn(company, column, planet)));
    }
    const { sun, ring } = column;
    for (const { outer, mesh } of column.between) {
      marks.push(meshed(mesh, at, pin(outer) + halfIn(company, column, outer), draft));
    }
    if (sun) {
      const rim = y(MIDDLE + rims.sun);
      marks.push(meshed(sun.mesh, at, rim, draft));
      const foot = sun.body === 0 ? [symbol.ground(at, rim + STUB, 1)] : [];
      marks.push(wheelOf(sun.body, [symbol.sun(at, rim), ...foot], draft));
    }
    if (ring) {
      const rim = y(MIDDLE + rims.ring);
      marks.push(meshed(ring.mesh, at, rim, draft));
      const top = y(MIDDLE + rims.ring + RIM_HIGH + RIM_STEP * rings);
      const head = ring.body === 0 ? [symbol.ground(at, top - STUB, -1)] : [];
      marks.push(wheelOf(ring.body, [symbol.ring(at, rim, top), ...head], draft));
      rings += 1;
    }
  });
  marks.push(...sleeves(company, (c) => x(columns.mesh(c)), pin));
  if (company.carrier === 0) {
    marks.push(symbol.ground(x(columns.plate), y(MIDDLE + MIDDLE_HEIGHT), -1));
  }
  return marks;
}

// Wheels of one planet in several columns, which a set's planets or a join make one.
function sleeves(
  { planets, columns }: Company,
  x: (column: number) => number,
  pin: (planet: number) => number,
): Path[] {
  const spans = new Map<string, { at: number[]; y: number }>();
  columns.forEach((column, c) => {
    for (const { planet } of column.planets) {
      const { body = 0, level = 0 } = planets[planet] ?? {};
      const span = spans.get(`${body} ${level}`) ?? { at: [], y: pin(planet) };
      span.at.push(x(c));
      spans.set(`${body} ${level}`, span);
    }
  });
  return [...spans.values()].flatMap(({ at, y }) => {
    const [from, to] = [Math.min(...at), Math.max(...at)];
    return from < to ? [symbol.sleeve(from, to, y)] : [];
  });
}

function bevelSet(company: Company, draft: Draft): Mark[] {
  const { x, y, choice, bare } = draft;
  const columns = companyColumns(company, choice);
  const pin = y(MIDDLE + pinOf(0, 1));
  const top = y(MIDDLE + pinOf(0, 1) + 46);
  const at = x(columns.pin);
  const marks: Mark[] = [symbol.bevelPinion(at, pin, top)];
  if (company.carrier === 0) marks.push(symbol.ground(at, top - STUB, -1));
  company.columns.forEach(({ sun }, c) => {
    if (!sun) return;
    const wheel = symbol.bevelSide(x(columns.mesh(c)), pin, x(columns.mesh(c)) < at);
    const foot = sun.body === 0 ? [symbol.ground(x(columns.mesh(c)), pin + STUB, 1)] : [];
    marks.push(wheelOf(sun.body, [wheel, ...foot], draft));
    if (bare.has(sun.mesh)) marks.push(symbol.bare(x(columns.mesh(c)), pin));
  });
  return marks;
}

function meshed(name: string, x: number, y: number, { bare }: Draft): Group {
  const teeth = bare.has(name) ? symbol.bare(x, y) : symbol.mesh(x, y);
  return { mark: 'group', about: { kind: 'mesh', name }, marks: [teeth] };
}

function wheelOf(body: number, marks: readonly Mark[], { drafting }: Draft): Group {
  const name = drafting.subjects.assembly.bodies[body]?.label ?? '';
  return { mark: 'group', look: 'member', about: { kind: 'member', name }, marks };
}

function device(its: Device, { drafting, x, y, strip }: Draft): Mark[] {
  if (holdsToCase(its)) {
    const hub = y(CASE_BAND);
    const caseY = hub - HUB_AT_CASE;
    const grounds = strip === 0 ? [] : [symbol.ground(x(0), caseY, -1)];
    const { bodyOf } = drafting.subjects.assembly;
    const still = bodyOf(its.first) === bodyOf(its.second);
    const stuck = still ? [symbol.ground(x(0), hub, 1)] : [];
    return [...grounds, ...onCase(its, x(0), caseY, hub), ...stuck];
  }
  const [drum, hub] = [y(MIDDLE + DRUM), y(MIDDLE + HUB)];
  switch (its.kind) {
    case 'clutch':
    case 'brake':
    case 'band':
    case 'pawl':
      return [symbol.plates(x(1), drum, hub)];
    case 'one-way':
      return symbol.oneWay(x(1), drum, hub, its.lets);
  }
}

function onCase(its: Device, x: number, caseY: number, hub: number): Mark[] {
  switch (its.kind) {
    case 'band':
      return [symbol.band(x, hub, caseY)];
    case 'pawl':
      return [symbol.pawl(x, hub, caseY)];
    case 'one-way':
      return symbol.oneWay(x, caseY, hub, its.first === CASE ? opposite(its.lets) : its.lets);
    case 'brake':
    case 'clutch':
      return [symbol.plates(x, caseY, hub)];
  }
}

// The arrow tells how the lower member may turn: of a race in the case, the other.
function opposite(way: Way): Way {
  return way === 'clockwise' ? 'anticlockwise' : 'clockwise';
}

function pair(station: Station & { kind: 'pair' }, { drafting, places, bare, x }: Draft): Mark[] {
  const its = station.pair;
  const { assembly, strips } = drafting.subjects;
  const bodies = [its.driver, its.driven].map(({ member }) => assembly.bodyOf(member) ?? 0);
  const [one = 0, two = 0] = bodies.map((body) => strips[body] ?? 0);
  return bodies.map((body, k) => {
    const [strip, other] = k === 0 ? [one, two] : [two, one];
    const upper = strip <= other;
    const at = x(one === two ? k : 0);
    const edge =
      strip === other ? places.y(strip, UNDER) : places.y(Math.max(strip, other - 1), BELOW);
    const y = upper ? edge : (places.strips[strip]?.top ?? 0);
    return {
      mark: 'group',
      look: 'member',
      about: { kind: 'member', name: assembly.bodies[body]?.label ?? '' },
      marks: [
        symbol.pairWheel(at, y, upper, its.kind === 'chain'),
        ...(upper && bare.has(its.name) ? [symbol.bare(at, y)] : []),
        ...(body === 0 ? [symbol.ground(at, upper ? y - 14 : y + 14, upper ? -1 : 1)] : []),
      ],
    };
  });
}

function end({ body, name }: Station & { kind: 'end' }, { drafting, x, y }: Draft): Mark[] {
  if (body === 0) return [];
  const trunk = drafting.levels.list().find((level) => {
    return level.body === body && level.trunk === SHAFT;
  });
  return [symbol.endArrow(x(0), y(trunk?.height ?? 1), name)];
}
