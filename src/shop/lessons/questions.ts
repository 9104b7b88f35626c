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
import { comesOffQuestions, facesQuestions } from './parts.ts';
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
export function questionsOf(train: Train, options: QuestionOptions): Question[] {
  return [...questionsInTurn(train, options)];
}

/** The same, one at a time: what a question needs is worked out when it is taken. */
export function* questionsInTurn(
  train: Train,
  { seed, kinds, gear }: QuestionOptions,
): Generator<Question, void> {
  const gears = askedGears(train, gear);
  if (gear && gears.length === 0) return;
  for (const kind of KINDS) {
    if (kinds && !kinds.includes(kind)) continue;
    for (const draft of draftsOf(kind, train, gears, { seed, ...(gear && { gear }) })) {
      const question = questionFrom(draft, seed);
      if (question) yield question;
    }
  }
}

function draftsOf(
  kind: Kind,
  train: Train,
  gears: readonly AskedGear[],
  { seed, gear }: QuestionOptions,
): Iterable<Draft> {
  const each = function* (ask: (of: AskedGear) => Draft[]) {
    for (const one of gears) yield* ask(one);
  };
  switch (kind) {
    case 'state':
      return each(stateQuestion);
    case 'way':
      return each(wayQuestion);
    case 'engine braking':
      return each(brakingQuestion);
    case 'device':
      return each(deviceQuestions);
    case 'hand':
      return gear ? [] : handQuestions(train, seed);
    case 'ratio':
      return each(ratioQuestion);
    case 'carriers':
      return each(carriersQuestion);
    case 'left free':
      return each(freeQuestion);
    case 'held torque':
      return each(heldQuestions);
    case 'backwards':
      return each(backwardsQuestions);
    case 'comes off':
      return gear ? [] : comesOffQuestions(train, seed);
    case 'faces':
      return gear ? [] : facesQuestions(train, seed);
    case 'fault':
      return faultQuestions(train, seed, gear);
  }
}
