import { ONE, opposite, type Rational, ZERO } from '../linear/index.ts';
import {
  type Carried,
  carriedBy,
  deviceWork,
  type Fact,
  freeFacts,
  labelOf,
  pathFacts,
} from '../flow/index.ts';
import { type Motion, motionOf } from '../motion/index.ts';
import { isSpan, judge, type Quantity } from '../reckon/index.ts';
import type { MemberName, Train } from '../train/index.ts';
import type { HandAnswer, HandCheck } from './answer.ts';

/**
 * Whether the hands can turn a member while they hold others, and what the rest do. Parts not
 * fitted yet are faults of the train ("left out"). Throws on a member that the train lacks.
 */
export function hand(train: Train, check: HandCheck): HandAnswer {
  const motion = motionOf(train);
  const held = check.hold.map((member) => ({ member, speed: ZERO }));
  const turned = { member: check.turn, speed: check.way === 'clockwise' ? ONE : opposite(ONE) };
  const ruling = judge(motion, { on: new Set(check.on), given: [turned, ...held] });
  const carried = carriedBy(ruling);
  const label = (member: MemberName) => labelOf(carried, member);
  const asked: Fact = {
    fact: 'checked',
    held: check.hold.map(label),
    turned: label(check.turn),
    way: check.way,
    turns: ruling.turns,
  };
  return ruling.turns ? moving(carried, asked, check) : locked(carried, asked, check);
}

function moving(carried: Carried, asked: Fact, { hold, turn }: HandCheck): HandAnswer {
  const { ruling, observed } = carried;
  const { bodyOf } = ruling.motion.assembly;
  const still = new Set(hold.map(bodyOf));
  const moves = [...observed.members].filter(([name]) => !still.has(bodyOf(name)));
  const moved = bodiesToTell(ruling.motion, [turn, ...hold]).flatMap((member): Fact[] => {
    const speed = observed.speedOf(member);
    return isSpan(speed) ? [] : [{ fact: 'moves', member, speed }];
  });
  const facts = [asked, ...moved, ...freeFacts(carried)];
  const devices = deviceWork(carried);
  return { turns: true, moves: new Map(moves), drawn: observed.drawn, devices, facts };
}

// What bars a turn is read off a proof, so each torque is settled.
function locked(carried: Carried, asked: Fact, { hold, turn, on }: HandCheck): HandAnswer {
  const { motion } = carried.ruling;
  const { given, devices, ports } = carried.proved;
  const torques = new Map<string, Quantity>(
    [turn, ...hold].map((member) => [member, given.get(member) as Rational]),
  );
  for (const [{ name }, torque] of devices) if (torque.num !== 0) torques.set(name, torque);
  const byHand = [...new Set(hold)].flatMap((member): Fact[] => {
    const torque = given.get(member) as Rational;
    if (torque.num === 0) return [];
    // The hand pushes the member back; the member is pushed against the hand.
    const pushed = torque.num > 0 ? 'anticlockwise' : 'clockwise';
    const size = torque.num < 0 ? opposite(torque) : torque;
    return [{ fact: 'held by hand', member: labelOf(carried, member), pushed, torque: size }];
  });
  const branches = [...ports].map(([{ within, member }, torque]) => ({ within, member, torque }));
  const facts = [asked, ...pathFacts(carried, [turn]), ...byHand];
  const loose = looseIn(motion, { hold, turn, on });
  return { turns: false, torques, loose, branches, devices: deviceWork(carried), facts };
}

// Whom nothing settles while the hands stand still: the lock is not theirs.
function looseIn(motion: Motion, { hold, turn, on }: Omit<HandCheck, 'way'>) {
  const given = [turn, ...hold].map((member) => ({ member, speed: ZERO }));
  const { observed } = carriedBy(judge(motion, { on: new Set(on), given }));
  return new Map([...observed.members].filter(([, speed]) => isSpan(speed)));
}

// Every body but the case, the planets, and those that the hands are on.
function bodiesToTell({ assembly }: Motion, hands: readonly MemberName[]): MemberName[] {
  const untold = new Set([0, ...assembly.onPins, ...hands.map(assembly.bodyOf)]);
  return assembly.bodies.flatMap(({ label }, body) => (untold.has(body) ? [] : [label]));
}
