import type { Form } from '../linear/index.ts';
import { areIndependent } from '../proof/index.ts';
import type { Verdict } from './verdict.ts';

/**
 * Which of some devices, by their places, share a reaction with which: two of them do where a set of
 * torques in balance with itself needs both. Of devices that are each needed by themselves, none.
 *
 * Rows in balance with one another are a linear dependence. Rows are taken one by one; one that
 * depends on those taken before closes a circuit with just those without which it would not, and
 * circuits that meet in a row are one (as circuits of a matroid are: J. Oxley, Matroid Theory, ch. 4).
 */
export function sharedReactions(verdict: Verdict, devices: readonly number[]): number[][] {
  const { motion, posed } = verdict;
  const { rows } = posed.programme;
  const always: readonly Form[] = [
    ...motion.base.rows,
    ...rows.slice(posed.firstGiven, posed.firstReluctant),
  ];
  const groups = new Map<number, Set<number>>(devices.map((device) => [device, new Set([device])]));
  const taken: number[] = [];
  const stand = (some: readonly number[]) => {
    const pushing = some.map((device) => rows[posed.deviceRow[device] as number] as Form);
    return areIndependent(motion.columns, [...always, ...pushing]);
  };
  for (const device of devices) {
    if (stand([...taken, device])) {
      taken.push(device);
      continue;
    }
    for (const other of taken) {
      if (!stand([...taken.filter((one) => one !== other), device])) continue;
      const [mine, its] = [groups.get(device), groups.get(other)] as [Set<number>, Set<number>];
      for (const member of its) groups.set(member, mine.add(member));
    }
  }
  return [...new Set(groups.values())]
    .filter((group) => group.size > 1)
    .map((group) => [...group].toSorted((a, b) => a - b))
    .toSorted(([a = 0], [b = 0]) => a - b);
}
