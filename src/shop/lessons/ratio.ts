import { type Fact, flow, type LoadedPort } from '../../engine/flow/index.ts';
import {
  equal,
  fraction,
  minus,
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
    if (carrierStands(only)) add('carrier turns', plainReduction(ratio, plus));
    else add('one forgotten', plainReduction(ratio, minus));
  }
  if (sets.some(({ kind }) => kind === 'pair')) add('pairs taken for plain', rerun(plainForPair));
  if (shareMembers(working)) add('ratios multiplied', product(sets));
  if (sets.some(({ kind }) => kind === 'plain')) add('planets counted in', rerun(withPlanets));
  const isDirect = equal(ratio, ONE);
  add(isDirect ? 'gears always change' : 'one formula for all', reductionOf(train.sets));
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

// Of the slower way round, the size and one; then the way round that was asked for.
function plainReduction(ratio: Rational, by: typeof plus): Rational | undefined {
  const size = signOf(ratio) < 0 ? opposite(ratio) : ratio;
  const speedsUp = signOf(minus(size, ONE)) < 0;
  const other = by(speedsUp ? over(ONE, size) : size, ONE);
  if (signOf(other) === 0) return undefined;
  return speedsUp ? over(ONE, other) : other;
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
