import { ONE, opposite, over, plus, type Rational, signOf, times, ZERO } from '../linear/index.ts';
import { type Motion, willis } from '../motion/index.ts';
import {
  isSpan,
  isZero,
  type Port,
  portsOf,
  type Quantity,
  speedAt,
  stretched,
  type Verdict,
} from '../reckon/index.ts';
import type { MemberName } from '../train/index.ts';
import type { Branch, DeviceWork, MeshWork, State, Working } from './answer.ts';
import { barredBy, type Carried, carriedBy, idle, total } from './carried.ts';
import { efficiencyOf, type MeshEfficiency } from './efficiency.ts';
import { elementsOf } from './element.ts';
import type { End } from './fact.ts';
import { observe, type Observed, poseOf } from './observed.ts';
import { circlingPower } from './power.ts';
import { reasonsOf } from './reasons.ts';

/** A judged question about a gear as all that can be said of it. */
export function workingOf(verdict: Verdict, turned: End, losses: MeshEfficiency): Working {
  const state = stateOf(verdict);
  const unit = turned === 'input' ? 'turned' : 'reluctant';
  const work = workOf(verdict, state, unit);
  const driving = state === 'driving';
  const efficiency = driving && efficiencyOf(verdict, work.observed, work.carried, losses);
  const [own, far] = [work.carried.given[0] ?? ZERO, work.carried.reluctant];
  const [input, output] = turned === 'input' ? [own, far] : [far, own];
  const outputs = outputTorques(verdict, work.carried, output);
  return {
    ...work.told,
    ...(driving && { ratio: ratioOf(verdict, turned) }),
    torques: balanced([
      ['input', input],
      ['output', output],
    ]),
    outputs,
    ...(efficiency && { efficiency }),
    facts: reasonsOf({ ...work, verdict, turned, state, outputs }),
  };
}

/** What a working has whichever way it was asked for, and what it was made from. */
export function workOf(verdict: Verdict, state: State, unit: 'turned' | 'reluctant') {
  const { motion } = verdict;
  const ports = portsOf(motion);
  const observed = state === 'tied up' ? atRest(motion) : observe(verdict);
  const carried =
    state === 'driving'
      ? carriedBy(verdict, observed.slips, ports, unit)
      : state === 'neutral'
        ? idle(verdict, ports)
        : barredBy(verdict, ports);
  const elements = elementsOf(motion, ports, carried);
  const devices = deviceWork(verdict, observed, carried);
  const whole = powerPutIn(verdict, carried);
  const recirculating = circlingPower(elements, pointSpeeds(verdict), whole);
  const told = {
    state,
    speeds: observed.members,
    pose: poseOf(verdict),
    onPins: observed.onPins,
    devices,
    meshes: meshWork(motion, carried),
    branches: branchWork(ports, observed, carried, whole),
    recirculating: recirculating.power,
    circling: recirculating.sets,
  };
  return { told, observed, carried, elements, devices, recirculating };
}

/** Tied up where nothing turns, neutral where the reluctant end can stand still. */
export function stateOf(verdict: Verdict): State {
  if (!verdict.turns) return 'tied up';
  const { reluctant } = verdict.question;
  return reluctant !== undefined && speedAt(verdict, reluctant).num !== 0 ? 'driving' : 'neutral';
}

/** Input speed over output speed; the train must drive. */
export function ratioOf(verdict: Verdict, turned: End): Rational {
  const { reluctant, given } = verdict.question;
  const far = speedAt(verdict, reluctant as string);
  const own = given[0]?.speed ?? ONE;
  return turned === 'input' ? over(own, far) : over(far, own);
}

function atRest(motion: Motion): Observed {
  return {
    bodies: motion.assembly.bodies.map(() => ZERO),
    members: new Map(),
    onPins: new Map(),
    slips: motion.devices.map(() => ZERO),
  };
}

/** The torques of the ends, and what they do not balance, which the case does. */
export function balanced(ends: readonly (readonly [string, Quantity])[]): Map<string, Quantity> {
  const sum = total(ends.map(([, torque]) => torque));
  return new Map([...ends, ['case', sum ? opposite(sum) : { from: null, to: null }]]);
}

/** What the load puts on each output: all of it on the one, or what the road shares out. */
export function outputTorques(
  { motion, question }: Verdict,
  { tied }: Carried,
  all: Quantity,
): Map<MemberName, Quantity> {
  const [first, ...others] = question.tied ?? [];
  if (others.length === 0) return new Map([[first ?? motion.train.output, all]]);
  return new Map((question.tied ?? []).map((member, k) => [member, tied[k] ?? ZERO]));
}

function deviceWork(
  verdict: Verdict,
  observed: Observed,
  carried: Carried,
): Map<string, DeviceWork> {
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
    return [
      device.name,
      { state: holds ? 'holding' : runs ? 'over-running' : 'free', slip, torque },
    ];
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
  ports: readonly Port[],
  observed: Observed,
  carried: Carried,
  whole: Rational,
): Branch[] {
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

// What the given ends that drive bring in together.
function powerPutIn({ question }: Verdict, { point }: Carried): Rational {
  return question.given.reduce((sum, { speed }, k) => {
    const power = times(point.given[k] as Rational, speed);
    return signOf(power) > 0 ? plus(sum, power) : sum;
  }, ZERO);
}

function pointSpeeds(verdict: Verdict): Rational[] {
  return verdict.motion.assembly.bodies.map(({ label }) => speedAt(verdict, label));
}
