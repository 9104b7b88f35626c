import type { GearSet, PairSet, SharingSet } from './gearset.ts';
import {
  external,
  type Gearing,
  internal,
  type Mesh,
  partOf,
  type Planet,
  planetOf,
} from './mesh.ts';
import type { MemberName } from './member.ts';
import type { Train } from './train.ts';

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

/** The wheels of a set that turns on the planets of `owner`, whose gearing is `owned`. */
export function sharingGearing(set: SharingSet, owner: GearSet, owned: Gearing): Gearing {
  const part = partOf(set.name);
  const theirs = partOf(owner.name);
  const long = theirs(owner.kind === 'pair' ? 'outer' : 'planet');
  const carrier = part('carrier');
  const wheels = owned.meshes.flatMap(({ a, b }) => [a, b]);
  const longTeeth = wheels.filter(({ member }) => member === long).map(({ teeth }) => teeth);
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
      meshes.push(
        external(set.name, sun, inner, carrier),
        external(set.name, inner, sunSide, carrier),
      );
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

/** The teeth of a pair set's outer planets, if a sun of another set meshes them too. */
// With the ring they make a plain set.
export function teethBySharing(train: Train, set: PairSet): number | undefined {
  for (const other of train.sets) {
    if (other.kind !== 'sharing' || other.shares !== set.name) continue;
    if (other.sun !== undefined && other.pairs === undefined) {
      return Math.max(1, Math.floor((set.ring - other.sun) / 2));
    }
  }
  return undefined;
}
