import { motionOf } from '../motion/index.ts';
import type { Practice } from '../practice/index.ts';
import type { Train } from '../train/index.ts';
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
}

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
  const tests = testsOf(train, (on) => predictor.drives(on));
  return { train, practice, causes, tests, predict };
}
