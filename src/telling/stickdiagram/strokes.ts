import { type Arrangement, BOTH, DRUM, SHAFT, type Subjects, type Route } from './arrangement.ts';
import { ABOVE, BELOW, CASE_BAND, MIDDLE, MIDDLE_HEIGHT, OUTER, UNDER } from './levels.ts';
import { Pool } from './pool.ts';
import { columnsIn, type Exit, exitsOf } from './exits.ts';
import type { Station } from './station.ts';
import { stripOf } from './strips.ts';
import { Trunks } from './trunks.ts';

/** A line of a body across the axis, in columns and heights. */
export interface Upright {
  body: number;
  strip: number;
  column: number;
  low: number;
  high: number;
  station: number;
  /** The trunks that it ends on, in bits: SHAFT, DRUM. */
  on: number;
}

/** A line of a body along the axis. */
export interface Level {
  body: number;
  strip: number;
  height: number;
  from: number;
  to: number;
  /** The trunk that it is, or 0 for a bar of a station. */
  trunk: 0 | typeof SHAFT | typeof DRUM;
  station: number;
}

/** How far a line reaches that goes nowhere but to the ground, or to its dial. */
export const STUB = 18;

/**
 * The lines that an arrangement gives the bodies. Asked again, it draws over what it has drawn:
 * a search asks some thousand times.
 */
export class Drafting {
  readonly subjects: Subjects;
  readonly uprights = new Pool<Upright>(() => ({ ...NO_UPRIGHT }));
  readonly levels = new Pool<Level>(() => ({ ...NO_LEVEL }));
  /** Of each station, its first column. */
  readonly starts: number[];
  /** Tracks near the axis and outside, together. */
  tracks = 0;

  private readonly exits: (readonly Exit[] | undefined)[] = [];
  private readonly counts: readonly number[];
  private readonly touches: readonly number[];
  private readonly stripsOf: readonly number[];
  private readonly shaft: Trunks;
  private readonly drum: Trunks;

  constructor(subjects: Subjects) {
    this.subjects = subjects;
    this.starts = subjects.stations.map(() => 0);
    this.counts = subjects.stations.map(columnsIn);
    this.touches = this.countTouches();
    this.stripsOf = subjects.stations.map((_, s) => stripOf(subjects, s));
    this.shaft = new Trunks(subjects, 1);
    this.drum = new Trunks(subjects, OUTER + 1);
  }

  /** How many stations a body meets. */
  touchesOf(body: number): number {
    return this.touches[body] ?? 0;
  }

  exitsAt(station: number, choice: number): readonly Exit[] {
    const key = station * 16 + choice;
    const { stations, assembly } = this.subjects;
    return (this.exits[key] ??= exitsOf(stations[station] as Station, choice, assembly));
  }

  draw(arrangement: Arrangement): void {
    const { stations } = this.subjects;
    const { order, choice, route } = arrangement;
    this.uprights.count = 0;
    this.levels.count = 0;
    this.shaft.clear();
    this.drum.clear();
    let column = 0;
    for (const s of order) {
      this.starts[s] = column;
      column += this.counts[s] ?? 1;
    }
    for (let s = 0; s < stations.length; s++) {
      this.station(stations[s] as Station, s, choice[s] ?? 0, route);
    }
    const { rank } = arrangement;
    this.tracks = this.shaft.pack(rank) + this.drum.pack(rank);
    this.finish();
  }

  /** Where a line of one body passes a line of another. */
  crossings(): number {
    let crossings = 0;
    const { items: uprights, count } = this.uprights;
    for (let k = 0; k < this.levels.count; k++) {
      const { strip, height, from, to, body } = this.levels.items[k] as Level;
      for (let u = 0; u < count; u++) {
        const upright = uprights[u] as Upright;
        if (
          upright.column > from &&
          upright.column < to &&
          height > upright.low &&
          height < upright.high &&
          upright.body !== body &&
          upright.strip === strip
        ) {
          crossings += 1;
        }
      }
    }
    return crossings;
  }

  private station(station: Station, s: number, choice: number, route: readonly Route[]): void {
    const start = this.starts[s] ?? 0;
    switch (station.kind) {
      case 'company':
      case 'device':
        for (const exit of this.exitsAt(s, choice)) this.exit(exit, s, start, route);
        break;
      case 'pair':
        this.pair(station, s, start, route);
        break;
      case 'end':
        this.shaft.touch(station.body, start);
        break;
      case 'disc':
        if (route[station.body] !== BOTH) break;
        this.shaft.touch(station.body, start);
        this.drum.touch(station.body, start);
        this.upright(station.body, start, OUTER, OUTER, s, BOTH);
    }
  }

  private exit(exit: Exit, station: number, start: number, route: readonly Route[]): void {
    const { body, low, high, leaves, aside, prefers, pins } = exit;
    const column = start + exit.column;
    if (pins) {
      const strip = this.stripsOf[station] ?? 0;
      for (const pin of pins) {
        this.level(body, strip, pin.height, start + pin.column, column, station);
      }
    }
    if (body === 0) {
      // It stands on the ground there and then.
      const [foot, top] = leaves === 'down' ? [low - STUB, high] : [low, high + STUB];
      const ends = pins ? MIDDLE + MIDDLE_HEIGHT : top;
      if (low < CASE_BAND) this.upright(0, column, foot, ends, station, 0, this.stripsOf[station]);
      return;
    }
    if (this.touchesOf(body) === 1) {
      const up = leaves === 'up';
      this.upright(body, column, up ? low : low - STUB, up ? high + STUB : high, station, 0);
      return;
    }
    const its = route[body] ?? SHAFT;
    const atCase = low >= CASE_BAND;
    const on = its !== BOTH ? its : prefers === 'drum' || atCase ? DRUM : SHAFT;
    const goes = on === DRUM && !atCase ? 'up' : 'down';
    let at = column;
    if (leaves !== 'either' && leaves !== goes && aside !== undefined) {
      at = start + aside;
      this.level(body, this.subjects.strips[body] ?? 0, low, column, at, station);
    }
    this.upright(body, at, low, high, station, on);
    (on === SHAFT ? this.shaft : this.drum).touch(body, at);
  }

  private pair(
    { pair }: Station & { kind: 'pair' },
    station: number,
    start: number,
    route: readonly Route[],
  ): void {
    const { assembly, strips } = this.subjects;
    const bodies = [pair.driver, pair.driven].map(({ member }) => assembly.bodyOf(member) ?? 0);
    const [one = 0, two = 0] = bodies.map((body) => strips[body] ?? 0);
    bodies.forEach((body, k) => {
      if (body === 0) return;
      const [own, other] = k === 0 ? [one, two] : [two, one];
      const column = start + (own === other ? k : 0);
      const edge = own === other ? UNDER : own > other ? ABOVE : BELOW;
      const on = (route[body] ?? SHAFT) === DRUM ? DRUM : SHAFT;
      this.upright(body, column, edge, edge, station, on);
      (on === SHAFT ? this.shaft : this.drum).touch(body, column);
    });
    // The driver's wheel reaches through the strips between.
    for (let strip = Math.min(one, two) + 1; strip < Math.max(one, two); strip++) {
      this.upright(bodies[0] ?? 0, start, BELOW, ABOVE, station, 0, strip);
    }
  }

  private upright(
    body: number,
    column: number,
    low: number,
    high: number,
    station: number,
    on: number,
    strip: number = this.subjects.strips[body] ?? 0,
  ): void {
    const it = this.uprights.next();
    it.body = body;
    it.strip = strip;
    it.column = column;
    it.low = low;
    it.high = high;
    it.station = station;
    it.on = on;
  }

  private level(
    body: number,
    strip: number,
    height: number,
    a: number,
    b: number,
    station = -1,
  ): Level {
    const it = this.levels.next();
    it.body = body;
    it.strip = strip;
    it.height = height;
    it.from = Math.min(a, b);
    it.to = Math.max(a, b);
    it.trunk = 0;
    it.station = station;
    return it;
  }

  // Once the trunks have their tracks the uprights reach them.
  private finish(): void {
    const { shaft, drum } = this;
    for (let u = 0; u < this.uprights.count; u++) {
      const it = this.uprights.items[u] as Upright;
      if ((it.on & SHAFT) !== 0) reach(it, shaft.height[it.body] ?? 0);
      if ((it.on & DRUM) !== 0) reach(it, drum.height[it.body] ?? 0);
    }
    this.draft(shaft, SHAFT);
    this.draft(drum, DRUM);
  }

  private draft({ from, to, height }: Trunks, trunk: typeof SHAFT | typeof DRUM): void {
    for (let body = 1; body < from.length; body++) {
      const [start, end] = [from[body] ?? 0, to[body] ?? -1];
      if (end < start) continue;
      const strip = this.subjects.strips[body] ?? 0;
      this.level(body, strip, height[body] ?? 0, start, end).trunk = trunk;
    }
  }

  private countTouches(): number[] {
    const { assembly, stations } = this.subjects;
    const touches = assembly.bodies.map(() => 0);
    const count = (body: number) => (touches[body] = (touches[body] ?? 0) + 1);
    stations.forEach((station, s) => {
      if (station.kind === 'end') count(station.body);
      if (station.kind === 'pair') {
        // A wheel on an axis of its own has a shaft, however short.
        for (const { member } of [station.pair.driver, station.pair.driven]) {
          count(assembly.bodyOf(member) ?? 0);
          count(assembly.bodyOf(member) ?? 0);
        }
      }
      for (const { body } of this.exitsAt(s, 0)) count(body);
    });
    return touches;
  }
}

function reach(upright: Upright, height: number): void {
  if (height < upright.low) upright.low = height;
  if (height > upright.high) upright.high = height;
}

const NO_UPRIGHT: Upright = {
  body: 0,
  strip: 0,
  column: 0,
  low: 0,
  high: 0,
  station: 0,
  on: 0,
};
const NO_LEVEL: Level = {
  body: 0,
  strip: 0,
  height: 0,
  from: 0,
  to: 0,
  trunk: 0,
  station: -1,
};
