import { fromText, type Rational } from '../../engine/linear/index.ts';
import { assemble, CASE, type MemberName, type Train, type Way } from '../../engine/train/index.ts';
import { type Stand, wayFor } from '../../telling/narrative/index.ts';
import { meant, split, suggestion } from './names.ts';
import { Refusal } from './refusal.ts';
import { wayMeant } from './synonym.ts';
import type { Options } from './session.ts';

// The member that a name means; refuses with the nearest.
function memberOf(train: Train, given: string): MemberName {
  const names = assemble(train).bodies.flatMap((body) => body.names);
  const name = meant(given, names);
  if (name === undefined) throw new Refusal('no.member', suggestion(given, names));
  return name;
}

/**
 * The members of --hold, --turn and the ways of --way, which is the reader's word: both where
 * it is not given, the reader's clockwise first.
 */
export function handsOf(train: Train, { hold, turn, way }: Options, stand: Stand) {
  if (turn === undefined) throw new Refusal('bad.missing turn');
  const names = assemble(train).bodies.flatMap((body) => body.names);
  const turned = memberOf(train, turn);
  // The case stands still without a hand.
  const held = split(hold ?? '', names)
    .map((given) => memberOf(train, given))
    .filter((name) => name !== CASE);
  const { bodyOf } = assemble(train);
  if (bodyOf(turned) === 0) throw new Refusal('bad.case turned');
  if (held.some((name) => bodyOf(name) === bodyOf(turned))) {
    throw new Refusal('bad.held turned', { member: turned });
  }
  const ways = way === undefined ? WAYS : [wayOf(way)];
  return { hold: held, turn: turned, ways: ways.map((said) => wayFor(said, stand)) };
}

/** The speeds of --at, "engine=1000,motor=0": two members or more. */
export function speedsOf(train: Train, text: string): Map<MemberName, Rational> {
  const speeds = new Map<MemberName, Rational>();
  for (const part of text.split(',')) {
    const [, name = '', value = ''] = /^(.*)=(.*)$/.exec(part) ?? [];
    const speed = fromText(value);
    if (!speed || name.trim() === '') throw new Refusal('bad.speeds', { given: part.trim() });
    speeds.set(memberOf(train, name), speed);
  }
  if (speeds.size < 2) throw new Refusal('bad.few speeds');
  return speeds;
}

const WAYS: readonly Way[] = ['clockwise', 'anticlockwise'];

function wayOf(text: string): Way {
  const way = wayMeant(text);
  if (!way) throw new Refusal('no.way', { given: text });
  return way;
}
