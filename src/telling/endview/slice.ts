import {
  assemble,
  companyOf,
  type GearSet,
  type MemberName,
  type Mesh,
  ownerOf,
  setGearing,
  type Train,
} from '../../engine/train/index.ts';

/** What an end view of a set shows: the wheels in its planes, whether stripped or not. */
export interface Slice {
  readonly meshes: readonly Mesh[];
  /** Every planet, by member: the one body that it is with others that are joined to it. */
  readonly pins: ReadonlyMap<MemberName, string>;
  readonly carrier: MemberName;
  /** How many planets (pairs) the file counts. */
  readonly planets?: number;
  /** Planets whose teeth were not counted: they are drawn with teeth that fit. */
  readonly assumed: ReadonlySet<MemberName>;
}

/**
 * The slice of a set. A set on another's planets is seen with the ring gear in which those
 * planets run, if it has none of its own.
 */
export function sliceOf(train: Train, set: GearSet): Slice {
  const whole = { ...train, sets: train.sets.map(sound), devices: [] };
  const pairs = { ...whole, sets: whole.sets.map((own) => pairWithTeeth(whole, own)) };
  const counted = { ...pairs, sets: pairs.sets.map((own) => sharingWithTeeth(pairs, own)) };
  const own = counted.sets.find(({ name }) => name === set.name) as GearSet;
  const gearing = setGearing(counted, own);
  const company = companyOf(train, set.name);
  const planes = counted.sets.filter(({ name }) => companyOf(train, name) === company);
  const gearings = planes.map((plane) => setGearing(counted, plane));
  const members = new Set(gearing.meshes.flatMap(({ a, b }) => [a.member, b.member]));
  const hasRing = gearing.meshes.some(({ kind }) => kind === 'internal');
  const behind = gearings
    .flatMap(({ meshes }) => meshes)
    .filter(({ kind, a }) => !hasRing && kind === 'internal' && members.has(a.member));
  const unknown = planes.flatMap((plane) => {
    const original = whole.sets.find(({ name }) => name === plane.name) as GearSet;
    return setGearing(whole, original).planets.filter(({ known }) => !known);
  });
  const planets = planetsOf(train, own);
  return {
    meshes: [...gearing.meshes, ...(set.kind === 'sharing' ? behind : [])],
    pins: pinsOf(train, gearings),
    carrier: gearing.meshes[0]?.carrier ?? `${set.name}.carrier`,
    ...(planets !== undefined && { planets }),
    assumed: new Set(unknown.map(({ member }) => member)),
  };
}

function sound(set: GearSet): GearSet {
  return { ...set, stripped: [] };
}

// Planets that are joined turn as one casting; one that a fault ties to its carrier does not
// turn as one with the others so tied.
function pinsOf(
  train: Train,
  gearings: readonly ReturnType<typeof setGearing>[],
): Map<MemberName, string> {
  const { bodyOf } = assemble({ ...train, devices: [] });
  return new Map(
    gearings
      .flatMap(({ planets }) => planets)
      .map(({ member, carrier }) => {
        const body = bodyOf(member);
        return [member, body === bodyOf(carrier) ? member : `${body}`];
      }),
  );
}

function planetsOf(train: Train, set: GearSet): number | undefined {
  switch (set.kind) {
    case 'plain':
    case 'stepped':
      return set.planets;
    case 'pair':
      return set.pairs;
    case 'sharing': {
      const owner = ownerOf(train, set);
      return set.planets ?? set.pairs ?? (owner && planetsOf(train, owner));
    }
    case 'wheels':
      return 1;
    case 'bevel':
      return set.pinions;
  }
}

// Planets that only pass the motion on need not be counted; those drawn reach what they must,
// and bend a little, as pairs do.
function pairWithTeeth(train: Train, set: GearSet): GearSet {
  if (set.kind !== 'pair' || (set.inner !== undefined && set.outer !== undefined)) return set;
  const { planets, meshes } = setGearing(train, set);
  const known = planets.find(({ member }) => member === `${set.name}.outer`)?.known;
  const taken = known ? meshes.at(-1)?.a.teeth : undefined;
  const room = set.ring - set.sun;
  const bent = Math.max(FEWEST, Math.ceil((room / 4) * BENT));
  const outer = taken ?? (set.inner === undefined ? bent : reaching(room, set.inner));
  return { ...set, outer, inner: set.inner ?? reaching(room, outer) };
}

function sharingWithTeeth(train: Train, set: GearSet): GearSet {
  if (set.kind !== 'sharing' || set.pairs === undefined || set.inner !== undefined) return set;
  const { sun = 1 } = set;
  const owner = ownerOf(train, set);
  const long = setGearing(train, set).meshes[1]?.b.teeth ?? 1;
  const stepped = owner?.kind === 'stepped' ? owner.sun + 2 * long : undefined;
  const ring = owner && 'ring' in owner ? owner.ring : sun + 4 * long;
  return { ...set, inner: reaching((stepped ?? ring) - sun, long) };
}

// The fewest teeth that reach across the room between sun and ring, and a few more to bend.
function reaching(room: number, other: number): number {
  return Math.max(FEWEST, Math.ceil(room / 2 - other) + 2);
}

const FEWEST = 9;
const BENT = 1.15;
