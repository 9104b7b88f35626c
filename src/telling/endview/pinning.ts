import { type Blank, distanceOf, type Engagement, type Pin } from './blank.ts';
import { closeDistance, shiftTeeth, trimTeeth } from './cut.ts';

/**
 * Planets that belong together: those that mesh one another, and are repeated round the axis
 * as one.
 */
export interface Cluster {
  readonly pins: ReadonlySet<Pin>;
  readonly engagements: readonly Engagement[];
}

/** Cuts all wheels and gives the pins of each cluster their angles, the first pin at 0°. */
export function pinDown(engagements: readonly Engagement[]): Cluster[] {
  shiftTeeth(engagements, fixedDistance);
  const clusters = clustersOf(engagements);
  clusters.forEach(turnPins);
  trimTeeth(engagements, distanceOf);
  return clusters;
}

// A planet's distance from the axis is fixed; from another planet it is free, as long as the
// triangle of axis and pins is no straight line.
function fixedDistance({ a, b, internal }: Engagement): number | undefined {
  if (!a.pin || !b.pin) return (a.pin ?? b.pin)?.radius ?? 0;
  const [p, q] = [a.pin.radius, b.pin.radius];
  if (p === undefined || q === undefined) return undefined;
  const apart = ((internal ? b.teeth - a.teeth : a.teeth + b.teeth) * a.module) / 2;
  const least = Math.abs(p - q);
  const isFree = apart > least + a.module && apart < p + q - a.module;
  return isFree ? undefined : Math.max(least, Math.min(apart, p + q));
}

function clustersOf(engagements: readonly Engagement[]): Cluster[] {
  const clusters: { pins: Set<Pin>; engagements: Engagement[] }[] = [];
  for (const engagement of engagements) {
    const pins = [engagement.a, engagement.b].flatMap(({ pin }) => (pin ? [pin] : []));
    const met = clusters.filter((cluster) => pins.some((pin) => cluster.pins.has(pin)));
    const [first = { pins: new Set<Pin>(), engagements: [] }, ...others] = met;
    if (met.length === 0) clusters.push(first);
    for (const other of others) {
      for (const pin of other.pins) first.pins.add(pin);
      first.engagements.push(...other.engagements);
      clusters.splice(clusters.indexOf(other), 1);
    }
    for (const pin of pins) first.pins.add(pin);
    first.engagements.push(engagement);
  }
  return clusters;
}

function turnPins({ pins, engagements }: Cluster): void {
  const [first] = pins;
  if (first) first.degrees = 0;
  const between = engagements.filter(({ a, b }) => a.pin && b.pin);
  for (let round = 0; round < pins.size; round++) {
    for (const engagement of between) {
      const [a, b] = [engagement.a.pin as Pin, engagement.b.pin as Pin];
      if (a.degrees !== undefined && b.degrees === undefined) turnPin(b, a, engagement);
      if (b.degrees !== undefined && a.degrees === undefined) turnPin(a, b, engagement);
    }
  }
}

// The triangle of the main axis and two pins: its sides are their distances.
function turnPin(pin: Pin, known: Pin, engagement: Engagement): void {
  const apart = fixedDistance(engagement) ?? closeDistance(engagement);
  const near = known.radius ?? 0;
  pin.radius ??= near + apart;
  const cosine = (near ** 2 + pin.radius ** 2 - apart ** 2) / (2 * near * pin.radius || 1);
  const angle = (Math.acos(Math.max(-1, Math.min(1, cosine))) * 180) / Math.PI;
  pin.degrees = (known.degrees ?? 0) + angle;
}

/** All the wheels of some engagements, each once. */
export function blanksOf(engagements: readonly Engagement[]): Blank[] {
  return [...new Set(engagements.flatMap(({ a, b }) => [a, b]))];
}
