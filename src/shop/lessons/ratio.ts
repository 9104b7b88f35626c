import { type Fact, flow, type LoadedPort } from '../../engine/flow/index.ts';
import {
  equal,
  fraction,
  ONE,
  opposite,
  over,
  plus,
  type Rational,
  signOf,
  times,
} from '../../engine/linear/index.ts';
import { CASE, companyOf, type GearSet } from '../../engine/train/index.ts';
import type { AskedGear } from './askedgear.ts';
import type { Draft, Wrong } from './draft.ts';

/** The ratio of a gear that drives, against wrong rules run on the same train. */
export function ratioQuestion({ train, setting, worked }: AskedGear): Draft[] {
  const { ratio, facts } = worked.drive;
  if (!ratio) return [];
  const working = facts.filter((fact) => fact.fact === 'works');
  const sets = train.sets.filter(({ name }) => {
    return working.some(({ set }) => set === companyOf(train, name));
  });
  const rerun = (edit: (set: GearSet) => GearSet) => {
    const edited = train.sets.map((set) => (sets.includes(set) ? edit(set) : set));
    return flow({ ...train, sets: edited }, setting.on).drive.ratio;
  };
  const wrong: Wrong[] = [];
  const add = (idea: Wrong[0], value: Rational | undefined) => {
    if (value) wrong.push([idea, { answer: 'ratio', ratio: value }]);
  };
  const turnsBack = signOf(ratio) < 0;
  if (turnsBack) add('sign dropped', opposite(ratio));
  add('upside down', over(ONE, ratio));
  add('other member held', rerun(sunForRing));
  const [only, second] = working;
  if (only && !second && sets[0]?.kind === 'plain') {
    const idea = carrierStands(only) ? 'carrier turns' : 'one forgotten';
    add(idea, withOneMistaken(ratio, sets[0]));
  }
  if (sets.some(({ kind }) => kind === 'pair')) add('pairs taken for plain', rerun(plainForPair));
  if (shareMembers(working)) add('ratios multiplied', product(sets));
  if (sets.some(({ kind }) => kind === 'plain')) add('planets counted in', rerun(withPlanets));
  const isDirect = equal(ratio, ONE);
  const first = sets.length > 0 ? sets : train.sets;
  add(isDirect ? 'gears always change' : 'one formula for all', reductionOf(first));
  add('direct', ONE);
  if (!turnsBack) add('mesh reverses', opposite(ratio));
  const subject = [
    { kind: 'member', name: train.output },
    ...sets.map(({ name }) => ({ kind: 'set', name }) as const),
  ] as const;
  return [{ kind: 'ratio', subject, setting, right: { answer: 'ratio', ratio }, wrong, facts }];
}

function carrierStands({ ports }: Extract<Fact, { fact: 'works' }>): boolean {
  return ports.some(
    ({ member, role }: LoadedPort) => role === 'reacts' && member.endsWith('.carrier'),
  );
}

// The 1 of a plain set alone, added to -R/S or -S/R and taken from 1 + R/S or 1 + S/R, and the
// same upside down. Where gear pairs have their share in the ratio, it is none of these.
function withOneMistaken(ratio: Rational, { sun, ring }: GearSet & { kind: 'plain' }) {
  for (const teeth of [fraction(ring, sun), fraction(sun, ring)]) {
    const more = plus(ONE, teeth);
    const rules = [
      [opposite(teeth), more],
      [more, teeth],
    ] as const;
    for (const [right, wrong] of rules) {
      if (equal(ratio, right)) return wrong;
      if (equal(ratio, over(ONE, right))) return over(ONE, wrong);
    }
  }
  return undefined;
}

// Sun and ring changing places turns 1 + R/S into 1 + S/R.
function sunForRing(set: GearSet): GearSet {
  if (set.kind !== 'plain' && set.kind !== 'pair' && set.kind !== 'stepped') return set;
  return { ...set, sun: set.ring, ring: set.sun };
}

function plainForPair(set: GearSet): GearSet {
  if (set.kind !== 'pair') return set;
  return { kind: 'plain', name: set.name, sun: set.sun, ring: set.ring };
}

// Sets that have one member in common may stand one after the other; with two they cannot.
function shareMembers(working: readonly Extract<Fact, { fact: 'works' }>[]): boolean {
  const labels = working.map(({ ports }) => new Set(ports.map(({ label }) => label)));
  return labels.some((one, k) =>
    labels.slice(k + 1).some((other) => {
      return [...one].filter((label) => label !== CASE && other.has(label)).length > 1;
    }),
  );
}

function withPlanets(set: GearSet): GearSet {
  if (set.kind !== 'plain') return set;
  const planet = set.planet ?? Math.max(1, Math.floor((set.ring - set.sun) / 2));
  return { ...set, ring: set.ring + planet };
}

// 1 + R/S, of the first set that has a sun and a ring.
function reductionOf(sets: readonly GearSet[]): Rational | undefined {
  for (const set of sets) {
    if ('sun' in set && 'ring' in set && set.sun !== undefined && set.ring !== undefined) {
      return plus(ONE, fraction(set.ring, set.sun));
    }
  }
  return undefined;
}

function product(sets: readonly GearSet[]): Rational | undefined {
  const each = sets.map((set) => reductionOf([set]));
  return each.reduce((a, b) => a && b && times(a, b));
}
