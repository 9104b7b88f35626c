import { ONE, opposite, over, type Rational, ZERO } from '../linear/index.ts';
import {
  type Observed,
  observe,
  portsOf,
  provedTorques,
  scaled,
  type Torques,
  torquesOf,
  speedAt,
  type Ruling,
} from '../reckon/index.ts';
import type { State } from './answer.ts';
import { type Element, elementsOf } from './element.ts';

/** What a ruling comes to: how everything turns, and what carries the load. */
export interface Carried {
  readonly ruling: Ruling;
  readonly state: State;
  readonly observed: Observed;
  /** Per unit of torque at the input, or at the turned end where nothing turns; none in neutral. */
  readonly torques: Torques;
  /** One way of carrying the load that the certificate proves: all of it is settled. */
  readonly proved: Torques<Rational>;
  /** What carries load, in the order of the file: sets, gear pairs, devices. */
  readonly elements: readonly Element[];
}

/** `state` is for who knows better than the ruling alone tells. */
export function carriedBy(ruling: Ruling, state: State = stateOf(ruling)): Carried {
  const ports = portsOf(ruling.motion);
  const observed = observe(ruling);
  const certified = provedTorques(ruling, ports);
  const unit = unitOf(ruling, state, certified);
  const proved = scaled(certified, unit);
  const torques =
    state === 'driving' ? scaled(torquesOf(ruling, observed.slips, ports), unit) : proved;
  const elements = elementsOf(ruling.motion, observed, torques, proved);
  return { ruling, state, observed, torques, proved, elements };
}

/** Tied up where nothing turns, neutral where the reluctant end can stand still. */
export function stateOf(ruling: Ruling): State {
  if (!ruling.turns) return 'tied up';
  const { reluctant } = ruling.question;
  return reluctant !== undefined && speedAt(ruling, reluctant).num !== 0 ? 'driving' : 'neutral';
}

/** By how much the certificate's torques are to be multiplied. */
function unitOf(
  { motion, question }: Ruling,
  state: State,
  { given, devices }: Torques<Rational>,
): Rational {
  if (state === 'neutral') return ZERO;
  if (state === 'tied up') {
    const turned = question.given.find(({ speed }) => speed.num !== 0);
    const torque = (turned && given.get(turned.member)) ?? ZERO;
    return torque.num === 0 ? ONE : inverse(torque.num < 0 ? opposite(torque) : torque);
  }
  // The torque of a reluctant end has the size 1.
  if (!given.has(motion.train.input) && question.reluctant === motion.train.input) return ONE;
  // Where the output is made to stand still the proof may load it either way; then it is turned
  // round, unless a one-way clutch bears on it.
  const first = [...given.values()].find(({ num }) => num !== 0) ?? ONE;
  const bears = [...devices].some(([{ kind }, { num }]) => kind === 'one-way' && num !== 0);
  return inverse(first.num < 0 && bears ? opposite(first) : first);
}

function inverse(rational: Rational): Rational {
  return over(ONE, rational);
}
