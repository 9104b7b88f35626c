import { toText, ZERO } from '../linear/index.ts';
import { type Motion, motionOf } from '../motion/index.ts';
import { isZero, judge, portsOf } from '../reckon/index.ts';
import { outputsOf, type Train, type Way } from '../train/index.ts';
import type { Coast, Flow, Rollback, RollbackCase, Travel, Working } from './answer.ts';
import { barredBy } from './carried.ts';
import { type MeshEfficiency, USUAL_EFFICIENCY } from './efficiency.ts';
import { elementsOf } from './element.ts';
import { observe, poseOf } from './observed.ts';
import { freeFacts, labelOf, pathFacts } from './reasons.ts';
import {
  against,
  beforeFinal,
  coasting,
  type Course,
  turnOf,
  underPower,
  vehicleOf,
} from './vehicle.ts';
import { workingOf } from './working.ts';

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
  const verdict = judge(motion, underPower(train, on));
  const [first, other] = vehicle.ways(on, verdict).map((way): Travel => {
    return {
      travels: vehicle.course(way),
      output: way,
      coast: coastOf(motion, on, way, losses),
      rollback: rollbackOf(motion, on, against(way)),
    };
  }) as [Travel, Travel?];
  const under = workingOf(verdict, 'input', losses);
  return {
    on,
    forward: vehicle.forward,
    drive: under,
    ...(train.finalDrive && under.ratio && { beforeFinal: beforeFinal(train, under.ratio) }),
    ...first,
    ...(other && differs(first.coast, other.coast) && { inReverse: other }),
  };
}

/** The same, only under power. */
export function drive(train: Train, on: readonly string[]): Working {
  return workingOf(judge(motionOf(train), underPower(train, on)), 'input', USUAL_EFFICIENCY);
}

/** The same, only on coast; where the gear drives nothing, forward unless `course` says. */
export function coast(train: Train, on: readonly string[], course?: Course): Coast {
  return coastOf(motionOf(train), on, wayOf(train, on, course), USUAL_EFFICIENCY);
}

/** The same, only rolled back. */
export function rollback(train: Train, on: readonly string[], course?: Course): Rollback {
  return rollbackOf(motionOf(train), on, against(wayOf(train, on, course)));
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
  const verdict = judge(motion, { on: new Set(on), given, tied: outputsOf(motion.train) });
  const held = inputHeld ? labelOf(verdict, input) : null;
  const turned = { member: labelOf(verdict, output), end: 'output', way } as const;
  const facts = [{ fact: 'turned', ...turned } as const];
  if (verdict.turns) {
    const observed = observe(verdict);
    const rolls = { fact: 'rolls', held } as const;
    const free = freeFacts(verdict, observed);
    return {
      rolls: true,
      speeds: observed.members,
      pose: poseOf(verdict),
      heldBy: [],
      facts: [...facts, rolls, ...free],
    };
  }
  const ports = portsOf(motion);
  const elements = elementsOf(motion, ports, barredBy(verdict, ports));
  const heldBy = elements.flatMap(({ device }) => (device ? [device.name] : []));
  const path = pathFacts(verdict, elements, outputsOf(motion.train));
  const end = { fact: 'tied up', ...turned, rolled: true } as const;
  const still = { speeds: new Map(), pose: poseOf(verdict) };
  return { rolls: false, ...still, heldBy, facts: [...facts, ...path, end] };
}
