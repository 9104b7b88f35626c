import { areIndependent } from '../proof/index.ts';
import type { ConeRow } from '../motion/index.ts';
import { companyOf, type Device } from '../train/index.ts';
import { rowOf, type Ruling } from './ruling.ts';

/**
 * Which of some devices share a reaction with which: two of them do where a set of torques in balance
 * with itself needs both. Of devices that are each needed by themselves, none.
 */
export function sharedReactions(ruling: Ruling, devices: readonly Device[]): Device[][] {
  const always = ruling.programme.rows.filter(({ of }) => of !== 'device' && of !== 'size');
  const rowsOf = (device: Device) => rowOf(ruling, device) ?? [];
  return circuitsOf(ruling, always, devices, rowsOf).filter((group) => group.length > 1);
}

/**
 * The same of sets and gear pairs, by the names of their ports, whatever the devices share; one that
 * shares with no other is a group of its own.
 */
export function sharedLoads(ruling: Ruling, names: readonly string[]): string[][] {
  const { rows } = ruling.programme;
  const { train } = ruling.motion;
  const within = (row: ConeRow) => (row.of === 'mesh' ? companyOf(train, row.mesh.within) : '');
  const always = rows.filter((row) => {
    return row.of !== 'device' && row.of !== 'size' && !names.includes(within(row));
  });
  return circuitsOf(ruling, always, names, (name) => rows.filter((row) => within(row) === name));
}

/**
 * Rows in balance with one another are a linear dependence. Things are taken one by one, each with its
 * rows; one that depends on those taken before closes a circuit with just those without which it would
 * not, and circuits that meet in a thing are one (as circuits of a matroid are: J. Oxley, Matroid
 * Theory, ch. 4). In the order of the things.
 */
function circuitsOf<T>(
  { motion }: Ruling,
  always: readonly ConeRow[],
  things: readonly T[],
  rowsOf: (thing: T) => ConeRow | readonly ConeRow[],
): T[][] {
  if (things.length === 0) return [];
  const groups = new Map(things.map((thing) => [thing, new Set([thing])]));
  const taken: T[] = [];
  // What is in balance with itself already closes no circuit for another.
  const firm: ConeRow[] = [];
  for (const row of always) if (areIndependent(motion.columns, [...firm, row])) firm.push(row);
  const stand = (some: readonly T[]) => {
    return areIndependent(motion.columns, [...firm, ...some.flatMap(rowsOf)]);
  };
  for (const thing of things) {
    if (stand([...taken, thing])) {
      taken.push(thing);
      continue;
    }
    for (const other of taken) {
      if (!stand([...taken.filter((one) => one !== other), thing])) continue;
      const [mine, its] = [groups.get(thing), groups.get(other)] as [Set<T>, Set<T>];
      for (const member of its) groups.set(member, mine.add(member));
    }
  }
  return [...new Set(groups.values())].map((group) => things.filter((thing) => group.has(thing)));
}
