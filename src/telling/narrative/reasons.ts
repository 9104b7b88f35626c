import { type Fact, isSpan, type LoadedPort, type Quantity } from '../../engine/flow/index.ts';
import { ONE, opposite, over, type Rational, signOf } from '../../engine/linear/index.ts';
import { CASE, type End, type Way } from '../../engine/train/index.ts';
import { seenFrom } from './oneway.ts';
import { AT_THE_INPUT, type Stand, wayFor } from '../../asking/request/index.ts';
import { keyOf, type Voice, voiceOf } from '../voice/index.ts';

/** The reasons as sentences, one a fact, in the order in which the load travels. */
export function sentences(
  facts: readonly Fact[],
  voice: Voice = voiceOf('en'),
  stand: Stand = AT_THE_INPUT,
): string[] {
  const end = turnedEnd(facts);
  const unit = torqueEnd(facts, end);
  const turns = facts.every((f) => f.fact !== 'tied up' && !(f.fact === 'checked' && !f.turns));
  const back = facts.some((fact) => fact.fact === 'turned' && fact.way === 'anticlockwise');
  return facts.map((fact) => sentence(fact, { end, back, unit, turns, stand }, voice));
}

// An end of the train, any member that a hand turns, or several whose speeds are given.
type Turned = End | 'hand' | 'given';

// The end that is turned: speeds are per turn of it. The first fact says which it is.
function turnedEnd(facts: readonly Fact[]): Turned {
  for (const fact of facts) {
    if (fact.fact === 'turned') return fact.end;
    if (fact.fact === 'checked') return 'hand';
    if (fact.fact === 'given') return 'given';
  }
  return 'input';
}

// Torques are per unit at the input, but where the train does not turn at the turned end.
function torqueEnd(facts: readonly Fact[], turned: Turned): Turned {
  return turned === 'output' && !facts.some(({ fact }) => fact === 'tied up') ? 'input' : turned;
}

interface Setting {
  /** Speeds are per turn of this end, torques per unit of torque at `unit`. */
  readonly end: Turned;
  /** Whether it is turned anticlockwise. */
  readonly back: boolean;
  readonly unit: Turned;
  /** Where nothing turns, nobody needs to be told that a member stands still. */
  readonly turns: boolean;
  readonly stand: Stand;
}

function sentence(fact: Fact, { end, back, unit, turns, stand }: Setting, voice: Voice): string {
  const way = (of: Way) => voice.say('way', { way: wayFor(of, stand) });
  const seen = seenFrom(stand, voice);
  const ratioOf = (ratio: Rational) => (back ? opposite(ratio) : ratio);
  const torque = (of: Quantity) => voice.say('torque', { end: unit, size: voice.quantity(of) });
  switch (fact.fact) {
    case 'turned':
      return voice.say('fact.turned', {
        end: fact.end,
        member: voice.name(fact.member),
        way: way(fact.way),
        seen,
      });
    case 'given':
      return voice.say('fact.given', {
        still: signOf(fact.speed) === 0 ? 'yes' : 'no',
        member: voice.name(fact.member),
        way: way(wayOf(fact.speed)),
        speed: voice.number(sizeOf(fact.speed)),
        seen,
      });
    case 'carries':
      return voice.say('fact.carries', {
        kind: keyOf(fact.kind),
        device: voice.name(fact.device),
        from: voice.name(fact.from),
        to: voice.name(fact.to),
        way: way(fact.pushed),
        torque: torque(fact.torque),
      });
    case 'works':
      return works(fact.set, fact.ports, voice, (port) =>
        voice.say('fact.works.port', {
          role: turns ? port.role : 'driven',
          member: portName(port, voice),
          way: way(port.pushed),
          torque: torque(port.torque),
        }),
      );
    case 'meshes':
      return voice.say('fact.meshes', {
        pair: voice.name(fact.pair),
        from: voice.name(fact.from),
        to: voice.name(fact.to),
        way: way(fact.pushed),
        torque: torque(fact.torque),
      });
    case 'as one':
      return voice.say('fact.as one', {
        set: voice.name(fact.set),
        members: voice.list(fact.ports.map((port) => portName(port, voice))),
      });
    case 'holds':
      return voice.say('fact.holds', {
        kind: keyOf(fact.kind),
        device: voice.name(fact.device),
        member: voice.name(fact.member),
        way: way(fact.pushed),
        torque: torque(fact.torque),
      });
    case 'fixed':
      return voice.say(fact.member === CASE ? 'fact.fixed.case' : 'fact.fixed', {
        member: voice.name(fact.member),
        way: way(fact.pushed),
        torque: torque(fact.torque),
      });
    case 'shares':
      return voice.say('fact.shares', { devices: voice.names(fact.devices) });
    case 'sets share':
      return voice.say('fact.sets share', {
        count: fact.sets.length,
        sets: voice.names(fact.sets),
      });
    case 'over-runs':
      return voice.say('fact.over-runs', {
        device: voice.name(fact.device),
        end,
        size: isSpan(fact.slip) ? 'none' : voice.number(sizeOf(fact.slip)),
      });
    case 'idle':
      return voice.say('fact.idle', {
        device: voice.name(fact.device),
        because: fact.overRunning === undefined ? 'nothing' : 'over_run',
        other: voice.name(fact.overRunning ?? ''),
      });
    case 'result':
      if (end === 'given') {
        return voice.say('fact.result.given', {
          still: signOf(fact.speed) === 0 ? 'yes' : 'no',
          member: voice.name(fact.member),
          way: way(wayOf(fact.speed)),
          speed: voice.number(sizeOf(fact.speed)),
        });
      }
      return voice.say('fact.result', {
        end: fact.end,
        member: voice.name(fact.member),
        way: way(wayOf(fact.speed)),
        turns: times(fact.speed, voice),
        // Either way round the ratio is input speed over output speed.
        ratio: voice.number(ratioOf(fact.end === 'output' ? over(ONE, fact.speed) : fact.speed)),
      });
    case 'outputs':
      return voice.say('fact.outputs', {
        shares: voice.list(
          fact.shares.map(({ member, torque: its }) => {
            return voice.say('output share', { member: voice.name(member), torque: torque(its) });
          }),
        ),
      });
    case 'neutral':
      return voice.say('fact.neutral', { end: fact.end, member: voice.name(fact.member) });
    case 'tied up':
      return voice.say('fact.tied up', {
        end: end === 'given' ? end : fact.rolled ? 'rolled' : fact.end,
        toward: fact.rolled ?? '',
        member: voice.name(fact.member),
        way: way(fact.way),
      });
    case 'free':
      return voice.say('fact.free', {
        count: fact.members.length,
        members: voice.names(fact.members),
      });
    case 'recirculates':
      return voice.say('fact.recirculates', {
        count: fact.sets.length,
        sets: voice.names(fact.sets),
        power: voice.number(fact.power),
      });
    case 'goes round':
      return voice.say('fact.goes round', {
        count: fact.sets.length,
        sets: voice.names(fact.sets),
        devices: voice.names(fact.devices),
      });
    case 'engine braking':
      return voice.say('fact.engine braking', {
        there: fact.there ? 'yes' : 'no',
        count: fact.overRunning.length,
        devices: voice.names(fact.overRunning),
      });
    case 'rolls':
      return voice.say('fact.rolls', {
        toward: fact.toward,
        held: fact.held === null ? 'no' : 'yes',
        member: voice.name(fact.held ?? ''),
      });
    case 'checked':
      return voice.say('fact.checked', {
        count: fact.held.length,
        held: voice.names(fact.held),
        turned: voice.name(fact.turned),
        way: way(fact.way),
        turns: fact.turns ? 'yes' : 'no',
        seen,
      });
    case 'moves':
      return voice.say('fact.moves', {
        still: signOf(fact.speed) === 0 ? 'yes' : 'no',
        member: voice.name(fact.member),
        way: way(wayOf(fact.speed)),
        turns: times(fact.speed, voice),
      });
    case 'held by hand':
      return voice.say('fact.held by hand', {
        member: voice.name(fact.member),
        way: way(fact.pushed),
        torque: torque(fact.torque),
      });
  }
}

function works(
  set: string,
  ports: readonly LoadedPort[],
  voice: Voice,
  port: (of: LoadedPort) => string,
): string {
  const drivers = ports.filter((p) => p.role === 'drives');
  const pushed = ports.filter((p) => p.role !== 'drives');
  return voice.say(pushed.length === 0 ? 'fact.works.alone' : 'fact.works', {
    set: voice.name(set),
    count: drivers.length,
    drivers: voice.list(drivers.map((p) => portName(p, voice))),
    ports: voice.list(pushed.map(port)),
  });
}

// "front sun (sun shell)": the part of the set, and the body that it is on.
function portName({ member, label }: LoadedPort, voice: Voice): string {
  if (label === member || label === CASE) return voice.name(member);
  return voice.say('part on', { part: voice.name(member), body: voice.name(label) });
}

function times(speed: Rational, voice: Voice): string {
  return voice.say('times', { size: voice.number(sizeOf(speed)) });
}

function sizeOf(value: Rational): Rational {
  return signOf(value) < 0 ? opposite(value) : value;
}

function wayOf(speed: Rational): Way {
  return signOf(speed) < 0 ? 'anticlockwise' : 'clockwise';
}
