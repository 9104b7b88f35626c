import { ONE, opposite, over, plus, type Rational, times, ZERO } from '../linear/index.ts';
import {
  isSpan,
  type Loads,
  loadsOf,
  type Port,
  portTorque,
  type Quantity,
  reactionsOf,
  stretched,
  type Verdict,
} from '../reckon/index.ts';

/** The torques of a train, per unit of torque at one end; clockwise positive. */
export interface Carried {
  /** By each given speed's holder, on the train. */
  readonly given: readonly Quantity[];
  /** From outside, on each tied member. */
  readonly tied: readonly Quantity[];
  /** By the reluctant end, on the train. */
  readonly reluctant: Quantity;
  /** By each device, on its first-named member. */
  readonly devices: readonly Quantity[];
  /** Each mesh's multiplier of Willis's row. */
  readonly meshes: readonly Quantity[];
  /** By each port's set, on the port's body. */
  readonly ports: readonly Quantity[];
  /** One way of carrying the load that the certificate proves, all numbers settled. */
  readonly point: Point;
}

export interface Point {
  readonly given: readonly Rational[];
  readonly tied: readonly Rational[];
  readonly reluctant: Rational;
  readonly devices: readonly Rational[];
  readonly meshes: readonly Rational[];
  readonly ports: readonly Rational[];
}

/** Torques where the train drives; `unit` is the given speed whose torque is made ±1. */
export function carriedBy(
  verdict: Verdict,
  slips: readonly Quantity[],
  ports: readonly Port[],
  unit: 'turned' | 'reluctant',
): Carried {
  const reactions = reactionsOf(verdict, slips, ports);
  const loads = loadsOf(verdict);
  const by = unit === 'turned' ? unitOf(verdict, loads) : ONE;
  const scaled = (quantities: readonly Quantity[]) => quantities.map((q) => stretched(q, by));
  return {
    given: scaled(reactions.given),
    tied: scaled(reactions.tied),
    reluctant: stretched(reactions.reluctant, by),
    devices: scaled(reactions.devices),
    meshes: scaled(reactions.meshes),
    ports: scaled(reactions.ports),
    point: pointOf(loads, ports, by),
  };
}

// What makes the first given torque 1. Where the output is made to stand still the proof may
// load it either way; then it is turned round, unless a one-way clutch bears on it.
function unitOf({ motion }: Verdict, { given, devices }: Loads): Rational {
  const first = given.find(({ num }) => num !== 0) ?? ONE;
  const bears = motion.devices.some(({ device }, d) => {
    return device.kind === 'one-way' && devices[d]?.num !== 0;
  });
  return inverse(first.num < 0 && bears ? opposite(first) : first);
}

/** The torques that bar a train from turning, per unit of torque at the turned end. */
export function barredBy(verdict: Verdict, ports: readonly Port[]): Carried {
  const loads = loadsOf(verdict);
  const turned = verdict.question.given.findIndex(({ speed }) => speed.num !== 0);
  const torque = loads.given[turned] ?? ZERO;
  const by = torque.num === 0 ? ONE : inverse(torque.num < 0 ? opposite(torque) : torque);
  const point = pointOf(loads, ports, by);
  return { ...point, point };
}

/** No torque anywhere. */
export function idle(verdict: Verdict, ports: readonly Port[]): Carried {
  const { motion, question } = verdict;
  const none = (things: readonly unknown[]) => things.map(() => ZERO);
  const point = {
    given: none(question.given),
    tied: none(question.tied ?? []),
    reluctant: ZERO,
    devices: none(motion.devices),
    meshes: none(motion.meshes),
    ports: none(ports),
  };
  return { ...point, point };
}

/** The sum of settled quantities; undefined if one is not. */
export function total(quantities: readonly Quantity[]): Rational | undefined {
  let sum = ZERO;
  for (const quantity of quantities) {
    if (isSpan(quantity)) return undefined;
    sum = plus(sum, quantity);
  }
  return sum;
}

function pointOf(loads: Loads, ports: readonly Port[], by: Rational): Point {
  const scaled = (numbers: readonly Rational[]) => numbers.map((n) => times(n, by));
  const meshes = scaled(loads.meshes);
  return {
    given: scaled(loads.given),
    tied: scaled(loads.tied),
    reluctant: times(loads.reluctant, by),
    devices: scaled(loads.devices),
    meshes,
    ports: ports.map((port) => portTorque(port, meshes)),
  };
}

function inverse(rational: Rational): Rational {
  return over(ONE, rational);
}
