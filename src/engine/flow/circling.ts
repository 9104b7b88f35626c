import {
  compare,
  minus,
  opposite,
  over,
  plus,
  type Rational,
  signOf,
  times,
  ZERO,
} from '../linear/index.ts';
import type { MemberName } from '../train/index.ts';
import { isSpan } from '../reckon/index.ts';
import { type Element, isSolid } from './element.ts';

/** Power that goes round in a circle, as a part of the power put in, and whom it goes through. */
export interface Circling {
  readonly power: Rational;
  /** Sets and gear pairs, in the order of the file. */
  readonly sets: readonly string[];
}

/**
 * The power that the elements hand round in circles, as a part of `whole`. A device that carries is
 * one piece with its members, and so is a set where no planet turns on its pin: nothing goes round in
 * what turns as one.
 */
export function circlingPower(elements: readonly Element[], whole: Rational): Circling {
  if (whole.num === 0) return { power: ZERO, sets: [] };
  const solid = elements.filter((element) => element.device || isSolid(element));
  const pieces = piecesOf(solid);
  const streams: Stream[] = [];
  for (const element of elements) {
    if (solid.includes(element)) continue;
    const { name, touches } = element;
    for (const { body, point, speed } of touches) {
      const place = pieces.get(body) ?? placeOf(body);
      // The element gives a body power where it pushes the body the way it turns.
      const power = over(times(point, speed), whole);
      if (signOf(power) > 0) streams.push({ from: name, to: place, power });
      if (signOf(power) < 0) streams.push({ from: place, to: name, power: opposite(power) });
    }
  }
  const { power, through } = circling(streams);
  const sets = elements.filter(({ name, device }) => !device && through.has(name));
  return { power, sets: sets.map(({ name }) => name) };
}

/**
 * The elements through which torque goes round in a circle within what turns as one, devices and
 * all: no power is lost there, yet each may carry more than comes in. None where nothing settles
 * what one of them carries.
 */
export function turningRound(elements: readonly Element[]): Element[] {
  const streams = elements.filter(isSolid).flatMap(({ name, touches }) => {
    return touches.flatMap(({ body, point, speed }): Stream[] => {
      const power = times(point, speed);
      if (signOf(power) > 0) return [{ from: name, to: placeOf(body), power }];
      if (signOf(power) < 0) return [{ from: placeOf(body), to: name, power: opposite(power) }];
      return [];
    });
  });
  const { through } = circling(streams);
  const round = elements.filter(({ name }) => through.has(name));
  const settled = round.every(({ touches }) => touches.every(({ torque }) => !isSpan(torque)));
  return settled && round.some(({ device }) => device) ? round : [];
}

/** Power from one place to another, positive. */
interface Stream {
  readonly from: string;
  readonly to: string;
  readonly power: Rational;
}

// As long as streams form a circle, its smallest power is taken out of it and counted.
function circling(streams: readonly Stream[]) {
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

// The bodies that are one piece, each with the place that they are.
function piecesOf(solid: readonly Element[]): Map<MemberName, string> {
  const pieces = new Map<MemberName, string>();
  for (const { touches } of solid) {
    const bodies = touches.map(({ body }) => body);
    const known = new Set(bodies.map((body) => pieces.get(body) ?? placeOf(body)));
    const [one] = known as Set<string>;
    for (const body of bodies) pieces.set(body, one as string);
    for (const [body, piece] of pieces) if (known.has(piece)) pieces.set(body, one as string);
  }
  return pieces;
}

// A body as a place: no element's name has a line break.
function placeOf(body: MemberName): string {
  return `\n${body}`;
}
