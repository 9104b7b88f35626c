import type { Rational, Row } from '../linear/index.ts';
import { areIndependent } from '../proof/index.ts';
import { Balance } from './balance.ts';
import { type Port, portTorque } from './port.ts';
import type { Quantity } from './quantity.ts';
import { canPush, loadsOf, type Verdict } from './verdict.ts';

/**
 * Torques of a train that turns a reluctant end, as far as statics settles them. Where
 * several devices could take one reaction, its span runs over every way of carrying the load
 * with as few of them as can.
 */
export interface Reactions {
  readonly given: readonly Quantity[];
  readonly tied: readonly Quantity[];
  readonly reluctant: Rational;
  readonly devices: readonly Quantity[];
  readonly meshes: readonly Quantity[];
  /** In the order of `portsOf`. */
  readonly ports: readonly Quantity[];
}

/** `slips` are the devices' slips on the answers' face: a one-way clutch that can slip is bare. */
export function reactionsOf(
  verdict: Verdict,
  slips: readonly Quantity[],
  ports: readonly Port[],
): Reactions {
  const settled = settledReactions(verdict, slips, ports);
  if (settled) return settled;
  const balance = new Balance(verdict, slips);
  const quantities = balance.quantities(ports.map((port) => port.torque));
  const { motion, question } = verdict;
  const meshes = quantities.slice(0, motion.meshes.length);
  const devices = quantities.slice(meshes.length, meshes.length + motion.devices.length);
  const held = meshes.length + devices.length;
  const tied = held + question.given.length;
  const firstPort = tied + (question.tied?.length ?? 0);
  return {
    given: quantities.slice(held, tied),
    tied: quantities.slice(tied, firstPort),
    reluctant: balance.reluctant,
    devices,
    meshes,
    ports: quantities.slice(firstPort),
  };
}

// The certificate's torques, where no others balance: where the rows that can push are
// independent of one another.
function settledReactions(
  verdict: Verdict,
  slips: readonly Quantity[],
  ports: readonly Port[],
): Reactions | undefined {
  const { motion, posed } = verdict;
  const pushing = motion.devices.flatMap((_, d) => {
    return canPush(verdict, d, slips) ? [posed.deviceRow[d] as number] : [];
  });
  const { rows } = posed.programme;
  const active = [
    ...motion.base.rows,
    ...pushing.map((row) => rows[row] as Row),
    ...rows.slice(posed.firstGiven, posed.firstReluctant),
  ];
  if (!areIndependent(motion.columns, active)) return undefined;
  const loads = loadsOf(verdict);
  return { ...loads, ports: ports.map((port) => portTorque(port, loads.meshes)) };
}
