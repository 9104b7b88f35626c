import { compare, type Rational, ZERO } from '../linear/index.ts';
import { EXHAUST } from './circuit.ts';
import type { WayNow } from './ways.ts';

/**
 * `fed` at its pressure; `low`: fed, but leaking; `between`: through orifices from both sides;
 * `drained`; `shut in`: neither fed nor drained, so it keeps what it has for a while and then has
 * none; `short`: open to a source and to the exhaust at once.
 */
export type LineState = 'fed' | 'low' | 'between' | 'drained' | 'shut in' | 'short';

export interface LineNow {
  readonly state: LineState;
  /** The pressure, and the least that it may be: the same, but where nobody can say. */
  readonly most: Rational;
  readonly least: Rational;
  /** The way by which oil comes; absent: a source, or none comes. */
  readonly comes?: WayNow;
  /** The way by which it goes towards the exhaust; absent: none does. */
  readonly goes?: WayNow;
}

/** What has come to each line by its number: a pressure, and the way by which; or nothing. */
interface Reached {
  readonly pressure: (Rational | undefined)[];
  readonly by: (WayNow | undefined)[];
}

/** A way's end as it is met from its other one: by number, -1 for the exhaust. */
interface Next {
  readonly way: number;
  readonly end: number;
}

/**
 * All the lines of a circuit and all the ways that may stand open between them, numbered once, so
 * that what each line has is found in one go over the open ones. An open way has
 * no resistance beside an orifice, so what hangs openly on a source is at its pressure, what hangs
 * openly on the exhaust has none, and only what hangs on neither is a matter of orifices.
 */
export class Lines {
  readonly names: readonly string[];
  readonly #ways: readonly WayNow[];
  readonly #number: ReadonlyMap<string, number>;
  readonly #sources: readonly (readonly [line: number, pressure: Rational])[];
  /** Ends that oil at a line may go on to, and those that it may come from; the last is the exhaust's. */
  readonly #ahead: readonly Next[][];
  readonly #behind: readonly Next[][];

  constructor(
    names: readonly string[],
    ways: readonly WayNow[],
    sources: ReadonlyMap<string, Rational>,
  ) {
    this.names = names;
    this.#ways = ways;
    this.#number = new Map(names.map((name, i) => [name, i]));
    const of = (name: string) => (name === EXHAUST ? names.length : this.numberOf(name));
    this.#sources = [...sources].map(([line, pressure]) => [of(line), pressure]);
    this.#ahead = Array.from({ length: names.length + 1 }, () => []);
    this.#behind = Array.from({ length: names.length + 1 }, () => []);
    ways.forEach(({ from, to, oneWay }, way) => {
      this.#link(way, of(from), of(to));
      if (!oneWay) this.#link(way, of(to), of(from));
    });
  }

  #link(way: number, from: number, to: number): void {
    this.#ahead[from]?.push({ way, end: to });
    this.#behind[to]?.push({ way, end: from });
  }

  numberOf(name: string): number {
    const number = this.#number.get(name);
    if (number === undefined) throw new RangeError(`no line is called ${name}`);
    return number;
  }

  /** What each line has, by its number, while the ways marked 1 stand open. */
  now(open: Uint8Array): (line: number) => LineNow {
    const { length } = this.names;
    const wide = (way: number) => open[way] === 1 && this.#ways[way]?.size === 'open';
    const any = (way: number) => open[way] === 1;
    const fed = nothing(length);
    for (const [line, pressure] of this.#sources) fed.pressure[line] = pressure;
    this.#feed(fed, wide);
    const drained = nothing(length);
    drained.pressure[length] = ZERO;
    this.#drain(drained, wide);
    const slowlyFed = copied(fed);
    const slowlyDrained = copied(drained);
    // Through orifices, and never on through what an open way has settled.
    const settled = (line: number) =>
      fed.pressure[line] !== undefined || drained.pressure[line] !== undefined;
    this.#feed(slowlyFed, any, settled);
    this.#drain(slowlyDrained, any, settled);
    // A ball lets in no more than the line before it has: what only lines between feed is between too.
    const firmlyFed = copied(fed);
    const halved = (line: number) => settled(line) || slowlyDrained.pressure[line] !== undefined;
    this.#feed(firmlyFed, any, halved);
    // And one through which oil could leave only to a line between holds up to what that one has.
    const firmlyDrained = copied(drained);
    const fedToo = (line: number) => settled(line) || slowlyFed.pressure[line] !== undefined;
    this.#drain(firmlyDrained, any, fedToo);
    const leaking = this.#leaks(fed, drained, open);
    return (line) => {
      if (settled(line)) return lineNow(leaking[line] === 1, [fed, drained], line);
      const isFirm = firmlyFed.pressure[line] !== undefined;
      const out = slowlyFed.pressure[line] === undefined ? firmlyDrained : slowlyDrained;
      const now = lineNow(undefined, [isFirm ? firmlyFed : slowlyFed, out], line);
      return now.state === 'fed' && !isFirm ? { ...now, state: 'between', least: ZERO } : now;
    };
  }

  // The highest pressure that comes to each line; a way passes no more than its own most.
  #feed(
    reached: Reached,
    isOpen: (way: number) => boolean,
    stops: (line: number) => boolean = () => false,
  ): void {
    const { pressure, by } = reached;
    const queue = numbersOf(pressure);
    for (let k = 0; k < queue.length; k++) {
      const at = queue[k] as number;
      const has = pressure[at] as Rational;
      for (const { way, end } of this.#ahead[at] as Next[]) {
        if (end === this.names.length || !isOpen(way) || stops(end)) continue;
        const { most } = this.#ways[way] as WayNow;
        const gets = most && compare(most, has) < 0 ? most : has;
        const had = pressure[end];
        if (had && (had === gets || compare(had, gets) >= 0)) continue;
        pressure[end] = gets;
        by[end] = this.#ways[way];
        queue.push(end);
      }
    }
  }

  // Whatever oil can leave towards the exhaust.
  #drain(
    { pressure, by }: Reached,
    isOpen: (way: number) => boolean,
    stops: (line: number) => boolean = () => false,
  ): void {
    const queue = numbersOf(pressure);
    for (let k = 0; k < queue.length; k++) {
      for (const { way, end } of this.#behind[queue[k] as number] as Next[]) {
        if (pressure[end] || !isOpen(way) || stops(end)) continue;
        pressure[end] = ZERO;
        by[end] = this.#ways[way];
        queue.push(end);
      }
    }
  }

  // Fed lines that leak or are short of pressure, and all that is fed through them.
  #leaks(fed: Reached, drained: Reached, open: Uint8Array): Uint8Array {
    const leaking = new Uint8Array(this.names.length);
    fed.pressure.forEach((has, line) => {
      if (has && drained.pressure[line]) leaking[line] = 1;
    });
    this.#ways.forEach(({ size, from }, way) => {
      if (size !== 'leak' || open[way] !== 1) return;
      const line = this.numberOf(from);
      if (fed.pressure[line]) leaking[line] = 1;
    });
    if (!leaking.includes(1)) return leaking;
    for (const line of numbersOf(fed.pressure)) {
      for (let at: number | undefined = line; at !== undefined; at = this.#origin(at, fed)) {
        if (leaking[at] === 1) leaking[line] = 1;
      }
    }
    return leaking;
  }

  #origin(line: number, { by }: Reached): number | undefined {
    const way = by[line];
    if (!way) return undefined;
    return this.numberOf(way.to === this.names[line] ? way.from : way.to);
  }
}

// `leaking` is undefined of a line that hangs on orifices alone.
function lineNow(
  leaking: boolean | undefined,
  [its, out]: readonly [Reached, Reached],
  line: number,
): LineNow {
  const [comes, goes] = [its.by[line], out.by[line]];
  const ways = { ...(comes && { comes }), ...(goes && { goes }) };
  const most = its.pressure[line];
  const drains = out.pressure[line] !== undefined;
  if (!most) return { state: drains ? 'drained' : 'shut in', least: ZERO, most: ZERO, ...ways };
  if (drains) {
    return { state: leaking === undefined ? 'between' : 'short', least: ZERO, most, ...ways };
  }
  return { state: leaking ? 'low' : 'fed', least: leaking ? ZERO : most, most, ...ways };
}

function nothing(lines: number): Reached {
  const none = () => Array.from({ length: lines + 1 }, () => undefined);
  return { pressure: none(), by: none() };
}

function copied({ pressure, by }: Reached): Reached {
  return { pressure: pressure.slice(), by: by.slice() };
}

function numbersOf(pressure: readonly (Rational | undefined)[]): number[] {
  const numbers: number[] = [];
  for (let i = 0; i < pressure.length; i++) if (pressure[i]) numbers.push(i);
  return numbers;
}
