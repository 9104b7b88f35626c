import { entry, minus, type Rational, type Solution, solve, times, ZERO } from '../linear/index.ts';
import { type Motion, pose, type Posed, type Question } from '../motion/index.ts';
import { prove } from '../proof/index.ts';
import { isZero, type Quantity } from './quantity.ts';

/** Whether a train can do what is asked, with the certificate, which has been checked. */
export interface Verdict {
  readonly motion: Motion;
  readonly question: Question;
  readonly posed: Posed;
  readonly solution: Solution;
  /** False where no motion at all has the given speeds. */
  readonly turns: boolean;
}

/** Puts a question to the cone. Throws only if the answer fails its own check. */
export function judge(motion: Motion, question: Question): Verdict {
  const posed = pose(motion, question);
  const solution = solve(posed.programme, motion.base);
  prove(posed.programme, solution);
  return { motion, question, posed, solution, turns: solution.state !== 'infeasible' };
}

/** The speed of a member at the certificate's point; 0 where the train does not turn. */
export function speedAt({ motion, solution }: Verdict, member: string): Rational {
  const column = motion.speedOf(member).at[0];
  if (solution.state === 'infeasible' || column === undefined) return ZERO;
  return entry(solution.point, column);
}

/**
 * The certificate's torques: on the train by each given speed's holder, by the reluctant end,
 * on each tied member (together what the first of them is given or resists with),
 * on its first-named member by each device, and the multiplier of each mesh.
 */
export interface Loads {
  readonly given: readonly Rational[];
  readonly tied: readonly Rational[];
  readonly reluctant: Rational;
  readonly devices: readonly Rational[];
  readonly meshes: readonly Rational[];
}

/**
 * Where it turns, torques for a reluctant torque of size 1; where it does not, the balanced
 * torques that bar the given speeds, at the scale of the proof.
 */
export function loadsOf({ motion, question, posed, solution }: Verdict): Loads {
  const vector = solution.state === 'infeasible' ? solution.proof : undefined;
  const prices = solution.state === 'optimal' ? solution.prices : vector;
  const price = (row: number): Rational => (prices ? entry(prices, row) : ZERO);
  const { firstReluctant } = posed;
  const over = price(firstReluctant); // of t ≥ −ω, which pushes the member clockwise
  const under = price(firstReluctant + 1);
  const given = question.given.map(({ speed }, k) => {
    return times(price(posed.firstGiven + k), { num: speed.den, den: 1 });
  });
  const reluctant = question.reluctant === undefined ? ZERO : minus(over, under);
  const { tied = [] } = question;
  const others = tied.slice(1).map((_, k) => price(posed.firstTie + k));
  const outside = [...given, reluctant][sourceOf(question)] ?? ZERO;
  return {
    given,
    reluctant,
    tied: tied.length > 0 ? [others.reduce(minus, outside), ...others] : [],
    devices: motion.devices.map((_, d) => {
      const row = posed.deviceRow[d];
      return row === undefined
        ? ZERO
        : times(price(row), { num: firstSign(motion, posed, d), den: 1 });
    }),
    meshes: motion.meshes.map((_, m) => price(m)),
  };
}

/** Whether a device can push: it is on, and its members surely do not turn against each other. */
export function canPush(
  { motion, posed }: Verdict,
  device: number,
  slips: readonly Quantity[],
): boolean {
  const there = posed.deviceRow[device] !== undefined;
  const apart = motion.devices[device]?.slip.at.length !== 0;
  return there && apart && isZero(slips[device] as Quantity);
}

/** Where among what is given, the reluctant end behind it, the torque on all tied members is. */
export function sourceOf({ given, tied = [] }: Question): number {
  const at = given.findIndex(({ member }) => member === tied[0]);
  return at < 0 ? given.length : at;
}

/** +1 or -1: which way a device's row pushes its first-named member. */
export function firstSign(motion: Motion, posed: Posed, device: number): 1 | -1 {
  const row = posed.programme.rows[posed.deviceRow[device] ?? -1];
  const slip = motion.devices[device]?.slip;
  return row && slip && row.coef[0] !== slip.coef[0] ? -1 : 1;
}
