import { type Rational, type Solution, solve, valueOf, ZERO } from '../linear/index.ts';
import {
  type DeviceRow,
  type Motion,
  pose,
  type Posed,
  type ConeQuestion,
} from '../motion/index.ts';
import { prove } from '../proof/index.ts';
import type { Device, MemberName } from '../train/index.ts';
import { isZero, type Quantity } from './quantity.ts';

/** Whether a train can do what is asked, with the certificate, which has been checked. */
export interface Ruling {
  readonly motion: Motion;
  readonly question: ConeQuestion;
  readonly programme: Posed;
  readonly solution: Solution;
  /** False where no motion at all has the given speeds. */
  readonly turns: boolean;
}

/** Puts a question to the cone. Throws only if the answer fails its own check. */
export function judge(motion: Motion, question: ConeQuestion): Ruling {
  const programme = pose(motion, question);
  const solution = solve(programme, motion.base);
  prove(programme, solution);
  return { motion, question, programme, solution, turns: solution.state !== 'infeasible' };
}

/** The speed of a member at the certificate's point; 0 where the train does not turn. */
export function speedAt({ motion, solution }: Ruling, member: MemberName): Rational {
  return solution.state === 'infeasible' ? ZERO : valueOf(motion.speedOf(member), solution.point);
}

/** The row of a device that can hold as things stand. */
export function rowOf({ programme }: Ruling, device: Device): DeviceRow | undefined {
  return programme.rows.find(
    (row): row is DeviceRow => row.of === 'device' && row.device === device,
  );
}

/** The rows of the devices that can push: they hold, and their members surely do not slip. */
export function pushersOf(
  { programme }: Ruling,
  slips: ReadonlyMap<Device, Quantity>,
): readonly DeviceRow[] {
  return programme.rows.filter((row): row is DeviceRow => {
    return row.of === 'device' && row.at.length > 0 && isZero(slips.get(row.device) as Quantity);
  });
}
