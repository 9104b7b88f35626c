import { entry, minus, plus, type Rational, times, ZERO } from '../linear/index.ts';
import type { ConeQuestion } from '../motion/index.ts';
import type { Device, MemberName, Mesh } from '../train/index.ts';
import { type Port, portTorque } from './port.ts';
import { type Quantity, stretched } from './quantity.ts';
import type { Ruling } from './ruling.ts';

/** Who puts how much torque on what, clockwise positive: `Rational` where all is settled. */
export interface Torques<Q extends Quantity = Quantity> {
  /** On the train, by the holder of each given speed. */
  readonly given: ReadonlyMap<MemberName, Q>;
  /** From outside on each tied member: together what the first is given, or resists with. */
  readonly tied: ReadonlyMap<MemberName, Q>;
  /** By the reluctant end, on the train. */
  readonly reluctant: Q;
  /** By each device, on its first-named member. */
  readonly devices: ReadonlyMap<Device, Q>;
  /** The multiplier of each mesh's row. */
  readonly meshes: ReadonlyMap<Mesh, Q>;
  /** By the set of each port, on the port's body. */
  readonly ports: ReadonlyMap<Port, Q>;
}

/**
 * The certificate's torques. Where the train turns, those for a reluctant torque of size 1; where it
 * does not, the balanced torques that bar the given speeds, at the scale of the proof.
 */
export function provedTorques(ruling: Ruling, ports: readonly Port[]): Torques<Rational> {
  const { motion, question, programme, solution } = ruling;
  const vector = solution.state === 'infeasible' ? solution.proof : undefined;
  const prices = solution.state === 'optimal' ? solution.prices : vector;
  const given = new Map(question.given.map(({ member }) => [member, ZERO]));
  const others = new Map<MemberName, Rational>();
  const devices = new Map(motion.devices.map(({ device }) => [device, ZERO]));
  const meshes = new Map(motion.meshes.map(({ mesh }) => [mesh, ZERO]));
  let reluctant = ZERO;
  for (const [r, row] of programme.rows.entries()) {
    const price = prices ? entry(prices, r) : ZERO;
    switch (row.of) {
      case 'mesh':
        meshes.set(row.mesh, price);
        break;
      case 'device':
        devices.set(row.device, times(price, { num: row.pushes, den: 1 }));
        break;
      case 'given': {
        const torque = times(price, { num: row.speed.den, den: 1 });
        given.set(row.member, plus(given.get(row.member) as Rational, torque));
        break;
      }
      case 'tie':
        others.set(row.member, price);
        break;
      case 'size':
        reluctant = plus(reluctant, times(price, { num: row.pushes, den: 1 }));
    }
  }
  const [first] = question.tied ?? [];
  const holder = heldTogether(question);
  const together = holder === undefined ? reluctant : (given.get(holder) as Rational);
  const rest = [...others.values()].reduce(minus, together);
  return {
    given,
    tied: new Map(first === undefined ? [] : [[first, rest], ...others]),
    reluctant,
    devices,
    meshes,
    ports: new Map(ports.map((port) => [port, portTorque(port, meshes)])),
  };
}

/** The same for another size of the load; a negative number turns it round. */
export function scaled<Q extends Quantity>(torques: Torques<Q>, by: Rational): Torques<Q> {
  const sized = (quantity: Q) => stretched(quantity, by) as Q;
  const each = <K>(map: ReadonlyMap<K, Q>) => {
    return new Map([...map].map(([key, quantity]) => [key, sized(quantity)]));
  };
  const { given, tied, reluctant, devices, meshes, ports } = torques;
  return {
    given: each(given),
    tied: each(tied),
    reluctant: sized(reluctant),
    devices: each(devices),
    meshes: each(meshes),
    ports: each(ports),
  };
}

/** The tied member whose speed is given, so that its holder bears all that is on the tied members. */
export function heldTogether({ given, tied = [] }: ConeQuestion): MemberName | undefined {
  return given.find(({ member }) => member === tied[0])?.member;
}
