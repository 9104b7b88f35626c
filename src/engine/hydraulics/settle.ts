import type { Rational } from '../linear/index.ts';
import { type Circuit, type Command, PUMP, EXHAUST } from './circuit.ts';
import { wanted } from './force.ts';
import { type LineNow, Lines } from './lines.ts';
import { fixedWays, valveWays, type WayNow } from './ways.ts';

/** Where each valve stands, in the circuit's order; 0 is where its spring keeps it. */
export type Stand = readonly number[];

/** A state of the circuit in which nothing moves. */
export interface Rest {
  readonly stand: Stand;
  readonly lines: ReadonlyMap<string, LineNow>;
  readonly ways: readonly WayNow[];
  /** What moved on the way there, in order. */
  readonly moves: readonly Move[];
  /** Valves whose place hangs on a pressure that nobody can say. */
  readonly unsure: readonly string[];
}

export interface Move {
  readonly valve: string;
  readonly from: number;
  readonly to: number;
}

/** A rest, or the moves that come round for ever. */
export type Settled =
  | { readonly rest: Rest; readonly chase?: undefined }
  | { readonly rest?: undefined; readonly chase: readonly Move[] };

/** A circuit under one command, ready to be settled from anywhere. */
export class Settling {
  readonly #circuit: Circuit;
  readonly #lines: Lines;
  readonly #ways: readonly WayNow[];
  readonly #always: number;
  /** The number of the first way of each position of each valve; those before are always open. */
  readonly #first: readonly (readonly number[])[];
  readonly #sources: ReadonlyMap<string, Rational>;

  constructor(circuit: Circuit, command: Command) {
    this.#circuit = circuit;
    const ways = fixedWays(circuit, command);
    this.#always = ways.length;
    this.#first = valveWays(circuit).map((positions) => {
      return positions.map((its) => ways.push(...its) - its.length);
    });
    this.#ways = ways;
    this.#sources = new Map(
      circuit.sources.map(({ line, pressure }) => [line, command.pressures.get(line) ?? pressure]),
    );
    this.#lines = new Lines(linesOf(circuit), ways, this.#sources);
  }

  /** Every valve where its spring keeps it, or where it is stuck: the engine was off. */
  get start(): Stand {
    return this.#circuit.valves.map(({ stuck }) => stuck ?? 0);
  }

  /** What lies on which line while the valves stand so. */
  at(stand: Stand): Pick<Rest, 'lines' | 'ways'> {
    const open = this.#open(stand);
    const now = this.#lines.now(open);
    return {
      ways: this.#ways.filter((_, way) => open[way] === 1),
      lines: new Map(this.#lines.names.map((name, line) => [name, now(line)])),
    };
  }

  #open(stand: Stand): Uint8Array {
    const open = new Uint8Array(this.#ways.length);
    open.fill(1, 0, this.#always);
    this.#circuit.valves.forEach(({ positions }, valve) => {
      const at = stand[valve] as number;
      const first = this.#first[valve]?.[at] as number;
      open.fill(1, first, first + (positions[at]?.length ?? 0));
    });
    return open;
  }

  /** The valves that would move, the nearest to the oil's source first, and the unsure ones. */
  wants(stand: Stand): { readonly moves: readonly Move[]; readonly unsure: readonly string[] } {
    const open = this.#open(stand);
    const now = this.#lines.now(open);
    const lines = { get: (line: string) => now(this.#lines.numberOf(line)) };
    const unsure: string[] = [];
    const moves: Move[] = [];
    this.#circuit.valves.forEach((valve, index) => {
      const from = stand[index] as number;
      const wants = wanted(valve, from, lines);
      if (wants.unsure) unsure.push(valve.name);
      if (wants.position !== from) moves.push({ valve: valve.name, from, to: wants.position });
    });
    return { unsure, moves: moves.length > 1 ? this.#inOrder(moves, open) : moves };
  }

  // The order of the oil: nearest first, of equals in the order of the circuit.
  #inOrder(moves: readonly Move[], open: Uint8Array): readonly Move[] {
    const ways = this.#ways.filter((_, way) => open[way] === 1);
    const depths = depthsOf(ways, this.#sources);
    const depth = new Map(
      this.#circuit.valves.map(({ name, pushes }) => {
        return [name, Math.min(...pushes.map(({ line }) => depths.get(line) ?? Infinity))];
      }),
    );
    const rank = ({ valve }: Move) => depth.get(valve) ?? Infinity;
    return moves.toSorted((a, b) => (rank(a) === rank(b) ? 0 : rank(a) - rank(b)));
  }

  /** The stand after one valve has moved. */
  after(stand: Stand, { valve, to }: Move): Stand {
    return stand.with(
      this.#circuit.valves.findIndex(({ name }) => name === valve),
      to,
    );
  }

  /**
   * The rest that is reached when one valve at a time moves, in the order of the oil. A stand that
   * comes again has come for ever, as the order is the same each time.
   */
  settle(from: Stand): Settled {
    const seen = new Map<string, number>();
    const moves: Move[] = [];
    let stand = from;
    for (;;) {
      const key = stand.join(' ');
      const before = seen.get(key);
      if (before !== undefined) return { chase: moves.slice(before) };
      seen.set(key, moves.length);
      const { moves: next, unsure } = this.wants(stand);
      const [first] = next;
      if (!first) return { rest: { stand, ...this.at(stand), moves, unsure } };
      moves.push(first);
      stand = this.after(stand, first);
    }
  }

  /**
   * Every rest that some order of moves reaches, and whether some order never ends. Looks at no more
   * than `most` stands; `whole` says whether that was enough.
   */
  ends(from: Stand, most = 2000): Ends {
    const rests = new Map<string, Stand>();
    const done = new Set<string>();
    const onPath = new Set<string>();
    let endless = false;
    let whole = true;
    const visit = (stand: Stand): void => {
      const key = stand.join(' ');
      if (onPath.has(key)) endless = true;
      if (done.has(key) || onPath.has(key)) return;
      if (done.size + onPath.size >= most) {
        whole = false;
        return;
      }
      onPath.add(key);
      const { moves } = this.wants(stand);
      if (moves.length === 0) rests.set(key, stand);
      for (const move of moves) visit(this.after(stand, move));
      onPath.delete(key);
      done.add(key);
    };
    visit(from);
    return { rests: [...rests.values()], endless, whole };
  }
}

export interface Ends {
  readonly rests: readonly Stand[];
  readonly endless: boolean;
  readonly whole: boolean;
}

/** Every line of a circuit, the pump's first; the exhaust is none. */
function linesOf(circuit: Circuit): string[] {
  const { selector, solenoids, valves, passages, servos, sources } = circuit;
  const named = [
    PUMP,
    ...sources.map(({ line }) => line),
    ...selector.flatMap(({ feeds }) => feeds),
    ...solenoids.flatMap((its) => ('from' in its ? [its.from, its.line] : [its.line])),
    ...valves.flatMap(({ positions, pushes }) => [
      ...positions.flat(2),
      ...pushes.map(({ line }) => line),
    ]),
    ...passages.flatMap(({ from, to }) => [from, to]),
    ...servos.flatMap(({ chambers }) => chambers.map(({ line }) => line)),
  ];
  return [...new Set(named)].filter((line) => line !== EXHAUST);
}

// How many ways lie between a line and where its oil comes from, or goes to.
function depthsOf(ways: readonly WayNow[], sources: ReadonlyMap<string, Rational>) {
  const depths = new Map<string, number>([...sources.keys(), EXHAUST].map((line) => [line, 0]));
  const beside = new Map<string, string[]>();
  for (const { from, to } of ways) {
    beside.set(from, [...(beside.get(from) ?? []), to]);
    beside.set(to, [...(beside.get(to) ?? []), from]);
  }
  const open = [...depths.keys()];
  for (let at = open.shift(); at !== undefined; at = open.shift()) {
    for (const end of beside.get(at) ?? []) {
      if (depths.has(end)) continue;
      depths.set(end, (depths.get(at) as number) + 1);
      open.push(end);
    }
  }
  return depths;
}
