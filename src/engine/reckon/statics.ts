import {
  type LinearForm,
  given as givenRow,
  type Rational,
  type Row,
  sumOf,
  ZERO,
} from '../linear/index.ts';
import type { DeviceRow } from '../motion/index.ts';
import { areIndependent } from '../proof/index.ts';
import type { Device, MemberName } from '../train/index.ts';
import { groupsOf, onlySign, partsOf } from './abreast.ts';
import { TorqueBalance } from './balance.ts';
import type { Port } from './port.ts';
import type { Quantity } from './quantity.ts';
import { Sharing } from './sharing.ts';
import { heldTogether, provedTorques, type Torques } from './torques.ts';
import { pushersOf, type Ruling } from './ruling.ts';

/**
 * Torques of a train that turns a reluctant end, as far as statics settles them. Where
 * several devices could take one reaction, its span runs over every way of carrying the load
 * with as few of them as can.
 */
export function torquesOf(
  ruling: Ruling,
  slips: ReadonlyMap<Device, Quantity>,
  ports: readonly Port[],
): Torques {
  const { motion, programme } = ruling;
  const proved = provedTorques(ruling, ports);
  const pushers = pushersOf(ruling, slips);
  // The certificate's torques are the only ones that balance where the rows that can push are
  // independent of one another.
  const active = programme.rows.filter(({ of }) => of !== 'device' && of !== 'size');
  if (areIndependent(motion.columns, [...active, ...pushers])) return proved;
  return sharedTorques(ruling, proved.reluctant, pushers, ports);
}

// For what the reluctant end resists with.
function sharedTorques(
  { motion, question }: Ruling,
  reluctant: Rational,
  pushers: readonly DeviceRow[],
  ports: readonly Port[],
): Torques {
  const balance = new TorqueBalance(motion);
  const outside = (member: MemberName) => balance.pusher(motion.speedOf(member));
  const meshes = new Map(motion.meshes.map((row) => [row.mesh, balance.pusher(row)]));
  const groups = new Map(groupsOf(pushers).map((group) => [group, balance.pusher(group[0].slip)]));
  const tied = new Map((question.tied ?? []).map((member) => [member, outside(member)]));
  const together = sumOf([...tied.values()].map((form) => [form, 1]));
  const holder = heldTogether(question);
  const given = new Map(
    question.given.map(({ member }) => [member, member === holder ? together : outside(member)]),
  );
  const load =
    tied.size > 0 && holder === undefined ? together : outside(question.reluctant as MemberName);
  const atPorts = new Map(
    ports.map((port) => [
      port,
      sumOf(port.terms.map(([m, n]) => [meshes.get(m) as LinearForm, n])),
    ]),
  );
  const known: Row[] = [givenRow(load, reluctant)];
  for (const [group, form] of groups) {
    const sign = onlySign(group);
    if (sign) known.push({ at: form.at, coef: [sign], sense: '>=', right: 0 });
  }
  const shared = [...groups.values(), ...tied.values()];
  const forms = [...shared, ...meshes.values(), ...given.values(), ...atPorts.values()];
  const found = new Sharing(balance, known, shared, forms).found();
  const each = <K>(map: ReadonlyMap<K, LinearForm>) => {
    return new Map([...map].map(([key, form]) => [key, found.get(form) as Quantity]));
  };
  const none = motion.devices.map(({ device }): [Device, Quantity] => [device, ZERO]);
  const parts = [...each(groups)].flatMap(([group, all]) => partsOf(group, all));
  return {
    given: each(given),
    tied: each(tied),
    reluctant,
    devices: new Map([...none, ...parts]),
    meshes: each(meshes),
    ports: each(atPorts),
  };
}
