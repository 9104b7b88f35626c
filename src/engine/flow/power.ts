import { compare, minus, over, plus, type Rational, signOf, times, ZERO } from '../linear/index.ts';
import type { Element } from './element.ts';

/** Power that goes round in a circle, as a part of the power put in, and whom it goes through. */
export interface Circling {
  readonly power: Rational;
  readonly through: ReadonlySet<string>;
}

/** The power that the elements hand round in circles at some speeds, as a part of `whole`. */
export function circlingPower(
  elements: readonly Element[],
  speeds: readonly Rational[],
  whole: Rational,
): Circling {
  if (whole.num === 0) return { power: ZERO, through: new Set() };
  const streams: Stream[] = [];
  for (const { name, touches } of elements) {
    for (const { body, point } of touches) {
      // The element gives a body power where it pushes the body the way it turns.
      const power = over(times(point, speeds[body] as Rational), whole);
      if (signOf(power) > 0) streams.push({ from: name, to: place(body), power });
      if (signOf(power) < 0)
        streams.push({ from: place(body), to: name, power: minus(ZERO, power) });
    }
  }
  return circling(streams);
}

/** Power from one place to another, positive. */
interface Stream {
  readonly from: string;
  readonly to: string;
  readonly power: Rational;
}

// As long as streams form a circle, its smallest power is taken out of it and counted.
function circling(streams: readonly Stream[]): Circling {
  const left = new Map(streams.map((stream) => [stream, stream.power]));
  const through = new Set<string>();
  let power = ZERO;
  for (;;) {
    const circle = findCircle(
      [...left].filter(([, rest]) => rest.num > 0).map(([stream]) => stream),
    );
    if (!circle) return { power, through };
    const rest = circle.map((stream) => left.get(stream) as Rational);
    const least = rest.reduce((a, b) => (compare(a, b) <= 0 ? a : b));
    circle.forEach((stream, k) => {
      left.set(stream, minus(rest[k] as Rational, least));
      through.add(stream.from);
    });
    power = plus(power, least);
  }
}

// Depth first from every place; the streams of the first circle met.
function findCircle(streams: readonly Stream[]): Stream[] | undefined {
  const done = new Set<string>();
  const path: Stream[] = [];
  const visit = (spot: string): Stream[] | undefined => {
    const start = path.findIndex(({ from }) => from === spot);
    if (start >= 0) return path.slice(start);
    if (done.has(spot)) return undefined;
    for (const stream of streams) {
      if (stream.from !== spot) continue;
      path.push(stream);
      const circle = visit(stream.to);
      if (circle) return circle;
      path.pop();
    }
    done.add(spot);
    return undefined;
  };
  for (const { from } of streams) {
    const circle = visit(from);
    if (circle) return circle;
  }
  return undefined;
}

// A body as a place: no element's name has a line break.
function place(body: number): string {
  return `\n${body}`;
}
