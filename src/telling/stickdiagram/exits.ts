import type { Assembly } from '../../engine/train/index.ts';
import { CASE_BAND, DRUM, halfOf, HUB, MIDDLE, pinOf } from './levels.ts';
import { type Column, type Company, holdsToCase, type Station } from './station.ts';

/** Where a body meets a station, and how its line may leave. Columns count from the station's first. */
export interface Exit {
  readonly body: number;
  readonly column: number;
  readonly low: number;
  readonly high: number;
  /** How it may leave in its own column. */
  readonly leaves: 'up' | 'down' | 'either';
  /** The column in which it leaves the other way, by a bar at its height. */
  readonly aside?: number;
  /** Where it goes if its body has both a shaft and a drum. */
  readonly prefers: 'shaft' | 'drum';
  /** A planet's wheels: the bar of a pin reaches this column. */
  readonly pins?: readonly { readonly height: number; readonly column: number }[];
}

// What can be chosen of a station: a number of bits, all of which make sense together.
const FLIPPED = 1; // meshes in the other order; a clutch's other member is the hub
export const RIGHT = 2; // the carrier's plate, or the drum of a clutch, leaves on the right
const RING_RIGHT = 4;
const PLATE_OUT = 8; // the carrier's plate goes to its body's drum

/** Which bits mean anything for a station. */
export function choicesOf(station: Station): readonly number[] {
  switch (station.kind) {
    case 'company': {
      const { bevel, columns } = station.company;
      if (bevel) return [RIGHT];
      return [RIGHT, RING_RIGHT, PLATE_OUT, ...(columns.length > 1 ? [FLIPPED] : [])];
    }
    case 'device':
      if (holdsToCase(station.device)) return [];
      return station.device.kind === 'one-way' ? [RIGHT] : [FLIPPED, RIGHT];
    default:
      return [];
  }
}

/** How many columns a station takes. */
export function columnsIn(station: Station): number {
  switch (station.kind) {
    case 'company':
      return 2 * ringsOf(station.company) + station.company.columns.length + 3;
    case 'device':
      return holdsToCase(station.device) ? 1 : 3;
    case 'pair':
      return 2;
    case 'end':
    case 'disc':
      return 1;
  }
}

/** Where the parts of a company stand among its columns. */
export function companyColumns({ columns, bevel }: Company, choice: number) {
  const rings = columns.filter(({ ring }) => ring).length;
  const meshes = columns.length;
  // Of a bevel set the pin stands in the middle.
  const mesh = (c: number) => {
    const at = (choice & FLIPPED) === 0 ? c : meshes - 1 - c;
    return rings + 1 + at + (bevel && at > 0 ? 1 : 0);
  };
  return {
    mesh,
    plate: (choice & RIGHT) === 0 ? rings : rings + 2 + meshes,
    ring: (ring: number) => {
      return (choice & RING_RIGHT) === 0 ? rings - 1 - ring : rings + 3 + meshes + ring;
    },
    pin: rings + 2,
  };
}

/** The exits of a station as it is chosen, those of pairs and ends but for their heights. */
export function exitsOf(station: Station, choice: number, assembly: Assembly): Exit[] {
  switch (station.kind) {
    case 'company':
      return station.company.bevel
        ? bevelPorts(station.company, choice)
        : companyExits(station.company, choice);
    case 'device': {
      const bodies = [station.device.first, station.device.second].map((member) => {
        return assembly.bodyOf(member) ?? 0;
      }) as [number, number];
      return holdsToCase(station.device) ? [onCase(bodies)] : between(bodies, choice);
    }
    case 'pair':
    case 'end':
    case 'disc':
      return [];
  }
}

/** Half the height of a planet's wheel in a column. */
export function halfIn(company: Company, column: Column, planet: number): number {
  const { level } = company.planets[planet] ?? { level: 0 };
  const half = halfOf(level, company.levels);
  const size = column.planets.find((one) => one.planet === planet)?.size ?? 1;
  return company.levels > 1 ? half : Math.max(0.42, size) * half;
}

/** The teeth of a ring, and of a sun, where they meet their planet. */
export function rimsIn(company: Company, column: Column) {
  const at = (planet: number) => pinOf(company.planets[planet]?.level ?? 0, company.levels);
  const { sun, ring } = column;
  return {
    sun: sun ? at(sun.planet) - halfIn(company, column, sun.planet) : 0,
    ring: ring ? at(ring.planet) + halfIn(company, column, ring.planet) : 0,
  };
}

function ringsOf({ columns }: Company): number {
  return columns.filter(({ ring }) => ring).length;
}

/** From a ring's teeth up to its bar, and from that to the bar of the next. */
export const RIM_HIGH = 15;
export const RIM_STEP = 9;

function companyExits(company: Company, choice: number): Exit[] {
  const { carrier, planets, columns, levels } = company;
  const places = companyColumns(company, choice);
  const exits: Exit[] = [];
  let rings = 0;
  columns.forEach((column, c) => {
    const at = places.mesh(c);
    const rims = rimsIn(company, column);
    if (column.sun) exits.push(sunExit(column.sun.body, at, MIDDLE + rims.sun));
    if (!column.ring) return;
    const height = MIDDLE + rims.ring + RIM_HIGH + RIM_STEP * rings;
    const aside = places.ring(rings);
    exits.push({ ...ringExit(column.ring.body, at, height), aside });
    rings += 1;
  });
  const pins = planets.map(({ level, from, to }) => {
    const ends = [places.mesh(from), places.mesh(to)];
    const far = (choice & RIGHT) === 0 ? Math.max(...ends) : Math.min(...ends);
    return { height: MIDDLE + pinOf(level, levels), column: far };
  });
  const heights = pins.map(({ height }) => height);
  exits.push({
    body: carrier,
    column: places.plate,
    low: Math.min(...heights),
    high: Math.max(...heights),
    leaves: 'either',
    prefers: (choice & PLATE_OUT) === 0 ? 'shaft' : 'drum',
    pins,
  });
  return exits;
}

function bevelPorts(company: Company, choice: number): Exit[] {
  const places = companyColumns(company, choice);
  const pin = MIDDLE + pinOf(0, 1);
  return [
    ...company.columns.flatMap(({ sun }, c) => {
      return sun ? [sunExit(sun.body, places.mesh(c), pin)] : [];
    }),
    { ...ringExit(company.carrier, places.pin, pin + 46), aside: places.plate },
  ];
}

function sunExit(body: number, column: number, height: number): Exit {
  return { body, column, low: height, high: height, leaves: 'down', prefers: 'shaft' };
}

function ringExit(body: number, column: number, height: number): Exit {
  return { body, column, low: height, high: height, leaves: 'up', prefers: 'drum' };
}

function onCase([first, second]: readonly [number, number]): Exit {
  return sunExit(first === 0 ? second : first, 0, CASE_BAND);
}

function between([first, second]: readonly [number, number], choice: number): Exit[] {
  const [hub, drum] = (choice & FLIPPED) === 0 ? [first, second] : [second, first];
  const right = (choice & RIGHT) !== 0;
  return [
    { ...sunExit(hub, 1, MIDDLE + HUB), aside: right ? 0 : 2 },
    { ...ringExit(drum, 1, MIDDLE + DRUM), aside: right ? 2 : 0 },
  ];
}
