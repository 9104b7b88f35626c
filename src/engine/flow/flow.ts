import { ONE, opposite, ZERO } from '../linear/index.ts';
import { type Motion, motionOf, type Question } from '../motion/index.ts';
import { judge, portsOf } from '../reckon/index.ts';
import type { Train } from '../train/index.ts';
import type { Flow, Rollback, RollbackCase, Working } from './answer.ts';
import { barredBy } from './carried.ts';
import { type MeshEfficiency, USUAL_EFFICIENCY } from './efficiency.ts';
import { elementsOf } from './element.ts';
import { observe, poseOf } from './observed.ts';
import { freeFacts, labelOf, pathFacts } from './reasons.ts';
import { workingOf } from './working.ts';

/**
 * How `train` works with the friction devices `on` applied: under power, on coast and
 * rolled back. Names that are no friction device of the train are ignored. Every answer has
 * been checked against its certificate.
 */
export function flow(
  train: Train,
  on: readonly string[],
  losses: MeshEfficiency = USUAL_EFFICIENCY,
): Flow {
  const motion = motionOf(train);
  return {
    on,
    drive: driveOf(motion, on, losses),
    coast: coastOf(motion, on, losses),
    rollback: rollbackOf(motion, on),
  };
}

/** The same, only under power. */
export function drive(train: Train, on: readonly string[]): Working {
  return driveOf(motionOf(train), on, USUAL_EFFICIENCY);
}

/** The same, only on coast. */
export function coast(train: Train, on: readonly string[]): Flow['coast'] {
  return coastOf(motionOf(train), on, USUAL_EFFICIENCY);
}

/** The same, only rolled back. */
export function rollback(train: Train, on: readonly string[]): Rollback {
  return rollbackOf(motionOf(train), on);
}

/** The input turned once clockwise; the load keeps the output as slow as it can. */
export function underPower(train: Train, on: readonly string[]): Question {
  const given = [{ member: train.input, speed: ONE }];
  return { on: new Set(on), given, reluctant: train.output };
}

/** The output turned once clockwise; the engine keeps the input as slow as it can. */
export function onCoast(train: Train, on: readonly string[]): Question {
  const given = [{ member: train.output, speed: ONE }];
  return { on: new Set(on), given, reluctant: train.input };
}

function driveOf(motion: Motion, on: readonly string[], losses: MeshEfficiency): Working {
  return workingOf(judge(motion, underPower(motion.train, on)), 'input', losses);
}

function coastOf(motion: Motion, on: readonly string[], losses: MeshEfficiency): Flow['coast'] {
  const working = workingOf(judge(motion, onCoast(motion.train, on)), 'output', losses);
  return { ...working, engineBraking: working.state === 'driving' };
}

function rollbackOf(motion: Motion, on: readonly string[]): Rollback {
  return {
    inputFree: rollbackCase(motion, on, false),
    inputHeld: rollbackCase(motion, on, true),
  };
}

function rollbackCase(motion: Motion, on: readonly string[], inputHeld: boolean): RollbackCase {
  const { input, output } = motion.train;
  const back = { member: output, speed: opposite(ONE) };
  const given = inputHeld ? [back, { member: input, speed: ZERO }] : [back];
  const verdict = judge(motion, { on: new Set(on), given });
  const held = inputHeld ? labelOf(verdict, input) : null;
  const turned = { member: labelOf(verdict, output), end: 'output', way: 'anticlockwise' } as const;
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
  const path = pathFacts(verdict, elements, [output]);
  const end = { fact: 'tied up', ...turned } as const;
  const still = { speeds: new Map(), pose: poseOf(verdict) };
  return { rolls: false, ...still, heldBy, facts: [...facts, ...path, end] };
}
