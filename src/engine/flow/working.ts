import { ONE, opposite, over, type Rational, times, ZERO } from '../linear/index.ts';
import { type Motion, willis } from '../motion/index.ts';
import { isSpan, isZero, type Port, portsOf, type Quantity, speedAt, stretched, type Verdict } from '../reckon/index.ts';
import type { Branch, DeviceWork, MeshWork, State, Working } from './answer.ts';
import { barredBy, type Carried, carriedBy, idle, total } from './carried.ts';
import { efficiencyOf, type MeshEfficiency } from './efficiency.ts';
import { elementsOf } from './element.ts';
import type { End } from './fact.ts';
import { observe, type Observed } from './observed.ts';
import { circlingPower } from './power.ts';
import { reasonsOf } from './reasons.ts';

/** A judged question about a gear as all that can be said of it. */
export function workingOf(verdict: Verdict, turned: End, losses: MeshEfficiency): Working {
  const { motion } = verdict;
  const ports = portsOf(motion);
  const state = stateOf(verdict);
  const observed = state === 'tied up' ? atRest(motion) : observe(verdict);
  const carried =
    state === 'driving'
      ? carriedBy(verdict, observed.slips, ports, turned === 'input' ? 'turned' : 'reluctant')
      : state === 'neutral'
        ? idle(verdict, ports)
        : barredBy(verdict, ports);
  const elements = elementsOf(motion, ports, carried);
  const devices = deviceWork(verdict, observed, carried);
  const recirculating = circlingPower(elements, pointSpeeds(verdict), inPower(verdict, carried));
  const ratio = state === 'driving' ? ratioOf(verdict, turned) : undefined;
  const efficiency =
    state === 'driving'
      ? efficiencyOf(verdict, observed.bodies, carried.point.meshes, losses)
      : undefined;
  return {
    state,
    ...(ratio && { ratio }),
    speeds: observed.members,
    onPins: observed.onPins,
    torques: endTorques(carried, turned),
    devices,
    meshes: meshWork(motion, carried),
    branches: branchWork(verdict, ports, observed, carried),
    recirculating: recirculating.power,
    ...(efficiency && { efficiency }),
    facts: reasonsOf({ verdict, turned, state, observed, elements, devices, recirculating }),
  };
}

/** Tied up where nothing turns, neutral where the reluctant end can stand still. */
export function stateOf(verdict: Verdict): State {
  if (!verdict.turns) return 'tied up';
  const { reluctant } = verdict.question;
  return reluctant !== undefined && speedAt(verdict, reluctant).num !== 0 ? 'driving' : 'neutral';
}

/** Input speed over output speed; the train must drive. */
export function ratioOf(verdict: Verdict, turned: End): Rational {
  const reluctant = speedAt(verdict, verdict.question.reluctant as string);
  return turned === 'input' ? over(ONE, reluctant) : reluctant;
}

function atRest(motion: Motion): Observed {
  return {
    bodies: motion.assembly.bodies.map(() => ZERO),
    members: new Map(),
    onPins: new Map(),
    slips: motion.devices.map(() => ZERO),
  };
}

function endTorques(carried: Carried, turned: End): Map<string, Quantity> {
  const own = carried.given[0] ?? ZERO;
  const [input, output] = turned === 'input' ? [own, carried.reluctant] : [carried.reluctant, own];
  const sum = total([input, output]);
  // What the ends do not balance, the case does.
  return new Map([
    ['input', input],
    ['output', output],
    ['case', sum ? opposite(sum) : { from: null, to: null }],
  ]);
}

function deviceWork(verdict: Verdict, observed: Observed, carried: Carried): Map<string, DeviceWork> {
  const { motion, posed } = verdict;
  const work = motion.devices.map(({ device }, d): [string, DeviceWork] => {
    const slip = observed.slips[d] as Quantity;
    const torque = carried.devices[d] as Quantity;
    const there = posed.deviceRow[d] !== undefined;
    if (device.kind !== 'one-way') {
      return [device.name, { state: there ? 'applied' : 'released', slip, torque }];
    }
    const holds = !isZero(torque);
    const runs = there && !holds && letsGo(slip);
    return [device.name, { state: holds ? 'holding' : runs ? 'over-running' : 'free', slip, torque }];
  });
  return new Map(work);
}

// Whether the races surely turn against each other.
function letsGo(slip: Quantity): boolean {
  if (!isSpan(slip)) return slip.num !== 0;
  return (slip.from !== null && slip.from.num > 0) || (slip.to !== null && slip.to.num < 0);
}

function meshWork({ meshes }: Motion, carried: Carried): MeshWork[] {
  return meshes.map((mesh, m) => {
    const [onA, onB] = willis(mesh).map(([, torque]) => {
      return stretched(carried.meshes[m] as Quantity, { num: torque, den: 1 });
    }) as [Quantity, Quantity];
    return { within: mesh.within, a: mesh.a.member, b: mesh.b.member, onA, onB };
  });
}

function branchWork(
  verdict: Verdict,
  ports: readonly Port[],
  observed: Observed,
  carried: Carried,
): Branch[] {
  const whole = inPower(verdict, carried);
  return ports.map(({ within, member, body }, k) => {
    const torque = carried.ports[k] as Quantity;
    const speed = observed.bodies[body] as Quantity;
    return { within, member, torque, power: share(torque, speed, whole) };
  });
}

// The power that a body brings: against the torque on it, as a part of the whole.
function share(torque: Quantity, speed: Quantity, whole: Rational): Quantity {
  if (isZero(torque) || isZero(speed) || whole.num === 0) return ZERO;
  const by = over({ num: -1, den: 1 }, whole);
  if (!isSpan(speed)) return stretched(torque, times(speed, by));
  return isSpan(torque) ? { from: null, to: null } : stretched(speed, times(torque, by));
}

// The turned end turns once: its power is its torque.
function inPower(verdict: Verdict, { point }: Carried): Rational {
  return times(point.given[0] ?? ZERO, verdict.question.given[0]?.speed ?? ZERO);
}

function pointSpeeds(verdict: Verdict): Rational[] {
  return verdict.motion.assembly.bodies.map(({ label }) => speedAt(verdict, label));
}
