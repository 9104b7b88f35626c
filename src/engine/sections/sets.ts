import { plainName } from '../form/index.ts';
import type { GearSet, SharingSet, WheelSet } from '../train/index.ts';
import type { Findings, Value } from '../yaml/index.ts';
import { byName, type Entry, listOf, mapOf, type PlaceOf, section } from '../entries/index.ts';
import { SET } from './set.ts';

const SET_NAME = plainName(
  'The name of a planetary set; its members are NAME.sun, NAME.ring, NAME.carrier.',
  { as: 'set', names: 'set', own: true },
);

export const SETS = section({
  key: 'sets',
  form: byName(SET_NAME, SET, 'Planetary sets, by name.'),
  read: (entries) => ({ sets: listOf(entries, gearSet) }),
  write: ({ sets }) => new Map(sets.map((set) => [set.name, setValue(set)])),
  check: ({ sets }, at, findings) => {
    for (const set of sets) {
      if (set.kind === 'sharing') checkSharing(sets, set, at, findings);
      if (set.kind === 'wheels') checkWheels(set, at, findings);
    }
  },
});

// The keys that tell the kind stand for it; the rest of the entry is the set as it is.
function gearSet(name: string, entry: Entry<typeof SET>): GearSet {
  if ('sides' in entry) return { kind: 'bevel', name, ...entry };
  if ('shares' in entry) return { kind: 'sharing', name, ...entry };
  if ('steps' in entry) return { kind: 'stepped', name, ...entry };
  if ('pairs' in entry) return { kind: 'pair', name, ...entry };
  if ('wheels' in entry) {
    const meshes = entry.meshes.map(([a, b, internal]) => ({
      a,
      b,
      internal: internal !== undefined,
    }));
    return { kind: 'wheels', name, wheels: entry.wheels, carried: entry.carried, meshes };
  }
  return { kind: 'plain', name, ...entry };
}

/** As it stands in a file, without its name. */
export function setValue(set: GearSet): Value {
  switch (set.kind) {
    case 'plain':
      return mapOf({ sun: set.sun, ring: set.ring, planets: set.planets, planet: set.planet });
    case 'pair':
      return mapOf({
        sun: set.sun,
        ring: set.ring,
        pairs: set.pairs,
        inner: set.inner,
        outer: set.outer,
      });
    case 'stepped':
      return mapOf({ sun: set.sun, ring: set.ring, planets: set.planets, steps: set.steps });
    case 'sharing': {
      const { shares, sun, ring, planets, pairs, inner } = set;
      return mapOf({ shares, sun, ring, planets, pairs, inner });
    }
    case 'wheels': {
      const meshes = set.meshes.map(({ a, b, internal }) =>
        internal ? [a, b, 'internal'] : [a, b],
      );
      return mapOf({ wheels: set.wheels, carried: set.carried, meshes });
    }
    case 'bevel':
      return mapOf({ sides: set.sides, pinions: set.pinions, pinion: set.pinion });
  }
}

function checkSharing(
  sets: readonly GearSet[],
  set: SharingSet,
  at: PlaceOf,
  findings: Findings,
): void {
  const place = (key: string) => at('sets', set.name, key);
  if (set.sun === undefined && set.ring === undefined) {
    findings.error(at('sets', set.name), { problem: 'missing key', keys: ['sun', 'ring'] });
  } else if (set.sun === undefined && set.pairs !== undefined) {
    findings.error(place('pairs'), { problem: 'missing key', keys: ['sun'] });
  }
  if (set.inner !== undefined && set.pairs === undefined) {
    findings.error(place('inner'), { problem: 'missing key', keys: ['pairs'] });
  }
  const passed = [set.name];
  let owner: GearSet | undefined = set;
  while (owner?.kind === 'sharing') {
    const shares: string = owner.shares;
    // A circle is told once, at the set of it that stands first.
    const start = passed.indexOf(shares);
    if (start >= 0) {
      const circle = passed.slice(start);
      const first = sets.find(({ name }) => circle.includes(name));
      if (first === set)
        findings.error(place('shares'), { problem: 'shares in a circle', sets: circle });
      return;
    }
    passed.push(shares);
    owner = sets.find(({ name }) => name === shares);
  }
  if (!owner) return;
  if (owner.kind === 'wheels' || owner.kind === 'bevel') {
    findings.error(place('shares'), { problem: 'cannot share', set: owner.name });
    return;
  }
  const there = owner.kind === 'pair' ? owner.pairs : owner.planets;
  const { planets } = set;
  if (planets === undefined || there === undefined || planets === there) return;
  findings.error(place('planets'), { problem: 'planets differ', planets, set: owner.name, there });
}

function checkWheels(set: WheelSet, at: PlaceOf, findings: Findings): void {
  set.carried.forEach((wheel, i) => {
    if (set.carried.indexOf(wheel) === i) return;
    findings.error(at('sets', set.name, 'carried', `${i}`), {
      problem: 'listed twice',
      name: wheel,
    });
  });
  set.meshes.forEach(({ a, b }, i) => {
    // A wheel that is misspelt is told elsewhere.
    const known = [a, b, ...set.carried].every((wheel) => set.wheels.has(wheel));
    const place = () => at('sets', set.name, 'meshes', `${i}`);
    if (a === b) findings.error(place(), { problem: 'meshes itself', wheel: a });
    else if (known && !set.carried.includes(a) && !set.carried.includes(b)) {
      findings.error(place(), { problem: 'none carried', wheels: [a, b] });
    }
  });
}
