import type { BevelSet, GearSet, PairSet, PlainSet, SharingSet, SteppedSet, WheelSet } from './gearset.ts';
import { CASE, type GearPair, type Join, type MemberName, type Train, type Wheel } from './train.ts';

/** Two wheels in mesh, whose axes stand still in the frame of `carrier`. */
export interface Mesh {
  /** The set or gear pair to which it belongs. */
  readonly within: string;
  readonly a: Wheel;
  readonly b: Wheel;
  readonly carrier: MemberName;
  /** Chains turn their wheels the same way, as an internal mesh does. */
  readonly kind: 'external' | 'internal' | 'chain' | 'bevel';
  /** Whether, seen from the carrier, the wheels turn the same way or opposite ways. */
  readonly turns: 'same' | 'opposite';
}

/** A body that turns on a pin of `carrier`. */
export interface Planet {
  readonly member: MemberName;
  readonly within: string;
  readonly carrier: MemberName;
  /** Known if its teeth were counted or follow from others'; otherwise its speed is not. */
  readonly known: boolean;
  /** A bevel pinion's pin lies across the main axis: it has a speed on its pin only. */
  readonly crosswise: boolean;
}

/** What the sets and gear pairs of a train put into it; `welds` are names of one member. */
export interface Gearing {
  readonly members: readonly MemberName[];
  readonly meshes: readonly Mesh[];
  readonly planets: readonly Planet[];
  readonly welds: readonly Join[];
}

export function gearingOf(train: Train): Gearing {
  const parts = [
    ...train.sets.map((set) => setGearing(train, set)),
    ...train.pairs.map(pairGearing),
  ];
  return {
    members: parts.flatMap((part) => part.members),
    meshes: parts.flatMap((part) => part.meshes),
    planets: parts.flatMap((part) => part.planets),
    welds: parts.flatMap((part) => part.welds),
  };
}

/** The wheels of a planetary set, its planets and carrier too; stripped ones mesh nothing. */
export function setGearing(train: Train, set: GearSet): Gearing {
  const gearing = whole(train, set);
  const stripped = new Set(set.stripped);
  const sound = (mesh: Mesh) => !stripped.has(mesh.a.member) && !stripped.has(mesh.b.member);
  return stripped.size === 0 ? gearing : { ...gearing, meshes: gearing.meshes.filter(sound) };
}

function whole(train: Train, set: GearSet): Gearing {
  switch (set.kind) {
    case 'plain':
      return plainGearing(set);
    case 'pair':
      return pairSetGearing(train, set);
    case 'stepped':
      return steppedGearing(set);
    case 'sharing':
      return sharingGearing(train, set);
    case 'wheels':
      return wheelGearing(set);
    case 'bevel':
      return bevelGearing(set);
  }
}

/** The teeth of a plain set's planets: counted, or by the coaxial rule ring = sun + 2·planet. */
export function planetTeeth({ sun, ring, planet }: PlainSet): number {
  return planet ?? Math.max(1, Math.floor((ring - sun) / 2));
}

/** The set whose planets `set` turns on: itself, but for a sharing set. */
export function ownerOf(train: Train, set: GearSet): Exclude<GearSet, SharingSet> | undefined {
  let owner: GearSet | undefined = set;
  for (let steps = 0; owner?.kind === 'sharing' && steps <= train.sets.length; steps++) {
    const shares: string = owner.shares;
    owner = train.sets.find((other) => other.name === shares);
  }
  return owner?.kind === 'sharing' ? undefined : owner;
}

/**
 * The name of all the sets that turn on the same planets as `set` does, "front + back": one
 * box of gears. A set that shares nothing, and a gear pair, is a company by itself.
 */
export function companyOf(train: Train, set: string): string {
  const own = train.sets.find((other) => other.name === set);
  const owner = own && ownerOf(train, own);
  if (!owner) return set;
  const company = train.sets.filter((other) => ownerOf(train, other) === owner);
  return company.map((other) => other.name).join(' + ');
}

function plainGearing(set: PlainSet): Gearing {
  const part = partOf(set.name);
  const planet = { member: part('planet'), teeth: planetTeeth(set) };
  const carrier = part('carrier');
  const sun = { member: part('sun'), teeth: set.sun };
  const ring = { member: part('ring'), teeth: set.ring };
  return {
    members: [sun.member, ring.member, carrier],
    meshes: [external(set.name, sun, planet, carrier), internal(set.name, planet, ring, carrier)],
    planets: [planetOf(set.name, planet.member, carrier, true)],
    welds: [],
  };
}

function pairSetGearing(train: Train, set: PairSet): Gearing {
  const part = partOf(set.name);
  const carrier = part('carrier');
  const outerTeeth = set.outer ?? teethBySharing(train, set);
  // The teeth of a planet that only passes motion on cancel: where they are not known any
  // number serves, and the planet's own speed is not told.
  const inner = { member: part('inner'), teeth: set.inner ?? 1 };
  const outer = { member: part('outer'), teeth: outerTeeth ?? 1 };
  const sun = { member: part('sun'), teeth: set.sun };
  const ring = { member: part('ring'), teeth: set.ring };
  return {
    members: [sun.member, ring.member, carrier],
    meshes: [
      external(set.name, sun, inner, carrier),
      external(set.name, inner, outer, carrier),
      internal(set.name, outer, ring, carrier),
    ],
    planets: [
      planetOf(set.name, inner.member, carrier, set.inner !== undefined),
      planetOf(set.name, outer.member, carrier, outerTeeth !== undefined),
    ],
    welds: [],
  };
}

// A sun of another set that meshes the outer planets makes a plain set with the ring.
function teethBySharing(train: Train, set: PairSet): number | undefined {
  for (const other of train.sets) {
    if (other.kind !== 'sharing' || other.shares !== set.name) continue;
    if (other.sun !== undefined && other.pairs === undefined) {
      return Math.max(1, Math.floor((set.ring - other.sun) / 2));
    }
  }
  return undefined;
}

function steppedGearing(set: SteppedSet): Gearing {
  const part = partOf(set.name);
  const carrier = part('carrier');
  const member = part('planet');
  const sun = { member: part('sun'), teeth: set.sun };
  const ring = { member: part('ring'), teeth: set.ring };
  return {
    members: [sun.member, ring.member, carrier],
    meshes: [
      external(set.name, sun, { member, teeth: set.steps[0] }, carrier),
      internal(set.name, { member, teeth: set.steps[1] }, ring, carrier),
    ],
    planets: [planetOf(set.name, member, carrier, true)],
    welds: [],
  };
}

function sharingGearing(train: Train, set: SharingSet): Gearing {
  const part = partOf(set.name);
  const owner = ownerOf(train, set);
  if (!owner) throw new Error(`${set.name} shares planets that nobody has`);
  const theirs = partOf(owner.name);
  const long = theirs(owner.kind === 'pair' ? 'outer' : 'planet');
  const carrier = part('carrier');
  const wheels = setGearing(train, { ...owner, stripped: [] }).meshes.flatMap((m) => [m.a, m.b]);
  const longTeeth = wheels.filter((wheel) => wheel.member === long).map((wheel) => wheel.teeth);
  const sunSide = { member: long, teeth: longTeeth[0] ?? 1 };
  const ringSide = { member: long, teeth: longTeeth.at(-1) ?? 1 };
  const members: MemberName[] = [carrier];
  const meshes: Mesh[] = [];
  const planets: Planet[] = [];
  if (set.sun !== undefined) {
    const sun = { member: part('sun'), teeth: set.sun };
    members.push(sun.member);
    if (set.pairs === undefined) {
      meshes.push(external(set.name, sun, sunSide, carrier));
    } else {
      const inner = { member: part('inner'), teeth: set.inner ?? 1 };
      planets.push(planetOf(set.name, inner.member, carrier, set.inner !== undefined));
      meshes.push(external(set.name, sun, inner, carrier), external(set.name, inner, sunSide, carrier));
    }
  }
  if (set.ring !== undefined) {
    const ring = { member: part('ring'), teeth: set.ring };
    members.push(ring.member);
    meshes.push(internal(set.name, ringSide, ring, carrier));
  }
  const alias = part(set.pairs === undefined ? 'planet' : 'outer');
  const welds = [
    { name: carrier, members: [theirs('carrier')] },
    { name: alias, members: [long] },
  ];
  return { members: [...members, alias], meshes, planets, welds };
}

function wheelGearing(set: WheelSet): Gearing {
  const part = partOf(set.name);
  const carrier = part('carrier');
  const wheel = (name: string) => ({ member: part(name), teeth: set.wheels.get(name) ?? 1 });
  return {
    members: [...[...set.wheels.keys()].map(part), carrier],
    meshes: set.meshes.map(({ a, b, internal: inside }) => {
      return (inside ? internal : external)(set.name, wheel(a), wheel(b), carrier);
    }),
    planets: set.carried.map((name) => planetOf(set.name, part(name), carrier, true)),
    welds: [],
  };
}

function bevelGearing(set: BevelSet): Gearing {
  const part = partOf(set.name);
  const carrier = part('carrier');
  const pinion = { member: part('pinion'), teeth: set.pinion ?? 1 };
  const left = { member: part('left'), teeth: set.sides[0] };
  const right = { member: part('right'), teeth: set.sides[1] };
  const mesh = { within: set.name, carrier, kind: 'bevel' } as const;
  // Seen from the carrier the sides turn opposite ways; the pinion's sense about its own
  // crosswise pin is counted with the right side's.
  return {
    members: [left.member, right.member, carrier],
    meshes: [
      { ...mesh, a: left, b: pinion, turns: 'opposite' },
      { ...mesh, a: pinion, b: right, turns: 'same' },
    ],
    planets: [
      { ...planetOf(set.name, pinion.member, carrier, set.pinion !== undefined), crosswise: true },
    ],
    welds: [],
  };
}

function pairGearing(pair: GearPair): Gearing {
  const mesh: Mesh = {
    within: pair.name,
    a: pair.driver,
    b: pair.driven,
    carrier: CASE,
    kind: pair.kind,
    turns: pair.kind === 'external' ? 'opposite' : 'same',
  };
  return {
    members: [pair.driver.member, pair.driven.member],
    meshes: pair.stripped ? [] : [mesh],
    planets: [],
    welds: [],
  };
}

function partOf(set: string): (part: string) => MemberName {
  return (part) => `${set}.${part}`;
}

function external(within: string, a: Wheel, b: Wheel, carrier: MemberName): Mesh {
  return { within, a, b, carrier, kind: 'external', turns: 'opposite' };
}

function internal(within: string, a: Wheel, b: Wheel, carrier: MemberName): Mesh {
  return { within, a, b, carrier, kind: 'internal', turns: 'same' };
}

function planetOf(within: string, member: MemberName, carrier: MemberName, known: boolean): Planet {
  return { member, within, carrier, known, crosswise: false };
}
