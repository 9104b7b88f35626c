import { CASE } from '../../engine/train/index.ts';
import { choicesOf, RIGHT } from './exits.ts';
import { inputClutches, inRows, rowsOf, setsOf } from './rows.ts';
import type { Station } from './station.ts';
import { type Arrangement, BOTH, DRUM, SHAFT, type Subjects, type Route } from './arrangement.ts';
import type { Drafting, Level } from './strokes.ts';

/**
 * An arrangement with few crossings and short lines, found by cooling: changes by chance, of
 * which those that make it worse are taken ever more seldom (Kirkpatrick, Gelatt and Vecchi,
 * "Optimization by simulated annealing", 1983); then every change that still helps. The chances
 * are a fixed run of numbers: the same train is always arranged the same way.
 */
export function arrange(drafting: Drafting, tries: number): Arrangement {
  const search = new Search(drafting);
  let best: Arrangement | undefined;
  let least = Number.POSITIVE_INFINITY;
  const hasty = tries < ENOUGH;
  for (const beginning of beginningsOf(drafting.subjects, hasty ? 1 : BEGINNINGS)) {
    const cooled = search.cool(beginning, tries);
    const cost = search.costOf(cooled);
    if (cost < least) [best, least] = [cooled, cost];
    if (drafting.crossings() === 0) break;
  }
  const found = best as Arrangement;
  if (!hasty) search.improve(found, ROUNDS);
  return found;
}

const HEAT = 60; // a crossing's cost
const OUT_OF_ROW = 1000; // no crossing that is saved is worth it
const BEHIND = 3; // for each set that stands between the input and a clutch on it
const BEGINNINGS = 8;
const ROUNDS = 2;
const ENOUGH = 1000; // fewer are one beginning, with no last improvements

class Search {
  private readonly dice = new Dice();
  private readonly drafting: Drafting;
  private readonly choices: readonly (readonly number[])[];
  private readonly routes: readonly (readonly Route[])[];
  private readonly sets: readonly number[];
  // Sets of one axis, each with the next: they stand in the order of the file.
  private readonly rows: readonly (readonly [before: number, after: number])[];
  private readonly atInput: readonly number[];

  constructor(drafting: Drafting) {
    this.drafting = drafting;
    const { stations } = drafting.subjects;
    this.choices = stations.map(choicesOf);
    this.routes = routesOf(drafting);
    this.sets = setsOf(stations);
    this.rows = rowsOf(drafting.subjects).flatMap((row) => {
      return row.slice(1).map((set, k) => [row[k] ?? 0, set] as const);
    });
    this.atInput = inputClutches(drafting.subjects);
  }

  cool(it: Arrangement, tries: number): Arrangement {
    const { dice } = this;
    let cost = this.costOf(it);
    let best = copyOf(it);
    let least = cost;
    for (let k = 0; k < tries; k++) {
      const heat = HEAT * (1 - k / tries) ** 2 + 0.01;
      const undo = this.chance(it, dice);
      if (!undo) continue;
      const next = this.costOf(it);
      if (next <= cost || dice.next() < Math.exp((cost - next) / heat)) {
        cost = next;
        if (cost < least) [best, least] = [copyOf(it), cost];
      } else undo();
    }
    return best;
  }

  private chance(it: Arrangement, dice: Dice): (() => void) | undefined {
    const { stations, assembly } = this.drafting.subjects;
    const any = (count: number) => Math.floor(dice.next() * count);
    const what = dice.next();
    if (what < 0.45) {
      const i = 1 + any(it.order.length - 2);
      const station = stations[it.order[i] ?? 0];
      if (station?.kind === 'disc' && it.route[station.body] !== BOTH) return undefined;
      const j = 1 + any(it.order.length - 2);
      return move(it.order, i, j);
    }
    if (what < 0.6) {
      const s = any(stations.length);
      const bits = this.choices[s] ?? [];
      if (bits.length === 0) return undefined;
      const was = it.choice[s] ?? 0;
      it.choice[s] = was ^ (bits[any(bits.length)] ?? 0);
      return () => (it.choice[s] = was);
    }
    if (what < 0.8) {
      const body = any(assembly.bodies.length);
      const routes = this.routes[body] ?? [];
      const was = it.route[body] ?? SHAFT;
      const route = routes[any(routes.length)] ?? was;
      if (route === was) return undefined;
      it.route[body] = route;
      if (route !== BOTH) return () => (it.route[body] = was);
      const at = it.order.findIndex((s) => {
        const station = stations[s];
        return station?.kind === 'disc' && station.body === body;
      });
      const undo = move(it.order, at, 1 + any(it.order.length - 2));
      return () => {
        undo();
        it.route[body] = was;
      };
    }
    const i = any(it.rank.length);
    if (this.drafting.touchesOf(it.rank[i] ?? 0) < 2) return undefined;
    return move(it.rank, i, any(it.rank.length));
  }

  // Takes every change that lowers the cost until none does.
  improve(it: Arrangement, rounds: number): number {
    let cost = this.costOf(it);
    const attempt = (undo: () => void): boolean => {
      const next = this.costOf(it);
      if (next < cost - 1e-9) {
        cost = next;
        return true;
      }
      undo();
      return false;
    };
    const { stations } = this.drafting.subjects;
    for (let round = 0; round < rounds; round++) {
      let better = false;
      this.routes.forEach((routes, body) => {
        for (const route of routes) {
          const was = it.route[body] ?? SHAFT;
          if (route === was) continue;
          it.route[body] = route;
          const back = () => (it.route[body] = was);
          better =
            (route === BOTH ? this.placeDisc(it, body, attempt, back) : attempt(back)) || better;
        }
      });
      this.choices.forEach((bits, s) => {
        for (const bit of bits) {
          const was = it.choice[s] ?? 0;
          it.choice[s] = was ^ bit;
          better = attempt(() => (it.choice[s] = was)) || better;
        }
      });
      for (let i = 0; i < it.rank.length; i++) {
        for (let j = 0; j < it.rank.length; j++) {
          if (i === j || this.drafting.touchesOf(it.rank[i] ?? 0) < 2) continue;
          better = attempt(move(it.rank, i, j)) || better;
        }
      }
      for (let i = 1; i < it.order.length - 1; i++) {
        const station = stations[it.order[i] ?? 0];
        if (station?.kind === 'disc' && it.route[station.body] !== BOTH) continue;
        for (let j = 1; j < it.order.length - 1; j++) {
          if (i !== j) better = attempt(move(it.order, i, j)) || better;
        }
      }
      if (!better) break;
    }
    return cost;
  }

  // A body that gets a disc gets it where it serves.
  private placeDisc(
    it: Arrangement,
    body: number,
    attempt: (undo: () => void) => boolean,
    back: () => void,
  ): boolean {
    const { stations } = this.drafting.subjects;
    const at = it.order.findIndex((s) => {
      const station = stations[s];
      return station?.kind === 'disc' && station.body === body;
    });
    for (let j = 1; j < it.order.length - 1; j++) {
      if (attempt(move(it.order, at, j))) return true;
    }
    back();
    return false;
  }

  costOf(arrangement: Arrangement): number {
    const { drafting } = this;
    drafting.draw(arrangement);
    let cost = 60 * drafting.crossings() + 4 * drafting.tracks;
    for (let k = 0; k < drafting.levels.count; k++) {
      const { from, to, trunk } = drafting.levels.items[k] as Level;
      if (trunk !== 0) cost += to - from;
    }
    for (const route of arrangement.route) if (route === BOTH) cost += 8;
    for (const [before, after] of this.rows) {
      if ((drafting.starts[before] ?? 0) > (drafting.starts[after] ?? 0)) cost += OUT_OF_ROW;
    }
    // A clutch on the input stands at the input's end.
    for (const device of this.atInput) {
      for (const set of this.sets) {
        if ((drafting.starts[set] ?? 0) < (drafting.starts[device] ?? 0)) cost += BEHIND;
      }
    }
    return cost;
  }
}

// Where a body's lines may be. A sun's shaft never lies outside the sets, and a shaft goes in and
// comes out by the axis; a body that has both needs a reason to.
function routesOf(drafting: Drafting): (readonly Route[])[] {
  const { assembly, stations, strips } = drafting.subjects;
  const inside = new Set<number>();
  const outside = new Set<number>();
  stations.forEach((station, s) => {
    if (station.kind === 'end') inside.add(station.body);
    for (const { body, leaves, aside, low } of drafting.exitsAt(s, 0)) {
      if (leaves === 'down' && aside === undefined && low < 2000) inside.add(body);
      else outside.add(body);
    }
  });
  return assembly.bodies.map((_, body) => {
    if (body === 0 || drafting.touchesOf(body) < 2) return [SHAFT];
    const both = outside.has(body) && drafting.touchesOf(body) > 2 ? ([BOTH] as const) : [];
    if (inside.has(body)) return [SHAFT, ...both];
    return strips[body] === 0 || outside.has(body) ? [SHAFT, DRUM, ...both] : [SHAFT];
  });
}

function beginningsOf(subjects: Subjects, count: number): Arrangement[] {
  const { assembly, stations } = subjects;
  const rows = rowsOf(subjects);
  const inside = stations.map((_, s) => s).slice(1, -1);
  const bodies = assembly.bodies.map((_, body) => body).filter((body) => body !== 0);
  const dice = new Dice();
  const near = nearTheirSets(stations, inside);
  return Array.from({ length: count }, (_, k) => {
    const order = k === 1 ? near.toReversed() : k === 2 || k === 4 ? dice.shuffled(inside) : near;
    return {
      order: [0, ...inRows(order, rows), stations.length - 1],
      choice: stations.map(() => (k % 2 === 0 ? 0 : RIGHT)),
      route: assembly.bodies.map(() => SHAFT),
      rank: k === 0 ? bodies : dice.shuffled(bodies),
    };
  });
}

// Each device after the set whose member it is on.
function nearTheirSets(stations: readonly Station[], inside: readonly number[]): number[] {
  const place = (s: number): number => {
    const station = stations[s];
    if (station?.kind !== 'device') return s;
    const { first, second } = station.device;
    const own = first === CASE ? second : first;
    const set = stations.findIndex(
      (other) =>
        other.kind === 'company' && other.company.sets.some((name) => own.startsWith(`${name}.`)),
    );
    return set < 0 ? s : set + 0.5;
  };
  return inside.toSorted((a, b) => place(a) - place(b));
}

function copyOf({ order, choice, route, rank }: Arrangement): Arrangement {
  return { order: [...order], choice: [...choice], route: [...route], rank: [...rank] };
}

function move(list: number[], from: number, to: number): () => void {
  list.splice(to, 0, ...list.splice(from, 1));
  return () => list.splice(from, 0, ...list.splice(to, 1));
}

// A fixed run of numbers, so that a train is always arranged alike: the minimal standard
// generator (Park and Miller, "Random number generators: good ones are hard to find", 1988).
class Dice {
  private state = 1;

  shuffled(list: readonly number[]): number[] {
    const keyed = list.map((item) => [this.next(), item] as const);
    return keyed.toSorted(([a], [b]) => a - b).map(([, item]) => item);
  }

  next(): number {
    this.state = (this.state * 48_271) % 2_147_483_647;
    return this.state / 2_147_483_647;
  }
}
