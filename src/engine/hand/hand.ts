import { ONE, opposite, type Rational, ZERO } from '../linear/index.ts';
import {
  barredBy,
  elementsOf,
  type Fact,
  freeFacts,
  isSpan,
  labelOf,
  observe,
  pathFacts,
  poseOf,
  type Quantity,
} from '../flow/index.ts';
import { type Motion, motionOf } from '../motion/index.ts';
import { judge, portsOf, type Verdict } from '../reckon/index.ts';
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
  const verdict = judge(motion, { on: new Set(check.on), given: [turned, ...held] });
  const label = (member: MemberName) => labelOf(verdict, member);
  const asked: Fact = {
    fact: 'checked',
    held: check.hold.map(label),
    turned: label(check.turn),
    way: check.way,
    turns: verdict.turns,
  };
  return verdict.turns ? moving(verdict, asked, check) : locked(verdict, asked, check);
}

function moving(verdict: Verdict, asked: Fact, { hold, turn }: HandCheck): HandAnswer {
  const { assembly } = verdict.motion;
  const observed = observe(verdict);
  const still = new Set(hold.map(assembly.bodyOf));
  const moves = [...observed.members].filter(([name]) => !still.has(assembly.bodyOf(name)));
  const told = bodiesToTell(verdict.motion, [turn, ...hold]);
  const moved = told.flatMap((body): Fact[] => {
    const speed = observed.bodies[body] as Quantity;
    const member = assembly.bodies[body]?.label as MemberName;
    return isSpan(speed) ? [] : [{ fact: 'moves', member, speed: speed as Rational }];
  });
  const facts = [asked, ...moved, ...freeFacts(verdict, observed)];
  return { turns: true, moves: new Map(moves), pose: poseOf(verdict), facts };
}

function locked(verdict: Verdict, asked: Fact, { hold, turn }: HandCheck): HandAnswer {
  const { motion } = verdict;
  const ports = portsOf(motion);
  const carried = barredBy(verdict, ports);
  const torques = new Map<string, Quantity>();
  [turn, ...hold].forEach((member, k) => torques.set(member, carried.given[k] as Quantity));
  motion.devices.forEach(({ device }, d) => {
    const torque = carried.devices[d] as Rational;
    if (torque.num !== 0) torques.set(device.name, torque);
  });
  const path = pathFacts(verdict, elementsOf(motion, ports, carried), [turn]);
  const byHand = hold.flatMap((member, k): Fact[] => {
    const torque = carried.given[k + 1] as Rational;
    if (torque.num === 0) return [];
    // The hand pushes the member back; the member is pushed against the hand.
    const pushed = torque.num > 0 ? 'anticlockwise' : 'clockwise';
    const size = torque.num < 0 ? opposite(torque) : torque;
    return [{ fact: 'held by hand', member: labelOf(verdict, member), pushed, torque: size }];
  });
  const branches = ports.map(({ within, member }, k) => {
    return { within, member, torque: carried.ports[k] as Quantity };
  });
  return { turns: false, torques, branches, facts: [asked, ...path, ...byHand] };
}

// Every body but the case, the planets, and those that the hands are on.
function bodiesToTell({ assembly }: Motion, hands: readonly MemberName[]): number[] {
  const untold = new Set([0, ...assembly.onPins, ...hands.map(assembly.bodyOf)]);
  return assembly.bodies.flatMap((_, body) => (untold.has(body) ? [] : [body]));
}
