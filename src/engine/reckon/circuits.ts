import { areIndependent } from '../proof/index.ts';
import type { Device } from '../train/index.ts';
import { rowOf, type Ruling } from './ruling.ts';

/**
 * Which of some devices share a reaction with which: two of them do where a set of torques in balance
 * with itself needs both. Of devices that are each needed by themselves, none.
 *
 * Rows in balance with one another are a linear dependence. Rows are taken one by one; one that
 * depends on those taken before closes a circuit with just those without which it would not, and
 * circuits that meet in a row are one (as circuits of a matroid are: J. Oxley, Matroid Theory, ch. 4).
 */
export function sharedReactions(ruling: Ruling, devices: readonly Device[]): Device[][] {
  const { motion, programme } = ruling;
  const always = programme.rows.filter(({ of }) => of !== 'device' && of !== 'size');
  const groups = new Map(devices.map((device) => [device, new Set([device])]));
  const taken: Device[] = [];
  const stand = (some: readonly Device[]) => {
    const pushing = some.flatMap((device) => rowOf(ruling, device) ?? []);
    return areIndependent(motion.columns, [...always, ...pushing]);
  };
  for (const device of devices) {
    if (stand([...taken, device])) {
      taken.push(device);
      continue;
    }
    for (const other of taken) {
      if (!stand([...taken.filter((one) => one !== other), device])) continue;
      const [mine, its] = [groups.get(device), groups.get(other)] as [Set<Device>, Set<Device>];
      for (const member of its) groups.set(member, mine.add(member));
    }
  }
  // In the order of the devices that are asked about.
  return [...new Set(groups.values())]
    .filter((group) => group.size > 1)
    .map((group) => devices.filter((device) => group.has(device)));
}
