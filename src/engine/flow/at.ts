import { ZERO } from '../linear/index.ts';
import { type Given, type Motion, motionOf, type Question } from '../motion/index.ts';
import { isZero, judge, speedAt, speedsOf, type Verdict } from '../reckon/index.ts';
import { outputsOf, type Train } from '../train/index.ts';
import type { State, Working } from './answer.ts';
import { reasonsAt } from './reasons.ts';
import { balanced, outputTorques, workOf } from './working.ts';

/**
 * How `train` works where the speeds of some members are given, as in a power split with two
 * motors; the load resists at the output. `torques` are what the holder of each given speed,
 * the output and the case put on the train, per unit of torque at the first given member that
 * has any. `state` is 'tied up' where the speeds cannot be together, and 'neutral' where they
 * leave the output free to stand still. Throws on a member that the train lacks.
 */
export function flowAt(train: Train, on: readonly string[], given: readonly Given[]): Working {
  const motion = motionOf(train);
  // Where outputs are given speeds of their own the road is not straight.
  const outputs = outputsOf(train);
  const straight = !given.some(({ member }) => outputs.includes(member));
  const question = {
    on: new Set(on),
    given,
    reluctant: train.output,
    ...(straight && { tied: outputs }),
  };
  const verdict = judge(motion, question);
  const state = stateAt(motion, question, verdict);
  const work = workOf(verdict, state, 'turned');
  const ends = given.map(({ member }, k) => [member, work.carried.given[k] ?? ZERO] as const);
  const output = ['output', work.carried.reluctant] as const;
  return {
    ...work.told,
    torques: balanced([...ends, output]),
    outputs: outputTorques(verdict, work.carried, work.carried.reluctant),
    facts: reasonsAt({ ...work, verdict, state }),
  };
}

// The output drives its load where it turns, and where the given speeds make it stand still.
function stateAt(motion: Motion, { on, given, tied }: Question, verdict: Verdict): State {
  if (!verdict.turns) return 'tied up';
  const { output } = motion.train;
  if (speedAt(verdict, output).num !== 0) return 'driving';
  const [speed] = speedsOf(judge(motion, { on, given, ...(tied && { tied }) }), [
    motion.speedOf(output),
  ]);
  return speed && isZero(speed) ? 'driving' : 'neutral';
}
