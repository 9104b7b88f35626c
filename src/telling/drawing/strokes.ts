import { type Assembly, CASE } from '../../engine/train/index.ts';
import {
  ABOVE,
  BELOW,
  CASE_BAND,
  MIDDLE,
  MIDDLE_HEIGHT,
  OUTER,
  pinOf,
  PLATES,
  RING_RIM,
  sunRimOf,
} from './levels.ts';
import { type Company, holdsToCase, type Station } from './station.ts';

/** What can be chosen of a half-section before it has lengths; `choose` chooses it. */
export interface Arrangement {
  /** Stations from the input end on. */
  readonly order: number[];
  /** By station: the carrier's plate, or a device's first member, stands on the right. */
  readonly right: boolean[];
  /** By station: rings that go inward do so on the right. */
  readonly ringRight: boolean[];
  /** By body: its trunk lies outside the sets. */
  readonly outer: boolean[];
  /** Bodies, those nearer to the axis first. */
  readonly rank: number[];
}

/** A line of a body, in columns and heights; of a length only once both have places. */
export interface Upright {
  readonly body: number;
  readonly strip: number;
  readonly column: number;
  readonly low: number;
  readonly high: number;
  /** The station that the body meets here. */
  readonly meets: string;
}

export interface Level {
  readonly body: number;
  readonly strip: number;
  readonly height: number;
  readonly from: number;
  readonly to: number;
  readonly is: 'trunk' | 'bar' | 'pin';
  /** The station whose ring or carrier it is; a trunk meets many. */
  readonly meets: string;
}

export interface Strokes {
  readonly uprights: Upright[];
  readonly levels: Level[];
  /** Of each station, its first column. */
  readonly starts: number[];
  readonly columns: number;
}

/** What stands where, and which axis each body is on: what an arrangement is of. */
export interface Subjects {
  readonly assembly: Assembly;
  readonly stations: readonly Station[];
  readonly strips: readonly number[];
}

/** The lines that an arrangement gives the bodies. */
export function strokesOf(subjects: Subjects, arrangement: Arrangement): Strokes {
  return new Drafting(subjects, arrangement).strokes;
}

/** How many columns a station takes. */
export function columnsOf(station: Station): number {
  switch (station.kind) {
    case 'company': {
      const rings = ringsOf(station.company);
      return 2 * rings + station.company.columns.length + 2;
    }
    case 'device':
    case 'pair':
      return 2;
    case 'end':
      return 1;
  }
}

/** Where the parts of a company stand among its columns. */
export function companyColumns(company: Company) {
  const rings = ringsOf(company);
  const meshes = company.columns.length;
  return {
    mesh: (c: number) => rings + 1 + c,
    plate: (right: boolean) => (right ? rings + 1 + meshes : rings),
    ringDisc: (ring: number, right: boolean) => (right ? 2 * rings + 1 + meshes - ring : ring),
  };
}

function ringsOf({ columns }: Company): number {
  return columns.filter(({ ring }) => ring).length;
}

class Drafting {
  readonly strokes: Strokes;
  private readonly subjects: Subjects;
  private readonly arrangement: Arrangement;
  private readonly trunks: number[];
  private readonly reach: (readonly [number, number] | undefined)[] = [];

  constructor(subjects: Subjects, arrangement: Arrangement) {
    this.subjects = subjects;
    this.arrangement = arrangement;
    this.trunks = this.trunkHeights();
    const starts: number[] = [];
    let columns = 0;
    for (const s of arrangement.order) {
      starts[s] = columns;
      columns += columnsOf(subjects.stations[s] as Station);
    }
    this.strokes = { uprights: [], levels: [], starts, columns };
    subjects.stations.forEach((station, s) => this.draft(station, s, starts[s] ?? 0));
    this.reach.forEach((span, body) => {
      if (!span) return;
      const [from, to] = span;
      this.level(body, this.trunks[body] ?? 0, from, to, 'trunk', '');
    });
  }

  private trunkHeights(): number[] {
    const { rank, outer } = this.arrangement;
    const count = { inner: 0, outer: 0 };
    const heights: number[] = [];
    for (const body of rank) {
      heights[body] = outer[body] ? OUTER + count.outer++ : count.inner++;
    }
    return heights;
  }

  private draft(station: Station, s: number, start: number): void {
    switch (station.kind) {
      case 'company':
        return this.company(station.company, s, start);
      case 'device':
        return this.device(station, s, start);
      case 'pair':
        return this.pair(station, start);
      case 'end':
        return this.touch(station.body, start);
    }
  }

  private company(company: Company, s: number, start: number): void {
    const { carrier, planets, columns } = company;
    const places = companyColumns(company);
    const right = this.arrangement.right[s] ?? false;
    const ringRight = this.arrangement.ringRight[s] ?? false;
    let rings = 0;
    columns.forEach(({ sun, ring }, c) => {
      const column = start + places.mesh(c);
      if (sun) {
        const rim = MIDDLE + sunRimOf(planets[sun.planet]?.level ?? 0);
        this.port(sun.body, column, rim, rim, MIDDLE, company.name);
      }
      if (!ring) return;
      const rim = MIDDLE + RING_RIM + 5 * rings;
      if (ring.body === 0 || this.arrangement.outer[ring.body]) {
        this.port(ring.body, column, rim, rim, MIDDLE + MIDDLE_HEIGHT, company.name);
      } else {
        const disc = start + places.ringDisc(rings, ringRight);
        this.level(
          ring.body,
          rim,
          Math.min(column, disc),
          Math.max(column, disc),
          'bar',
          company.name,
        );
        this.port(ring.body, disc, rim, rim, MIDDLE, company.name);
      }
      rings += 1;
    });
    const plate = start + places.plate(right);
    const pins = planets.map(({ level }) => MIDDLE + pinOf(level));
    const [low, high] = [Math.min(...pins), Math.max(...pins)];
    this.port(carrier, plate, low, high, MIDDLE + MIDDLE_HEIGHT, company.name);
    planets.forEach(({ from, to }, p) => {
      const far = start + places.mesh(right ? from : to);
      const [left, end] = [Math.min(far, plate), Math.max(far, plate)];
      this.level(carrier, pins[p] ?? 0, left, end, 'pin', company.name);
    });
  }

  private device({ device }: Station & { kind: 'device' }, s: number, start: number): void {
    const { assembly } = this.subjects;
    const right = this.arrangement.right[s] ?? false;
    if (holdsToCase(device)) {
      const member = device.first === CASE ? device.second : device.first;
      const body = assembly.bodyOf(member) ?? 0;
      this.port(body, start + (right ? 1 : 0), CASE_BAND, CASE_BAND, CASE_BAND, device.name);
      return;
    }
    [device.first, device.second].forEach((member, k) => {
      const column = start + (right ? 1 - k : k);
      const body = assembly.bodyOf(member) ?? 0;
      this.port(body, column, MIDDLE + PLATES.low, MIDDLE + PLATES.high, MIDDLE, device.name);
    });
  }

  private pair({ pair }: Station & { kind: 'pair' }, start: number): void {
    const { assembly, strips } = this.subjects;
    const bodies = [pair.driver, pair.driven].map(({ member }) => assembly.bodyOf(member) ?? 0);
    const at = bodies.map((body) => strips[body] ?? 0) as [number, number];
    bodies.forEach((body, k) => {
      const [own, other] = [at[k] ?? 0, at[1 - k] ?? 0];
      const column = start + (own === other ? k : 0);
      const end = own > other ? ABOVE : BELOW;
      this.port(body, column, end, end, end, pair.name);
    });
    // The driver's wheel reaches through the strips between.
    for (let strip = Math.min(...at) + 1; strip < Math.max(...at); strip++) {
      const body = bodies[0] ?? 0;
      const meets = pair.name;
      this.strokes.uprights.push({ body, strip, column: start, low: BELOW, high: ABOVE, meets });
    }
  }

  // From where a body meets something to its trunk, or, of the case, to the ground.
  private port(
    body: number,
    column: number,
    low: number,
    high: number,
    ground: number,
    meets: string,
  ): void {
    const end = body === 0 ? ground : (this.trunks[body] ?? 0);
    const strip = this.subjects.strips[body] ?? 0;
    const span = { low: Math.min(low, end), high: Math.max(high, end) };
    this.strokes.uprights.push({ body, strip, column, ...span, meets });
    if (body !== 0) this.touch(body, column);
  }

  private touch(body: number, column: number): void {
    const [from, to] = this.reach[body] ?? [column, column];
    this.reach[body] = [Math.min(from, column), Math.max(to, column)];
  }

  private level(
    body: number,
    height: number,
    from: number,
    to: number,
    is: Level['is'],
    meets: string,
  ): void {
    const strip = this.subjects.strips[body] ?? 0;
    this.strokes.levels.push({ body, strip, height, from, to, is, meets });
  }
}
