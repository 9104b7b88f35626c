import type { GearName } from '../../engine/chart/index.ts';
import { assemble, type Train } from '../../engine/train/index.ts';
import { type AskedGear, askedGears } from './askedgear.ts';
import { handQuestions } from './bench.ts';
import { shuffled } from './chance.ts';
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
  /** A whole number: the order of questions and choices, which checks and faults are asked of. */
  readonly seed: number;
  /** All kinds where it is left out. */
  readonly kinds?: readonly Kind[];
  /** Every gear of the ranges, and the bench, where it is left out. */
  readonly gear?: GearName;
}

/**
 * What a class can predict of a train: a question of each kind in turn, the easy kinds first;
 * which kind begins, and the order of the gears, is the seed's.
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
  const asked = { seed, ...(gear && { gear }) };
  const order = kindsInOrder(seed).filter((kind) => !kinds || kinds.includes(kind));
  const called = byTheirBodies(train);
  let left = order.map((kind) => draftsOf(kind, train, gears, asked));
  while (left.length > 0) {
    const more: typeof left = [];
    for (const drafts of left) {
      const question = nextOf(drafts, seed);
      if (!question) continue;
      more.push(drafts);
      yield called(question);
    }
    left = more;
  }
}

// A member has one name wherever it is spoken of: that of its body, as on every drawing.
function byTheirBodies(train: Train): (question: Question) => Question {
  const { bodies, bodyOf } = assemble(train);
  return (question) => ({
    ...question,
    subject: question.subject.map((one) => {
      if (one.kind !== 'member') return one;
      return { ...one, name: bodies[bodyOf(one.name) ?? 0]?.label ?? one.name };
    }),
  });
}

// What a class can tell after its first lesson comes before what takes reckoning.
const EASY: readonly Kind[] = ['state', 'way', 'engine braking', 'device', 'hand'];

function kindsInOrder(seed: number): readonly Kind[] {
  const hard = KINDS.filter((kind) => !EASY.includes(kind));
  return [...shuffled(EASY, seed, 'easy kinds'), ...shuffled(hard, seed, 'hard kinds')];
}

function nextOf(drafts: Iterator<Draft>, seed: number): Question | undefined {
  for (;;) {
    const { value, done } = drafts.next();
    if (done) return undefined;
    const question = questionFrom(value, seed);
    if (question) return question;
  }
}

function* draftsOf(
  kind: Kind,
  train: Train,
  gears: readonly AskedGear[],
  { seed, gear }: QuestionOptions,
): Generator<Draft, void> {
  const inGear = IN_GEAR[kind];
  if (inGear) {
    for (const one of shuffled(gears, seed, `gears of ${kind}`)) yield* inGear(one);
  } else if (kind === 'fault') yield* faultQuestions(train, seed, gear);
  else if (gear) return;
  else if (kind === 'hand') yield* handQuestions(train, seed);
  else if (kind === 'comes off') yield* comesOffQuestions(train, seed);
  else yield* facesQuestions(train, seed);
}

const IN_GEAR: Partial<Record<Kind, (of: AskedGear) => Draft[]>> = {
  state: stateQuestion,
  way: wayQuestion,
  'engine braking': brakingQuestion,
  device: deviceQuestions,
  ratio: ratioQuestion,
  carriers: carriersQuestion,
  'left free': freeQuestion,
  'held torque': heldQuestions,
  backwards: backwardsQuestions,
};
