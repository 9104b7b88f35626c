import { toText, ZERO } from '../linear/index.ts';
import { type GivenSpeed, type Motion, motionOf } from '../motion/index.ts';
import { isZero, judge, type Quantity, speedsOf, type Ruling } from '../reckon/index.ts';
import { type End, outputsOf, type Train, type Way } from '../train/index.ts';
import type { Coast, Flow, Rollback, RollbackCase, State, Travel, Working } from './answer.ts';
import { carriedBy, stateOf } from './carried.ts';
import { type MeshEfficiency, USUAL_EFFICIENCY } from './efficiency.ts';
import { factsOf, freeFacts, labelOf, pathFacts } from './facts.ts';
import {
  against,
  beforeFinal,
  coasting,
  type Course,
  turnOf,
  underPower,
  vehicleOf,
} from './vehicle.ts';
import { deviceWork, type Work, workOf } from './work.ts';

/**
 * How `train` works with the friction devices `on` applied: under power, on coast and rolled
 * back. With a fault it travels as the healthy gear does. Throws where the train has no device of
 * such a name. Every answer has been checked against its certificate.
 */
export function flow(
  train: Train,
  on: readonly string[],
  losses: MeshEfficiency = USUAL_EFFICIENCY,
): Flow {
  const motion = motionOf(train);
  const vehicle = vehicleOf(train);
  const ruling = judge(motion, underPower(train, on));
  const [first, other] = vehicle.ways(on, ruling).map((way): Travel => {
    return {
      travels: vehicle.course(way),
      output: way,
      coast: coastOf(motion, on, way, losses),
      rollback: rollbackOf(motion, on, against(way)),
    };
  }) as [Travel, Travel?];
  const under = workingOf(ruling, 'input', losses);
  const own = under.ratio && beforeFinal(train, (member) => under.speeds.get(member));
  return {
    on,
    forward: vehicle.forward,
    drive: under,
    ...(own && { beforeFinal: own }),
    ...first,
    ...(other && differs(first.coast, other.coast) && { inReverse: other }),
  };
}

/** The same, only under power. */
export function drive(train: Train, on: readonly string[]): Working {
  return workingOf(judge(motionOf(train), underPower(train, on)), 'input');
}

/** The same, only on coast; where the gear drives nothing, forward unless `course` says. */
export function coast(train: Train, on: readonly string[], course?: Course): Coast {
  return coastOf(motionOf(train), on, wayOf(train, on, course), USUAL_EFFICIENCY);
}

/** The same, only rolled back. */
export function rollback(train: Train, on: readonly string[], course?: Course): Rollback {
  return rollbackOf(motionOf(train), on, against(wayOf(train, on, course)));
}

// Ruling, what is carried, work, facts: each reads only the one before.
function workingOf(
  ruling: Ruling,
  turned: End,
  losses: MeshEfficiency = USUAL_EFFICIENCY,
): Working {
  return answered(workOf(carriedBy(ruling), turned, losses));
}

function answered(work: Work): Working {
  return { ...work.answer, facts: factsOf(work) };
}

function wayOf(train: Train, on: readonly string[], course: Course | undefined): Way {
  const vehicle = vehicleOf(train);
  const ways = vehicle.ways(on);
  return ways.find((way) => vehicle.course(way) === course) ?? (ways[0] as Way);
}

function coastOf(motion: Motion, on: readonly string[], way: Way, losses: MeshEfficiency): Coast {
  const working = workingOf(judge(motion, coasting(motion.train, on, way)), 'output', losses);
  return { ...working, engineBraking: working.state === 'driving' };
}

// Whether a gear that drives nothing brakes or ties up otherwise as it is rolled the other way.
function differs(one: Coast, other: Coast): boolean {
  const said = ({ state, ratio, devices }: Coast) => {
    const carrying = [...devices].filter(([, { torque }]) => !isZero(torque));
    return [state, ratio ? toText(ratio) : '', ...carrying.map(([name]) => name)].join('\n');
  };
  return said(one) !== said(other);
}

function rollbackOf(motion: Motion, on: readonly string[], way: Way): Rollback {
  return {
    inputFree: rollbackCase(motion, on, way, false),
    inputHeld: rollbackCase(motion, on, way, true),
  };
}

function rollbackCase(
  motion: Motion,
  on: readonly string[],
  way: Way,
  inputHeld: boolean,
): RollbackCase {
  const { input, output } = motion.train;
  const back = { member: output, speed: turnOf(way) };
  const given = inputHeld ? [back, { member: input, speed: ZERO }] : [back];
  const ruling = judge(motion, { on: new Set(on), given, tied: outputsOf(motion.train) });
  const carried = carriedBy(ruling);
  const { members: speeds, drawn } = carried.observed;
  const turned = { member: labelOf(carried, output), end: 'output', way } as const;
  const begin = { fact: 'turned', ...turned } as const;
  const toward = vehicleOf(motion.train).course(way);
  if (ruling.turns) {
    const held = inputHeld ? labelOf(carried, input) : null;
    const rolls = { fact: 'rolls', toward, held } as const;
    const facts = [begin, rolls, ...freeFacts(carried)];
    return { rolls: true, speeds, drawn, devices: deviceWork(carried), heldBy: [], facts };
  }
  const heldBy = carried.elements.flatMap(({ device }) => (device ? [device.name] : []));
  const end = { fact: 'tied up', ...turned, rolled: toward } as const;
  const facts = [begin, ...pathFacts(carried, outputsOf(motion.train)), end];
  return { rolls: false, speeds, drawn, devices: deviceWork(carried), heldBy, facts };
}

/**
 * How `train` works where the speeds of some members are given, as in a power split with two
 * motors; the load resists at the output. `torques` are what the holder of each given speed,
 * the output and the case put on the train, per unit of torque at the first given member that
 * has any. `state` is 'tied up' where the speeds cannot be together, and 'neutral' where they
 * leave the output free to stand still. Throws on a member that the train lacks.
 */
export function flowAt(train: Train, on: readonly string[], given: readonly GivenSpeed[]): Working {
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
  const ruling = judge(motion, question);
  return answered(workOf(carriedBy(ruling, stateAt(ruling)), undefined));
}

// The output drives its load where it turns, and where the given speeds make it stand still.
function stateAt(ruling: Ruling): State {
  if (stateOf(ruling) !== 'neutral') return stateOf(ruling);
  const { motion, question } = ruling;
  const { on, given, tied = [] } = question;
  const freely = judge(motion, { on, given, tied });
  const still = motion.speedOf(motion.train.output);
  return isZero(speedsOf(freely, [still]).get(still) as Quantity) ? 'driving' : 'neutral';
}
