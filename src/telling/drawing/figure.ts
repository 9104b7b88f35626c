import type { Device, Way } from '../../engine/train/index.ts';
import { halfOf, MIDDLE, MIDDLE_HEIGHT, pinOf, PLATES, RING_RIM, sunRimOf } from './levels.ts';
import { type Places, SIZE } from './place.ts';
import type { Group, Mark, Path, Subject } from './scene.ts';
import { type Company, holdsToCase, type Station } from './station.ts';
import { type Arrangement, companyColumns, type Strokes, type Subjects } from './strokes.ts';
import * as symbol from './symbol.ts';

/** A set, a device, a gear pair or an end: its symbol, and its name beside it. */
export interface Figure {
  readonly about?: Subject;
  readonly marks: readonly Mark[];
  readonly names: readonly string[];
  /** The right end of the first line of the name. */
  readonly nameX: number;
  readonly nameY: number;
}

/** The symbols of everything that stands along the axes. */
export function figuresOf(
  subjects: Subjects,
  arrangement: Arrangement,
  strokes: Strokes,
  places: Places,
): Figure[] {
  return subjects.stations.map((station, s) => {
    const draft = { subjects, strokes, places, start: strokes.starts[s] ?? 0 };
    const { lines, x } = places.names[s] ?? { lines: [], x: 0 };
    const { about, marks, nameY } = drawn(station, draft, arrangement.right[s] ?? false);
    return { ...(about && { about }), marks, names: lines, nameX: x, nameY };
  });
}

interface Draft {
  readonly subjects: Subjects;
  readonly strokes: Strokes;
  readonly places: Places;
  readonly start: number;
}

interface Drawn {
  readonly about?: Subject;
  readonly marks: readonly Mark[];
  readonly nameY: number;
}

function drawn(station: Station, draft: Draft, right: boolean): Drawn {
  switch (station.kind) {
    case 'company':
      return drawnCompany(station.company, draft);
    case 'device':
      return drawnDevice(station.device, draft, right);
    case 'pair':
      return drawnPair(station, draft);
    case 'end':
      return drawnEnd(station, draft);
  }
}

function drawnCompany(company: Company, { subjects, places, start }: Draft): Drawn {
  const columns = companyColumns(company);
  const strip = subjects.strips[company.carrier] || stripOfWheels(company, subjects);
  const y = (middle: number) => places.y(strip, MIDDLE + middle);
  const label = (body: number) => subjects.assembly.bodies[body]?.label ?? '';
  const marks: Mark[] = [];
  let rings = 0;
  company.columns.forEach(({ planets, sun, ring }, c) => {
    const x = places.x(start + columns.mesh(c));
    for (const p of planets) {
      const level = company.planets[p]?.level ?? 0;
      const [low, high] = [pinOf(level) - halfOf(level), pinOf(level) + halfOf(level)];
      marks.push(
        company.bevel ? symbol.bevelPinion(x, y(high), y(low)) : symbol.planet(x, y(high), y(low)),
      );
    }
    if (sun) {
      const rim = y(sunRimOf(company.planets[sun.planet]?.level ?? 0));
      const wheel = company.bevel ? symbol.bevelSide(x, rim, c === 0) : symbol.sun(x, rim);
      marks.push(of(label(sun.body), [wheel, ...ground(sun.body, x, y(0), 'foot')]));
    }
    if (ring) {
      const rim = y(RING_RIM + 5 * rings);
      const wheel = symbol.ring(x, rim, y(RING_RIM));
      marks.push(of(label(ring.body), [wheel, ...ground(ring.body, x, y(MIDDLE_HEIGHT), 'top')]));
      rings += 1;
    }
  });
  if (company.carrier === 0) {
    const plate = places.x(start + columns.plate(false));
    marks.push(...ground(0, plate, y(MIDDLE_HEIGHT), 'top'));
  }
  return {
    about: { kind: 'set', name: company.name },
    marks,
    nameY: y(MIDDLE_HEIGHT) + SIZE,
  };
}

function stripOfWheels({ columns }: Company, { strips }: Subjects): number {
  const bodies = columns.flatMap(({ sun, ring }) => [sun?.body ?? 0, ring?.body ?? 0]);
  return strips[bodies.find((body) => body !== 0) ?? 0] ?? 0;
}

function ground(body: number, x: number, y: number, side: 'top' | 'foot'): Path[] {
  return body === 0 ? [symbol.ground(x, y, side)] : [];
}

function of(member: string, marks: readonly Mark[]): Group {
  return { mark: 'group', look: 'member', about: { kind: 'member', name: member }, marks };
}

function drawnDevice(device: Device, { subjects, places, start }: Draft, right: boolean): Drawn {
  const { assembly, strips } = subjects;
  const about: Subject = { kind: 'device', name: device.name };
  const body = assembly.bodyOf(device.first) || assembly.bodyOf(device.second) || 0;
  const strip = strips[body] ?? 0;
  const [left, far] = [places.x(start), places.x(start + 1)];
  if (!holdsToCase(device)) {
    const [top, foot] = [PLATES.high, PLATES.low].map((h) => places.y(strip, MIDDLE + h)) as [
      number,
      number,
    ];
    const marks =
      device.kind === 'one-way'
        ? symbol.oneWay(left, far, (top + foot) / 2, letsOf(device.lets, !right))
        : [symbol.plates(left, far, top, foot)];
    return { about, marks, nameY: top + 4 };
  }
  const caseY = places.caseOf(strip);
  const [member, held] = right ? [far, left] : [left, far];
  const marks = [
    ...(strip > 0 ? [symbol.ground((left + far) / 2, caseY, 'top')] : []),
    ...onCase(device, member, held, caseY),
  ];
  return { about, marks, nameY: caseY + SIZE + 4 };
}

function onCase(device: Device, member: number, held: number, caseY: number): Mark[] {
  switch (device.kind) {
    case 'band':
      return [symbol.band(member, held, caseY)];
    case 'one-way':
      return [
        symbol.hanger(held, caseY),
        ...symbol.oneWay(member, held, caseY + 34, letsOf(device.lets, device.first !== 'case')),
      ];
    case 'brake':
    case 'clutch':
      return [symbol.hanger(held, caseY), symbol.plates(member, held, caseY + 20, caseY + 56)];
  }
}

// The arrow tells how the member on the left of the symbol (or the one that is not the case)
// may turn.
function letsOf(lets: Way, first: boolean): Way {
  return first ? lets : lets === 'clockwise' ? 'anticlockwise' : 'clockwise';
}

function drawnPair(
  { pair }: Station & { kind: 'pair' },
  { subjects, places, start }: Draft,
): Drawn {
  const { assembly, strips } = subjects;
  const bodies = [pair.driver, pair.driven].map(({ member }) => assembly.bodyOf(member) ?? 0);
  const own = bodies.map((body) => strips[body] ?? 0) as [number, number];
  const same = own[0] === own[1];
  const marks = bodies.map((body, k) => {
    const [strip, other] = [own[k] ?? 0, own[1 - k] ?? 0];
    const below = strip <= other;
    const y = below ? places.footOf(strip) : places.topOf(strip);
    const x = places.x(start + (same ? k : 0));
    const wheel = symbol.pairWheel(x, y, below, pair.kind === 'chain');
    return of(assembly.bodies[body]?.label ?? '', [wheel]);
  });
  return {
    about: { kind: 'pair', name: pair.name },
    marks,
    nameY: places.footOf(Math.min(...own)) - 14,
  };
}

function drawnEnd(
  { body, name }: Station & { kind: 'end' },
  { strokes, places, start }: Draft,
): Drawn {
  const trunk = strokes.levels.find((level) => level.body === body && level.is === 'trunk');
  const y = trunk ? places.y(trunk.strip, trunk.height) : 0;
  const x = places.x(start);
  return { marks: trunk ? [symbol.endArrow(x, y, name)] : [], nameY: y };
}
