import type { GearName } from '../../engine/chart/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { type AskedGear, askedGears } from './askedgear.ts';
import { handQuestions } from './bench.ts';
import { type Draft, questionFrom } from './draft.ts';
import { carriersQuestion, deviceQuestions, heldQuestions } from './load.ts';
import {
  backwardsQuestions,
  brakingQuestion,
  freeQuestion,
  stateQuestion,
  wayQuestion,
} from './motion.ts';
import { type Kind, KINDS, type Question } from './question.ts';
import { ratioQuestion } from './ratio.ts';
import { faultQuestions } from './road.ts';

export interface QuestionOptions {
  /** A whole number: the order of choices, and which checks and faults are asked of. */
  readonly seed: number;
  /** All kinds where it is left out. */
  readonly kinds?: readonly Kind[];
  /** Every gear of the ranges, and the bench, where it is left out. */
  readonly gear?: GearName;
}

/**
 * What a class can predict of a train, the easy kinds first, gears in the order of the file.
 * The right choice is the engine's exact answer; each wrong one is reckoned on the same train.
 * One train, seed and choice of kinds give one list; it is empty for a gear that is not there.
 */
export function questionsOf(train: Train, { seed, kinds, gear }: QuestionOptions): Question[] {
  const gears = askedGears(train, gear);
  if (gear && gears.length === 0) return [];
  const asked = KINDS.filter((kind) => kinds?.includes(kind) ?? true);
  return asked
    .flatMap((kind) => draftsOf(kind, train, gears, { seed, ...(gear && { gear }) }))
    .flatMap((draft) => questionFrom(draft, seed) ?? []);
}

function draftsOf(
  kind: Kind,
  train: Train,
  gears: readonly AskedGear[],
  { seed, gear }: QuestionOptions,
): Draft[] {
  switch (kind) {
    case 'state':
      return gears.flatMap(stateQuestion);
    case 'way':
      return gears.flatMap(wayQuestion);
    case 'engine braking':
      return gears.flatMap(brakingQuestion);
    case 'device':
      return gears.flatMap(deviceQuestions);
    case 'hand':
      return gear ? [] : handQuestions(train, seed);
    case 'ratio':
      return gears.flatMap(ratioQuestion);
    case 'carriers':
      return gears.flatMap(carriersQuestion);
    case 'left free':
      return gears.flatMap(freeQuestion);
    case 'held torque':
      return gears.flatMap(heldQuestions);
    case 'backwards':
      return gears.flatMap(backwardsQuestions);
    case 'fault':
      return faultQuestions(train, seed, gear);
  }
}
