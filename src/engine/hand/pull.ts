import {
  extremes,
  type LinearForm,
  minus,
  over,
  plus,
  type Rational,
  times,
  toNumber,
  valueOf,
  type Vector,
  ZERO,
} from '../linear/index.ts';
import { type GivenSpeed, type Motion, motionOf, type ConeQuestion } from '../motion/index.ts';
import { isSpan, judge, provedTorques, speedsOf, value, type Ruling } from '../reckon/index.ts';
import { isApplied, type MemberName, type Train } from '../train/index.ts';

/** A member that a hand pulls to other speeds, while hands hold others and some speeds are given. */
export interface Pulling {
  readonly on: readonly string[];
  readonly hold: readonly MemberName[];
  /** Such as the input at one turn; none: the pulled member is all that turns. */
  readonly given: readonly GivenSpeed[];
  readonly pull: MemberName;
  /**
   * The motion in which the pull begins, as a `drawn` tells it: members without a speed stand
   * still. Absent, or no motion of this train: one that the given speeds allow.
   */
  readonly from?: ReadonlyMap<MemberName, Rational>;
}

/**
 * How the train follows, as far as it does: exact, from what the cone allows, each way one
 * straight piece. Undefined stands for given speeds that cannot be together.
 */
export interface Pull {
  readonly member: MemberName;
  /** The motion in which the pull begins, of every member. */
  readonly from: ReadonlyMap<MemberName, Rational>;
  /** Towards higher speeds, clockwise, and towards lower ones. */
  readonly up: PullWay;
  readonly down: PullWay;
}

export interface PullWay {
  /** The speed at which the pulled member stops; null: nothing stops it. */
  readonly to: Rational | null;
  /** What each member's speed changes by for each turn by which the pulled one's rises. */
  readonly perTurn: ReadonlyMap<MemberName, Rational>;
  /** Members that may turn otherwise on the way, for nothing settles them. */
  readonly free: ReadonlySet<MemberName>;
  readonly stop?: Stop;
}

/** What bars the way further, read off the certificate of the furthest speed. */
export interface Stop {
  /** One-way clutches that hold. */
  readonly clutches: readonly string[];
  /** Friction devices that carry the push. */
  readonly devices: readonly string[];
  /** Held members and given speeds that withstand it. */
  readonly hands: readonly MemberName[];
}

/** Lays a hand on a member to pull it. Throws on a member that the train lacks. */
// The motions that the given speeds allow are convex. So on the straight way from one of them to
// that in which the pulled member goes furthest (or along the ray on which it goes for ever)
// every row is met; and what is settled is so on the whole way, and straight. The engine is asked
// once each way, when the hand is laid on; heights in between cost a product a member.
export function pull(train: Train, pulling: Pulling): Pull | undefined {
  const motion = motionOf(train);
  const held = pulling.hold.map((member) => ({ member, speed: ZERO }));
  const question = { on: new Set(pulling.on), given: [...pulling.given, ...held] };
  const ruling = judge(motion, question);
  if (!ruling.turns) return undefined;
  const start = startOf(ruling, pulling.from);
  const { rows } = ruling.programme;
  const form = motion.speedOf(pulling.pull);
  const [{ least, greatest }] = extremes(motion.columns, rows, [form], motion.base) as [Extremes];
  return {
    member: pulling.pull,
    from: byMember(motion, (speed) => valueOf(speed, start)),
    up: wayTo({ ruling, start, member: pulling.pull, bound: greatest, sign: -1 }),
    down: wayTo({ ruling, start, member: pulling.pull, bound: least, sign: 1 }),
  };
}

/**
 * The speeds of all members, but for the case, when the pulled one is pulled to `speed`; beyond
 * a stop, those at the stop. Give the map that it gave before to have it written over.
 */
export function pulledTo(
  { member, from, up, down }: Pull,
  speed: number,
  speeds: Map<MemberName, number> = new Map(),
): Map<MemberName, number> {
  const begin = toNumber(from.get(member) ?? ZERO);
  const way = speed > begin ? up : down;
  const stop = way.to === null ? speed : toNumber(way.to);
  const turns = (speed > begin ? Math.min(speed, stop) : Math.max(speed, stop)) - begin;
  for (const [name, before] of from) {
    speeds.set(name, toNumber(before) + turns * toNumber(way.perTurn.get(name) ?? ZERO));
  }
  return speeds;
}

type Extremes = ReturnType<typeof extremes>[number];

interface Leg {
  readonly ruling: Ruling;
  readonly start: Vector;
  readonly member: MemberName;
  readonly bound: Extremes['least'];
  /** That with which the pulled speed was minimised. */
  readonly sign: 1 | -1;
}

function wayTo({ ruling, start, member, bound, sign }: Leg): PullWay {
  const { motion } = ruling;
  const { solution } = bound;
  const to = value(bound, sign);
  const pulled = motion.speedOf(member);
  const begin = valueOf(pulled, start);
  const length = to && minus(to, begin);
  const change = (speed: LinearForm): Rational => {
    if (solution.state === 'unbounded') {
      return over(valueOf(speed, solution.ray), valueOf(pulled, solution.ray));
    }
    if (solution.state !== 'optimal' || !length || length.num === 0) return ZERO;
    return over(minus(valueOf(speed, solution.point), valueOf(speed, start)), length);
  };
  const perTurn = byMember(motion, change);
  const half = length ? times(length, { num: 1, den: 2 }) : { num: -sign, den: 1 };
  const free = freeAt(ruling, { member, speed: plus(begin, half) });
  if (to === null) return { to, perTurn, free };
  return { to, perTurn, free, stop: stopOf({ ...ruling, solution }) };
}

// The motion that is asked for, if it is one: it is given to the cone as a whole.
function startOf(ruling: Ruling, from: Pulling['from']): Vector {
  const { motion, question, solution } = ruling;
  if (solution.state === 'infeasible') throw new Error('a pull begins where the train turns');
  if (!from) return solution.point;
  const given = motion.names.map((member): GivenSpeed => {
    return { member, speed: from.get(member) ?? ZERO };
  });
  const asked = judge(motion, { ...question, given: [...question.given, ...given] });
  return asked.solution.state === 'infeasible' ? solution.point : asked.solution.point;
}

function freeAt({ motion, question }: Ruling, pulled: GivenSpeed): ReadonlySet<MemberName> {
  const there: ConeQuestion = { ...question, given: [...question.given, pulled] };
  const speeds = speedsOf(judge(motion, there), motion.names.map(motion.speedOf));
  const free = motion.assembly.bodies.filter(({ label }) => {
    const speed = speeds.get(motion.speedOf(label));
    return speed && isSpan(speed);
  });
  return new Set(free.flatMap(({ names }) => names));
}

function stopOf(furthest: Ruling): Stop {
  const { given, devices } = provedTorques(furthest, []);
  const loaded = [...devices].flatMap(([device, { num }]) => (num === 0 ? [] : [device]));
  const names = (friction: boolean) =>
    loaded.filter((device) => isApplied(device) === friction).map(({ name }) => name);
  const hands = [...given].flatMap(([member, { num }]) => (num === 0 ? [] : [member]));
  return { clutches: names(false), devices: names(true), hands };
}

function byMember(
  { assembly, speedOf }: Motion,
  speedAt: (speed: LinearForm) => Rational,
): ReadonlyMap<MemberName, Rational> {
  const turning = assembly.members.filter((member) => assembly.bodyOf(member) !== 0);
  return new Map(turning.map((name) => [name, speedAt(speedOf(name))]));
}
