import type { Train } from '../train/index.ts';
import { type Edited, remove } from './edit.ts';
import { inTurn } from './mend.ts';

/** An entry of a train file, by what it is called. */
export type Thing =
  | { readonly thing: 'set' | 'gear pair' | 'join' | 'device' | 'range'; readonly name: string }
  | { readonly thing: 'gear'; readonly within: string; readonly name: string };

/**
 * Takes a thing out of the file, with all that `goingWith` it, and its name out of joins, gears
 * and parts. `train` is what the text says so far.
 */
export function discard(text: string, train: Train, thing: Thing): Edited {
  const gone = [...goingWith(train, thing), thing];
  const named = (kind: Thing['thing']) =>
    new Set(gone.filter((one) => one.thing === kind).map(({ name }) => name));
  const [sets, devices] = [named('set'), named('device')];
  const isGone = (name: string) => sets.has(name.split('.')[0] ?? '') && name.includes('.');
  const isCarried = (name: string) => isGone(name) || devices.has(name.split('.')[0] ?? '');
  const items = (path: readonly string[], list: readonly string[], is: (name: string) => boolean) =>
    list.flatMap((name, i) => (is(name) ? [[...path, `${i}`]] : []));
  const joins = named('join');
  const gears = train.ranges.flatMap(({ name: range, gears: its }) =>
    its.flatMap(({ name, on }) => items(['ranges', range, name], on, (one) => devices.has(one))),
  );
  const joined = train.joins
    .filter(({ name }) => !joins.has(name))
    .flatMap(({ name, members }) => items(['joined', name], members, isGone));
  const carried = (train.teardown ?? []).flatMap(({ name, carries }) =>
    items(['teardown', name, 'carries'], carries, isCarried),
  );
  const measured = (train.teardown ?? []).flatMap((part) => [
    ...(['feeds', 'closes'] as const).flatMap((key) => {
      return items(['teardown', part.name, key], part[key] ?? [], (one) => devices.has(one));
    }),
    ...(devices.has(part.sets ?? '') ? [['teardown', part.name, 'sets']] : []),
  ]);
  const told = [
    ...(train.capacities ?? []).map(({ device }) => ['capacities', device]),
    ...(train.bands ?? []).map(({ device }) => ['bands', device]),
    ...(train.packs ?? []).map(({ device }) => ['packs', device]),
  ].filter(([, device = '']) => devices.has(device));
  // An item is taken from the back of its list, so that those ahead keep their index.
  const paths = [
    ...[...gears, ...joined, ...carried, ...measured].toReversed(),
    ...told,
    ...gone.map(pathOf),
  ];
  return inTurn(
    text,
    paths.map((path) => (before) => remove(before, path)),
  );
}

/**
 * What means nothing without a thing, and goes with it: without a set, the sets that share its
 * planets, and the devices, gear pairs and joins that have only its members to act on.
 */
export function goingWith(train: Train, thing: Thing): Thing[] {
  if (thing.thing !== 'set') return [];
  const sets = new Set([thing.name]);
  for (let size = 0; size < sets.size;) {
    size = sets.size;
    for (const set of train.sets) {
      if (set.kind === 'sharing' && sets.has(set.shares)) sets.add(set.name);
    }
  }
  const lost = (member: string) => member.includes('.') && sets.has(member.split('.')[0] ?? '');
  const devices = train.devices.filter(({ first, second }) => lost(first) || lost(second));
  const pairs = train.pairs.filter(({ driver, driven }) => {
    return lost(driver.member) || lost(driven.member);
  });
  const joins = train.joins.filter(({ name, members }) => lost(name) || members.every(lost));
  const things = (kind: 'set' | 'device' | 'gear pair' | 'join', all: readonly Named[]) =>
    all.map(({ name }): Thing => ({ thing: kind, name }));
  return [
    ...things(
      'set',
      train.sets.filter(({ name }) => sets.has(name) && name !== thing.name),
    ),
    ...things('device', devices),
    ...things('gear pair', pairs),
    ...things('join', joins),
  ];
}

interface Named {
  readonly name: string;
}

/** The keys that lead to a thing. */
export function pathOf(thing: Thing): string[] {
  return thing.thing === 'gear'
    ? ['ranges', thing.within, thing.name]
    : [SECTIONS[thing.thing], thing.name];
}

const SECTIONS = {
  set: 'sets',
  'gear pair': 'gear pairs',
  join: 'joined',
  device: 'devices',
  range: 'ranges',
} as const;
