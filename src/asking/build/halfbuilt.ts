import { type HandAnswer, hand } from '../../engine/hand/index.ts';
import type { Plan, PlannedCheck, Step } from '../../engine/plan/index.ts';
import { halfBuilt, type Train, type Way } from '../../engine/train/index.ts';

/** What stands on the bench at a check: the unit with the parts of the steps so far. */
export function askHalfBuilt(train: Train, plan: Plan, { number }: Step): Train {
  const on = new Set(
    plan.steps.flatMap((step) => {
      return step.does === 'fit' && step.number <= number ? [step.part.name] : [];
    }),
  );
  return halfBuilt(train, ({ name }) => on.has(name));
}

/** What a right build does in a check of a step, turned each way; proved. */
export function askFeel(
  half: Train,
  step: Step,
  { hold, turn }: PlannedCheck,
): Readonly<Record<Way, HandAnswer>> {
  const on = step.does === 'air check' || step.does === 'pawl check' ? [step.device.name] : [];
  const held = hold ? [hold.member] : [];
  const felt = (way: Way) => hand(half, { hold: held, turn: turn.member, way, on });
  return { clockwise: felt('clockwise'), anticlockwise: felt('anticlockwise') };
}
