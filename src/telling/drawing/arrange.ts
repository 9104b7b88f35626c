import { CASE } from '../../engine/train/index.ts';
import { type Station } from './station.ts';
import { type Arrangement, type Strokes, strokesOf, type Subjects } from './strokes.ts';

/**
 * The arrangement with the fewest crossings that a search from several beginnings finds, and
 * among those the shortest lines. The same train is always arranged the same way.
 */
export function arrange(subjects: Subjects): Arrangement {
  const free = freedomOf(subjects);
  let best: Arrangement | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const beginning of beginningsOf(subjects)) {
    const cost = improve(subjects, beginning, free);
    if (cost < least) [best, least] = [beginning, cost];
  }
  return best as Arrangement;
}

/** Where a line of one body passes a line of another. */
export function crossingsOf({ uprights, levels }: Strokes): number {
  let crossings = 0;
  for (const { strip, height, from, to, body } of levels) {
    for (const upright of uprights) {
      if (
        upright.body !== body &&
        upright.column > from &&
        upright.column < to &&
        height > upright.low &&
        height < upright.high &&
        upright.strip === strip
      ) {
        crossings += 1;
      }
    }
  }
  return crossings;
}

/** Bodies that may lie outside the sets: a sun's shaft or tube never does. */
interface Freedom {
  readonly outer: readonly number[];
  readonly ends: ReadonlySet<number>;
}

function freedomOf({ assembly, stations, strips }: Subjects): Freedom {
  const suns = new Set(
    stations.flatMap((station) =>
      station.kind === 'company' ? station.company.columns.map(({ sun }) => sun?.body) : [],
    ),
  );
  const ends = stations.flatMap((station) => (station.kind === 'end' ? [station.body] : []));
  const outer = assembly.bodies.flatMap((_, body) =>
    body === 0 || suns.has(body) || assembly.onPins.has(body) || (strips[body] ?? 0) > 0
      ? []
      : [body],
  );
  return { outer, ends: new Set(ends) };
}

function costOf(subjects: Subjects, arrangement: Arrangement, { ends }: Freedom): number {
  const strokes = strokesOf(subjects, arrangement);
  let cost = 60 * crossingsOf(strokes);
  for (const { from, to, is } of strokes.levels) if (is === 'trunk') cost += to - from;
  // A shaft that goes in or comes out does so by the axis.
  arrangement.outer.forEach((outer, body) => {
    if (outer) cost += ends.has(body) ? 20 : 2;
  });
  return cost;
}

function beginningsOf({ assembly, stations }: Subjects): Arrangement[] {
  const inside = stations.map((_, s) => s).slice(1, -1);
  const bodies = assembly.bodies.map((_, body) => body).filter((body) => body !== 0);
  const dice = new Dice();
  const orders = [inside, nearTheirSets(stations, inside), inside.toReversed()];
  for (let k = 0; k < 5; k++) orders.push(dice.shuffled(inside));
  return orders.map((order, k) => ({
    order: [0, ...order, stations.length - 1],
    right: stations.map(() => k % 2 === 1),
    ringRight: stations.map(() => k % 2 === 0),
    outer: assembly.bodies.map(() => false),
    rank: k < 2 ? bodies : dice.shuffled(bodies),
  }));
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

// Takes every change that lowers the cost until none does.
function improve(subjects: Subjects, it: Arrangement, free: Freedom): number {
  let cost = costOf(subjects, it, free);
  const attempt = (change: () => () => void): boolean => {
    const undo = change();
    const next = costOf(subjects, it, free);
    if (next < cost - 1e-9) {
      cost = next;
      return true;
    }
    undo();
    return false;
  };
  for (let round = 0; round < MOST_ROUNDS; round++) {
    let better = false;
    for (const body of free.outer) better = attempt(() => flip(it.outer, body)) || better;
    for (let s = 0; s < subjects.stations.length; s++) {
      better = attempt(() => flip(it.right, s)) || better;
      better = attempt(() => flip(it.ringRight, s)) || better;
    }
    for (let i = 0; i < it.rank.length; i++) {
      for (let j = 0; j < it.rank.length; j++) {
        if (i !== j) better = attempt(() => move(it.rank, i, j)) || better;
      }
    }
    for (let i = 1; i < it.order.length - 1; i++) {
      for (let j = 1; j < it.order.length - 1; j++) {
        if (i !== j) better = attempt(() => move(it.order, i, j)) || better;
      }
    }
    if (!better) break;
  }
  return cost;
}

const MOST_ROUNDS = 12;

function flip(list: boolean[], at: number): () => void {
  list[at] = !list[at];
  return () => (list[at] = !list[at]);
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

  private next(): number {
    this.state = (this.state * 48_271) % 2_147_483_647;
    return this.state;
  }
}
