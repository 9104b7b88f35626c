import { motionOf } from '../motion/index.ts';
import { type Practice, type Stage, STAGES } from '../practice/index.ts';
import type { Train } from '../train/index.ts';
import { bracketsOf } from './bracket.ts';
import { type Cause, causesOf } from './cause.ts';
import { type Prediction, Predictor } from './prediction.ts';
import { type Test, testText, testsOf } from './test.ts';

/** A train under suspicion: what may be wrong with it, and what each test would then show. */
export interface Inquiry {
  readonly train: Train;
  readonly practice: Practice;
  readonly causes: readonly Cause[];
  /** The tests that may be offered; others may be seen too (a check with two members held). */
  readonly tests: readonly Test[];
  /** Worked out when it is first asked for, and remembered. */
  predict(test: Test): Prediction;
  /** The causes, as places among them, in brackets that no test up to the stage parts. */
  apart(stage: Stage): readonly (readonly number[])[];
}

// So many hands on so many faulty trains are tried in a second or two.
const MOST_HANDS = 20_000;

export function inquire(train: Train, practice: Practice): Inquiry {
  const causes = causesOf(train, practice);
  const predictor = new Predictor(motionOf(train), practice, causes);
  const known = new Map<string, Prediction>();
  const predict = (test: Test) => {
    const key = testText(test);
    let prediction = known.get(key);
    if (!prediction) known.set(key, (prediction = predictor.predict(test)));
    return prediction;
  };
  const most = Math.floor(MOST_HANDS / Math.max(1, causes.length));
  const tests = testsOf(train, (on) => predictor.goes(on), most);
  const brackets = new Map<Stage, number[][]>();
  const apart = (stage: Stage) => {
    let among = brackets.get(stage);
    if (!among) {
      const open = new Set(STAGES.slice(0, STAGES.indexOf(stage) + 1));
      const made = tests.filter(({ test }) => open.has(practice.tests[test].at));
      brackets.set(stage, (among = bracketsOf(causes, made.map(predict))));
    }
    return among;
  };
  return { train, practice, causes, tests, predict, apart };
}
