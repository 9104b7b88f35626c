import type { BevelSet, GearSet, PairSet, PlainSet, SteppedSet, WheelSet } from './gearset.ts';
import { external, type Gearing, internal, type Mesh, partOf, planetOf } from './mesh.ts';
import { ownerOf, sharingGearing, teethBySharing } from './sharing.ts';
import { CASE } from './member.ts';
import { type GearPair, type Train } from './train.ts';

/** What all the sets and gear pairs of a train put into it. */
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
    case 'sharing': {
      const owner = ownerOf(train, set);
      if (!owner) throw new Error(`${set.name} shares planets that nobody has`);
      return sharingGearing(set, owner, whole(train, owner));
    }
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
