import { isApplied, type MemberName, type Train } from '../../engine/train/index.ts';
import type { Thing } from '../../engine/trainfile/index.ts';
import { deadEnds, looseMembers } from './pieces.ts';

/** What one round of questions is about. */
export type Topic =
  | 'name'
  | 'input'
  | 'output'
  | 'outputs'
  | 'set'
  | 'gear pair'
  | 'join'
  | 'device'
  | 'gear'
  /** An entry of a section that is asked for by its form. */
  | 'entry';

/** What a person said to one prompt; null: nothing, or not counted. */
export type Reply = string | number | readonly string[] | null;
export type Replies = ReadonlyMap<string, Reply>;

/** A round of questions, as far as it is answered. */
export interface Inquiry {
  readonly topic: Topic;
  /** What is there already and is to be changed. */
  readonly changes?: Thing;
  /** Of a join: what it is that is splined to something. */
  readonly member?: MemberName;
  /** Of an entry: its section. */
  readonly section?: string;
  readonly answers: Replies;
  /** What the file says now, to start each prompt from. */
  readonly before: Replies;
}

/** Where the guided way stands: a round of questions, whether there is another, or the end. */
export type Asked =
  | { readonly ask: 'about'; readonly inquiry: Inquiry }
  | { readonly ask: 'more'; readonly of: Countable }
  | { readonly ask: 'nothing' };

export type Countable = 'set' | 'device' | 'gear';

/** What is still missing; a person is told of each in words, and may pick any of them. */
export type Lack =
  | { readonly lack: 'name' | 'input' | 'output' | Countable }
  | { readonly lack: 'loose'; readonly member: MemberName };

/**
 * What to ask next of a train that is described so far. `settled` holds what a person has said
 * to be all there is, or to be left as it is: a countable, or a member.
 */
export function askNext(train: Train, settled: ReadonlySet<string>): Asked {
  const { sets, pairs, joins, devices, ranges } = train;
  for (const end of ['name', 'input', 'output'] as const) {
    if (train[end] === '' && !settled.has(end)) return about(end);
  }
  const gears = ranges.flatMap((range) => range.gears);
  const later = joins.length + devices.length + gears.length > 0;
  if (sets.length + pairs.length === 0 && !settled.has('set')) return about('set');
  if (!later && !settled.has('set')) return { ask: 'more', of: 'set' };
  const loose = looseMembers(train).find((member) => !settled.has(member));
  if (loose !== undefined && devices.length + gears.length === 0) return aboutJoin(loose);
  if (!settled.has('device')) {
    if (devices.length === 0) return about('device');
    if (gears.length === 0) return { ask: 'more', of: 'device' };
  }
  if (!settled.has('gear') && devices.some(isApplied)) {
    return gears.length === 0 ? about('gear') : { ask: 'more', of: 'gear' };
  }
  return { ask: 'nothing' };
}

/** All that is missing, in the order in which it would be asked. */
export function lacksOf(train: Train): Lack[] {
  const ends = (['name', 'input', 'output'] as const).filter((end) => train[end] === '');
  const counts: [Countable, number][] = [
    ['set', train.sets.length + train.pairs.length],
    ['device', train.devices.length],
    ['gear', train.ranges.flatMap(({ gears }) => gears).length],
  ];
  return [
    ...ends.map((lack): Lack => ({ lack })),
    ...[...looseMembers(train), ...deadEnds(train)].map((member): Lack => ({
      lack: 'loose',
      member,
    })),
    ...counts.filter(([, count]) => count === 0).map(([lack]): Lack => ({ lack })),
  ];
}

/** A round of questions from its start. */
export function inquire(topic: Topic, rest: Partial<Inquiry> = {}): Inquiry {
  return { topic, answers: new Map(), before: new Map(), ...rest };
}

/** The round that fills a lack. */
export function inquireOf(lack: Lack): Inquiry {
  return lack.lack === 'loose' ? inquire('join', { member: lack.member }) : inquire(lack.lack);
}

function about(topic: Topic): Asked {
  return { ask: 'about', inquiry: inquire(topic) };
}

function aboutJoin(member: MemberName): Asked {
  return { ask: 'about', inquiry: inquire('join', { member }) };
}
