import type { Model } from './model.ts';
import type { DrawnPlanets, DrawnWheel } from './sizes.ts';
import { ellipse, type Notches, onCircle } from './solid.ts';

/** Finer teeth than these run together on paper: a wheel of more is drawn with so many. */
const MOST_TEETH = 96;
/** The least radius of a wheel that still shows a bore. */
const LEAST = 13;

const notches = (teeth: number, high: number): Notches => ({
  count: Math.max(8, Math.min(MOST_TEETH, teeth)),
  high,
});

/** A wheel with teeth outside. */
export function sun(model: Model, x: number, { radius, teeth }: DrawnWheel): Model {
  const outer = Math.max(LEAST, radius);
  const bore = Math.min(outer - 6, Math.max(7, outer * 0.5));
  return model.turn(x, { outer, inner: bore, long: 26, teeth: notches(teeth, 2.6) });
}

/** A ring gear: teeth in its bore, which may end at a web. */
export function ring(model: Model, x: number, { radius, teeth }: DrawnWheel, blind = false): Model {
  const inner = Math.max(LEAST, radius);
  return model.turn(x, { outer: inner + 8, inner, long: 24, blind, bored: notches(teeth, 3) });
}

/** A carrier: its plate, and in front of it the planets on their pins. */
export function carrier(model: Model, x: number, planets: readonly DrawnPlanets[]): Model {
  const [outermost] = planets;
  const pin = outermost?.pin ?? 40;
  const plate = pin + Math.min(10, (outermost?.radius ?? 14) * 0.6);
  model.turn(x + 18, { outer: plate, inner: Math.min(12, pin * 0.3), long: 7 });
  const stand = planets.flatMap((its, row) => {
    return Array.from({ length: Math.min(8, its.count) }, (_, k) => {
      const degrees = -90 + (360 * k) / its.count + (row * 180) / its.count / 1.6;
      const [at, y] = onCircle({ x, y: 0 }, its.pin, degrees);
      return { its, x: at + 2, y };
    });
  });
  // Those on the far side first.
  for (const { its, x: at, y } of stand.toSorted((a, b) => a.x - b.x)) {
    const outer = Math.max(6, its.radius);
    model.turnAt(
      { x: at, y },
      { outer, long: 14, teeth: notches(its.teeth, Math.min(2.4, outer / 5)) },
    );
    model.mark('solid-bore', ellipse({ x: at, y }, Math.min(4.5, outer / 2.4)));
  }
  return model;
}
