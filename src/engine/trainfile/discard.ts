import {
  fits,
  type Form,
  isBorne,
  mayBeAbsent,
  type Mention,
  opened,
  within,
} from '../form/index.ts';
import { FILE } from '../sections/index.ts';
import type { Train } from '../train/index.ts';
import { type Edited, inTurn, remove } from '../yaml/index.ts';
import { readFile } from './reading.ts';

/** An entry of a train file, by what it is called. */
export type Thing =
  | { readonly thing: 'set' | 'gear pair' | 'join' | 'device' | 'range'; readonly name: string }
  | { readonly thing: 'gear'; readonly within: string; readonly name: string }
  /** Of any other section: an entry by name; '': the section itself. */
  | { readonly thing: 'entry'; readonly within: string; readonly name: string };

/**
 * Takes a thing out of the file, with all that `goingWith` it, and its name out of wherever it may
 * be left out. `train` is what the text says so far.
 */
export function discard(text: string, train: Train, thing: Thing): Edited {
  const gone = [...goingWith(train, thing), thing];
  const things = gone.map(pathOf);
  const { mentions } = readFile(text);
  const beside = mentions.filter(({ path }) => !things.some((one) => leads(one, path)));
  const kept = beside.filter((mention) => !isLost(mention, gone));
  const lost = beside
    .filter((mention) => !kept.includes(mention) || isNobody(mention, mentions, kept))
    .map(({ path }) => path);
  const isEmptied = (list: readonly string[]) =>
    mentions.filter(({ path }) => leads(list, path)).length ===
    lost.filter((path) => leads(list, path)).length;
  const places = new Map<string, readonly string[]>();
  for (const path of lost) {
    const place = leftOut(path, isEmptied);
    if (place) places.set(place.join('\n'), place);
  }
  // An item is taken from the back of its list, so that those ahead keep their index.
  const paths = [...[...places.values()].toReversed(), ...things];
  return inTurn(
    text,
    paths.map((path) => (before) => remove(before, path)),
  );
}

// Whether a name is of something that goes.
function isLost({ role, name }: Mention, gone: readonly Thing[]): boolean {
  const goes = (thing: Thing['thing'], its: string) =>
    gone.some((one) => one.thing === thing && one.name === its);
  const [base = '', ...part] = name.split('.');
  const ofSet = part.length > 0 && goes('set', base);
  switch (role.names) {
    case 'member':
      return ofSet;
    case 'carried':
      return ofSet || goes('device', base);
    case 'device':
      return goes('device', name);
    case 'gap':
      return goes('device', name) || goes('entry', name);
    case 'set':
    case 'gear pair':
      return goes(role.names, name);
    default:
      return false;
  }
}

// Whether what is told of a name in another language is told of nobody now.
function isNobody({ role, name }: Mention, before: readonly Mention[], kept: readonly Mention[]) {
  return role.names === 'anything' && isBorne(name, before) && !isBorne(name, kept);
}

// How far down a path something may be left out: an entry by name, an item, a key that need not
// stand. The last item of a list that may not be empty goes with its list.
function leftOut(
  path: readonly string[],
  isEmptied: (list: readonly string[]) => boolean,
): readonly string[] | undefined {
  let form: Form | undefined = FILE as unknown as Form;
  let found: readonly string[] | undefined;
  for (const [i, step] of path.entries()) {
    const outer: Form = opened(form);
    form = within(outer, step);
    if (!form) break;
    const list = listIn(outer);
    const isItem = list && (fits(list, []) || !isEmptied(path.slice(0, i)));
    if (outer.type === 'record' || isItem || mayBeAbsent(form)) found = path.slice(0, i + 1);
  }
  // What a file must say stays, to be said anew.
  return path[0] === 'output' ? undefined : found;
}

function listIn(form: Form): Form | undefined {
  if (form.type === 'array') return form;
  return form.type === 'union' ? form.options.find(({ type }) => type === 'array') : undefined;
}

function leads(start: readonly string[], path: readonly string[]): boolean {
  return start.every((step, i) => path[i] === step);
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
  switch (thing.thing) {
    case 'gear':
      return ['ranges', thing.within, thing.name];
    case 'entry':
      return thing.name === '' ? [thing.within] : [thing.within, thing.name];
    default:
      return [SECTIONS[thing.thing], thing.name];
  }
}

const SECTIONS = {
  set: 'sets',
  'gear pair': 'gear pairs',
  join: 'joined',
  device: 'devices',
  range: 'ranges',
} as const;
