import { fromText, type Rational } from '../../engine/linear/index.ts';
import { assemble, CASE, type MemberName, type Train, type Way } from '../../engine/train/index.ts';
import { meant, split, unknown } from './names.ts';
import { NoAnswer } from './refused.ts';
import { type Stand, wayFor } from './stand.ts';
import { wayMeant } from './synonym.ts';

/** Who holds and turns what, as a person says it. */
export interface Hands {
  /** Members with commas between. */
  readonly hold?: string;
  readonly turn?: string;
  /** The reader's word; both ways where it is left out. */
  readonly way?: string;
}

/** The members that are held and turned, and the ways: of both the reader's clockwise first. */
export function handsOf(train: Train, { hold, turn, way }: Hands, stand: Stand) {
  if (turn === undefined) throw new NoAnswer({ refused: 'bad.missing turn' });
  const { bodies, bodyOf } = assemble(train);
  const names = bodies.flatMap((body) => body.names);
  const turned = memberOf(train, turn);
  // The case stands still without a hand.
  const held = split(hold ?? '', names, train)
    .map((given) => memberOf(train, given))
    .filter((name) => name !== CASE);
  if (bodyOf(turned) === 0) throw new NoAnswer({ refused: 'bad.case turned' });
  if (held.some((name) => bodyOf(name) === bodyOf(turned))) {
    throw new NoAnswer({ refused: 'bad.held turned', member: turned });
  }
  const ways = way === undefined ? WAYS : [wayOf(way)];
  return { hold: held, turn: turned, ways: ways.map((said) => wayFor(said, stand)) };
}

/** The speeds of "engine=1000,motor=0": two members or more. */
export function speedsOf(train: Train, text: string): Map<MemberName, Rational> {
  const speeds = new Map<MemberName, Rational>();
  for (const part of text.split(',')) {
    const [, name = '', value = ''] = /^(.*)=(.*)$/.exec(part) ?? [];
    const speed = fromText(value);
    if (!speed || name.trim() === '') {
      throw new NoAnswer({ refused: 'bad.speeds', given: part.trim() });
    }
    speeds.set(memberOf(train, name), speed);
  }
  if (speeds.size < 2) throw new NoAnswer({ refused: 'bad.few speeds' });
  return speeds;
}

// The member that a name means; refuses with the nearest.
function memberOf(train: Train, given: string): MemberName {
  const names = assemble(train).bodies.flatMap((body) => body.names);
  const name = meant(given, names, train);
  if (name === undefined) throw new NoAnswer({ refused: 'no.member', ...unknown(given, names) });
  return name;
}

const WAYS: readonly Way[] = ['clockwise', 'anticlockwise'];

function wayOf(text: string): Way {
  const way = wayMeant(text);
  if (!way) throw new NoAnswer({ refused: 'no.way', given: text });
  return way;
}
