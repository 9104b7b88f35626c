import {
  assemble,
  type BevelSet,
  type GearPair,
  type GearSet,
  ownerOf,
  type PairSet,
  type PlainSet,
  planetTeeth,
  type SharingSet,
  type SteppedSet,
  type Train,
  type WheelSet,
} from '../train/index.ts';
import {
  ALLOWANCE,
  beside,
  divisor,
  type GeometryFinding,
  ringFit,
  spacing,
  touching,
} from './fit.ts';

/** Everything that is wrong with the teeth of a train's sets and gear pairs, in their order. */
export function geometryOf(train: Train): GeometryFinding[] {
  return [
    ...train.sets.flatMap((set) => setGeometry(train, set)),
    ...train.pairs.flatMap(pairGeometry),
  ];
}

function setGeometry(train: Train, set: GearSet): GeometryFinding[] {
  switch (set.kind) {
    case 'plain':
      return plainGeometry(set);
    case 'pair':
      return pairedGeometry(set);
    case 'stepped':
      return steppedGeometry(set);
    case 'sharing':
      return sharingGeometry(train, set);
    case 'wheels':
      return wheelGeometry(train, set);
    case 'bevel':
      return bevelGeometry(set);
  }
}

// Conditions 1 to 3 for a plain set (ring = sun + 2·planet; (sun + ring)/N whole;
// planet + 2 < (sun + planet)·sin(180°/N)): stock-gear technical handbook, section 13.3.1,
// equations 13-5, 13-7 and 13-9.
function plainGeometry(set: PlainSet): GeometryFinding[] {
  const { name, sun, ring, planets } = set;
  const planet = planetTeeth(set);
  return [
    ...ringFit(name, ring, sun + 2 * planet),
    ...spacing(name, planets, sun + ring, 1, 'sun + ring'),
    ...touching(name, planets, planet, beside(planet, sun + planet)),
  ];
}

// A meshed pair turns the sign of the sun's part: (ring - sun)/N whole. Müller, Epicyclic Drive
// Trains, assembly conditions (from memory). The pair may be bent at its inner planet, so it
// only has to reach the ring, and the outer planet has to leave room between sun and ring.
function pairedGeometry({ name, sun, ring, pairs, inner, outer }: PairSet): GeometryFinding[] {
  const even = spacing(name, pairs, ring - sun, 1, 'ring - sun');
  if (inner === undefined || outer === undefined) {
    return ring - sun < 2 ? [...even, ...ringFit(name, ring, sun + 2, null)] : even;
  }
  // The tips of neither planet may reach the wheel that it does not mesh.
  const fit = ringFit(
    name,
    ring,
    sun + 2 * Math.max(inner, outer) + 4,
    sun + 2 * inner + 2 * outer,
  );
  return [
    ...even,
    ...(fit.length > 0 ? fit : pairNeighbours(name, pairs, sun, inner, outer, ring)),
  ];
}

// Inner beside inner, outer beside outer, and outer beside the next pair's inner: the angle at
// the main axis between the two of one pair follows from the triangle of their centres.
function pairNeighbours(
  name: string,
  pairs: number,
  sun: number,
  inner: number,
  outer: number,
  ring: number,
): GeometryFinding[] {
  const [near, far] = [sun + inner, ring - outer];
  const cosine = (near ** 2 + far ** 2 - (inner + outer) ** 2) / (2 * near * far);
  const within = Math.acos(Math.max(-1, Math.min(1, cosine)));
  const across = (count: number) => {
    const angle = (2 * Math.PI) / count - within;
    if (angle <= 0) return -(inner + outer + 4);
    const distance = Math.sqrt(near ** 2 + far ** 2 - 2 * near * far * Math.cos(angle));
    return distance - (inner + outer + 4);
  };
  const found = [
    ...touching(name, pairs, inner, beside(inner, near)),
    ...touching(name, pairs, outer, beside(outer, far)),
    ...touching(name, pairs, outer, across),
  ];
  return found.slice(0, 1);
}

// Derived: with the carrier still, let every planet be the same casting. From one pin to the
// next (1/N turn) the sun asks its step a to turn on by (1/N)(1 + sun/a), give or take whole
// teeth of a; the ring asks its step b for (1/N)(1 - ring/b), give or take teeth of b. Both
// can be had if (sun·b + ring·a)/N is a whole multiple of the greatest common divisor of a
// and b. With a = b it is the plain set's rule.
function steppedGeometry({ name, sun, ring, steps, planets }: SteppedSet): GeometryFinding[] {
  const [first, second] = steps;
  return [
    ...ringFit(name, ring, sun + first + second),
    ...steppedSpacing(name, planets, sun, ring, steps),
    ...touching(
      name,
      planets,
      Math.max(first, second),
      beside(Math.max(first, second), sun + first),
    ),
  ];
}

function steppedSpacing(
  name: string,
  planets: number | undefined,
  sun: number,
  ring: number,
  [first, second]: readonly [number, number],
): GeometryFinding[] {
  const sum = sun * second + ring * first;
  return spacing(
    name,
    planets,
    sum,
    divisor(first, second),
    'sun · second step + ring · first step',
  );
}

// The wheels of a sharing set sit on planets whose place the owner has settled.
function sharingGeometry(train: Train, set: SharingSet): GeometryFinding[] {
  const owner = ownerOf(train, set);
  if (!owner || owner.kind === 'wheels' || owner.kind === 'bevel') return [];
  const sun = set.sun ?? owner.sun;
  const ring = set.ring ?? owner.ring;
  const planets = set.planets ?? (owner.kind === 'pair' ? owner.pairs : owner.planets);
  // Whether the path from this sun to this ring passes one planet or a pair.
  const paired = set.sun === undefined ? owner.kind === 'pair' : set.pairs !== undefined;
  if (paired) {
    const outer =
      owner.kind === 'pair' ? owner.outer : owner.kind === 'plain' ? planetTeeth(owner) : undefined;
    const inner = set.sun === undefined && owner.kind === 'pair' ? owner.inner : set.inner;
    const count = set.pairs ?? planets;
    if (count === undefined || owner.kind === 'stepped') return [];
    const pair: PairSet = { kind: 'pair', name: set.name, sun, ring, pairs: count };
    return pairedGeometry({
      ...pair,
      ...(inner !== undefined && { inner }),
      ...(outer !== undefined && { outer }),
    });
  }
  if (owner.kind === 'stepped') {
    const { steps } = owner;
    return [
      ...ringFit(set.name, ring, sun + steps[0] + steps[1]),
      ...steppedSpacing(set.name, planets, sun, ring, steps),
    ];
  }
  const planet = owner.kind === 'pair' ? owner.outer : planetTeeth(owner);
  const known = planet ?? Math.max(1, Math.floor((ring - sun) / 2));
  return [
    ...ringFit(set.name, ring, sun + 2 * known),
    ...spacing(set.name, planets, sun + ring, 1, 'sun + ring'),
    ...(owner.kind === 'pair'
      ? touching(set.name, planets, known, beside(known, sun + known))
      : []),
  ];
}

// Wheels of one planet (one wheel, or several joined) turn on one pin, at one distance from
// the main axis: the sum of the teeth outside, their difference inside. Two wheels of 99 and
// 101 teeth on one idler are old practice, so one tooth either way is granted.
function wheelGeometry(train: Train, set: WheelSet): GeometryFinding[] {
  const { bodyOf } = assemble({ ...train, devices: [] });
  const found: GeometryFinding[] = [];
  const pins = new Map<number | undefined, { wheel: string; with: string; distance: number }[]>();
  for (const { a, b, internal } of set.meshes) {
    const teeth = [set.wheels.get(a) ?? 1, set.wheels.get(b) ?? 1] as const;
    if (internal && teeth[0] === teeth[1])
      found.push({ problem: 'no room inside', within: set.name, teeth });
    const [planet, other] = set.carried.includes(a) ? [a, b] : [b, a];
    if (set.carried.includes(other)) continue;
    const distance = internal ? Math.abs(teeth[0] - teeth[1]) : teeth[0] + teeth[1];
    const pin = bodyOf(`${set.name}.${planet}`);
    pins.set(pin, [...(pins.get(pin) ?? []), { wheel: planet, with: other, distance }]);
  }
  for (const meshes of pins.values()) {
    const all = meshes.map(({ distance }) => distance);
    if (Math.max(...all) - Math.min(...all) <= 2 * ALLOWANCE) continue;
    const distances = meshes.map(({ with: other, distance }) => ({ with: other, distance }));
    const wheel = meshes[0]?.wheel ?? '';
    found.push({
      problem: 'centre distances differ',
      set: set.name,
      wheel,
      distances,
      allowance: ALLOWANCE,
    });
  }
  return found;
}

// Bevel pinions spaced evenly between two side gears: (left + right)/N whole. From memory.
function bevelGeometry({ name, sides, pinions }: BevelSet): GeometryFinding[] {
  return spacing(name, pinions, sides[0] + sides[1], 1, 'sides');
}

function pairGeometry({ name, driver, driven, kind }: GearPair): GeometryFinding[] {
  if (kind !== 'internal' || driver.teeth !== driven.teeth) return [];
  return [{ problem: 'no room inside', within: name, teeth: [driver.teeth, driven.teeth] }];
}
