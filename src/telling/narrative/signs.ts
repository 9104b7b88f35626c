import {
  type BenchSign,
  type Fast,
  fastest,
  type Fault,
  type FaultMatrix,
  type FaultRow,
  type Outcome,
  type RoadSign,
  roadSign,
} from '../../engine/faults/index.ts';
import { isSpan, type Quantity } from '../../engine/flow/index.ts';
import { opposite, signOf } from '../../engine/linear/index.ts';
import { assemble, type Train } from '../../engine/train/index.ts';
import { seenFrom } from './oneway.ts';
import {
  AT_THE_INPUT,
  opposite as otherWay,
  type Stand,
  wayFor,
} from '../../asking/request/index.ts';
import { keyOf, type Voice, voiceOf } from '../voice/index.ts';

/** "low sprag: backwards", in the words of a language. */
export function faultName(fault: Fault, voice: Voice = voiceOf('en')): string {
  const place = placeOf(fault);
  const joined = place === undefined ? 'join' : 'stripped_at';
  const is = fault.what === 'join' ? joined : (upstreamOf(fault) ?? keyOf(fault.is));
  const values = { name: voice.called(subjectOf(fault)), is, place: voice.called(place ?? '') };
  return voice.say('fault', values);
}

/** "D 1"; a range with one gear of its own name is said once. */
export function gearName({ range, gear }: InRange, voice: Voice): string {
  return range === gear ? voice.called(gear) : `${voice.called(range)} ${voice.called(gear)}`;
}

/** A gear that is named by its range and its own name in one text: "D 1", "both axles high". */
export function gearCalled(text: string, voice: Voice): string {
  const words = text.split(' ');
  const halves = words.slice(1).map((_, k) => {
    const [range, gear] = [words.slice(0, k + 1).join(' '), words.slice(k + 1).join(' ')];
    const called = [voice.called(range), voice.called(gear)] as const;
    const told = [called[0] !== range, called[1] !== gear].filter(Boolean).length;
    return { told, text: called.join(' ') };
  });
  const [best] = halves.toSorted((a, b) => b.told - a.told);
  return best && best.told > 0 ? best.text : voice.called(text);
}

interface InRange {
  readonly range: string;
  readonly gear: string;
}

/** The hand check that shows it, in a sentence; where none does, that. */
export function benchText(
  sign: BenchSign | undefined,
  train: Train,
  voice: Voice = voiceOf('en'),
  stand: Stand = AT_THE_INPUT,
): string {
  if (!sign) return voice.say('sign.bench.none');
  const { hold, turned, way } = handsFor(sign.check, train, stand);
  return voice.say('sign.bench', {
    count: hold.length,
    held: voice.names(hold),
    air: sign.check.on.length,
    on: voice.names(sign.check.on),
    turned: voice.name(turned),
    turns: sign.turns ? 'yes' : 'no',
    way: voice.say('way', { way: wayFor(way, stand) }),
    seen: seenFrom(stand, voice),
  });
}

/** The first gear that shows it, in a sentence, and what spins there; where none does, that. */
export function roadText(matrix: FaultMatrix, row: FaultRow, voice: Voice = voiceOf('en')): string {
  const sign = roadSign(matrix, row);
  if (!sign) return voice.say('sign.road.none');
  const { gear, end } = sign;
  const first = roadSignText(sign, voice);
  const spins = row.cells[matrix.gears.indexOf(gear)]?.spins;
  const free = (end !== 'inReverse' && spins?.[end].free) || [];
  const fast = fastest(matrix, row);
  return [
    first,
    ...(free.length === 0
      ? []
      : [voice.say('sign.free', { count: free.length, members: voice.names(free) })]),
    ...(fast ? [fastText(fast, voice)] : []),
  ].join(' ');
}

/** "On the road: D 2 does not drive." */
export function roadSignText({ gear, end, now }: RoadSign, voice: Voice): string {
  const ratio = (of: Outcome | undefined) => (of?.ratio ? voice.number(of.ratio) : '');
  const values = { end: keyOf(end), gear: gearName(gear, voice), is: keyOf(now.is) };
  return voice.say('sign.road', { ...values, ratio: ratio(now), was: ratio(gear[end]) });
}

function fastText({ gear, end, member, speed }: Fast, voice: Voice): string {
  const values = { end, gear: gearName(gear, voice), member: voice.name(member) };
  return voice.say('sign.fast', { ...values, speed: sizeText(speed, voice) });
}

function sizeText(speed: Quantity, voice: Voice): string {
  if (isSpan(speed)) return voice.quantity(speed);
  return voice.number(signOf(speed) < 0 ? opposite(speed) : speed);
}

// Where a hand turns one race of a one-way clutch while the other is held, the reader may
// hold either: what turns against what stays the same, and the way is the other.
function handsFor(check: BenchSign['check'], train: Train, stand: Stand) {
  const { bodies, bodyOf } = assemble(train);
  const label = (member: string) => bodies[bodyOf(member) ?? 0]?.label ?? member;
  const held = check.hold.length === 0 ? [label('case')] : check.hold;
  const races = train.devices.flatMap((device) => {
    return device.kind === 'one-way' ? [[label(device.first), label(device.second)]] : [];
  });
  const [still] = held;
  const [holding, turning] = stand.hold === 'outer' ? [1, 0] : [0, 1];
  const wrong = races.some((pair) => pair[holding] === check.turn && pair[turning] === still);
  const own = { hold: check.hold, turned: check.turn, way: check.way };
  if (held.length !== 1 || check.on.length > 0 || still === undefined || !wrong) return own;
  return { hold: [check.turn], turned: still, way: otherWay(check.way) };
}

// What a device leaks is its circuit's; a line leaks itself.
function upstreamOf(fault: Fault): string | undefined {
  return fault.what === 'oil' && fault.is === 'leaks' ? 'line_leaks' : undefined;
}

// Where a join is stripped, where a valve is stuck, and what is crossed or joined with what.
function placeOf(fault: Fault): string | undefined {
  if (fault.what === 'join') return fault.of;
  if (fault.what !== 'oil') return undefined;
  if (fault.is === 'stuck') return `${fault.at}`;
  return fault.is === 'swapped' || fault.is === 'joined' ? fault.with : undefined;
}

function subjectOf(fault: Fault): string {
  switch (fault.what) {
    case 'device':
    case 'one-way':
      return fault.device;
    case 'join':
      return fault.join;
    case 'member':
    case 'wheel':
    case 'planet':
      return fault.member;
    case 'pair':
      return fault.pair;
    case 'set':
      return fault.set;
    case 'part':
      return fault.part;
    case 'oil':
      return fault.name;
  }
}
