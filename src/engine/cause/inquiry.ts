import {
  OUTCOMES,
  type Experience,
  type Stage,
  STAGES,
  type UnitStage,
} from '../experience/index.ts';
import type { Train } from '../train/index.ts';
import { type Cause, causesOf } from './cause.ts';
import { type Prediction, Predictor } from './prediction.ts';
import { Road, SOUND } from './road.ts';
import { type Reason, reasonsOf } from './tables.ts';
import { type Test, testsOf } from '../sight/index.ts';
import type { DeviceGrip, Manner } from './manner.ts';
import { mannersOf } from './manners.ts';

/** A train under suspicion: what may be wrong with it, and what each test would then show. */
export interface Inquiry {
  readonly train: Train;
  readonly experience: Experience;
  /** Where the unit is, where somebody knows; else it is as far open as what was seen needs. */
  readonly at?: UnitStage;
  readonly causes: readonly Cause[];
  /** The manners in which they may be so, and the reasons; a road test parts the one, a table the other. */
  readonly manners: readonly Manner[];
  readonly reasons: readonly Reason[];
  /** The tests that may be offered; others may be seen too (a check with two members held). */
  readonly tests: readonly Test[];
  /** Worked out when it is first asked for, and remembered. */
  predict(test: Test): Prediction;
  /** The causes, as places among them, in classes that no test up to the stage parts. */
  apart(stage: Stage): readonly (readonly number[])[];
  /** Whether a device can carry something under power in a gear of the train in order. */
  carries(device: string, on: readonly string[]): boolean;
  /** The same train with other causes; what is known of its gears is shared. */
  with(causes: readonly Cause[]): Inquiry;
}

// So many hands on so many faulty trains are tried in a second or two.
const MOST_HANDS = 20_000;

/** `grips`: what the file says of how much each device can carry; it may say nothing. */
export function inquire(
  train: Train,
  experience: Experience,
  grips: readonly DeviceGrip[] = [],
): Inquiry {
  const road = new Road(train);
  const causes = causesOf(train, experience);
  const drives = (on: readonly string[]) => road.run(SOUND, on, 'under power').state === 'driving';
  const tests = testsOf(train, drives, Math.floor(MOST_HANDS / Math.max(1, causes.length)));
  return inquiryOf(road, experience, grips, causes, tests);
}

function inquiryOf(
  road: Road,
  experience: Experience,
  grips: readonly DeviceGrip[],
  causes: readonly Cause[],
  tests: readonly Test[],
): Inquiry {
  const manners = mannersOf(causes, road, grips, experience.tests.stall.shows ?? {});
  const reasons = reasonsOf(causes, experience, road);
  const predictor = new Predictor(road, experience, { causes, manners, reasons });
  const classes = new Map<Stage, number[][]>();
  const inquiry: Inquiry = {
    train: road.train,
    experience,
    causes,
    manners,
    reasons,
    tests,
    predict: (test) => predictor.predict(test),
    apart: (stage) => {
      let among = classes.get(stage);
      if (!among) classes.set(stage, (among = classesOf(inquiry, stage)));
      return among;
    },
    carries: (device, on) => road.torques(SOUND, on, 'under power').get(device)?.most !== 0,
    with: (others) => inquiryOf(road, experience, grips, others, tests),
  };
  return inquiry;
}

/** By cause: the chance of each outcome, before anything is known of its manners and reasons. */
function byCause(inquiry: Inquiry, prediction: Prediction): readonly number[][] {
  const known = means.get(prediction);
  if (known) return known;
  const { by, rows, outcomes } = prediction;
  const chances = inquiry.causes.map(() => outcomes.map(() => 0));
  const { length } = outcomes;
  inquiry[by].forEach(({ cause, share }, k) => {
    const sums = chances[cause] as number[];
    const row = rows[k] as readonly number[];
    for (let o = 0; o < length; o++) sums[o] = (sums[o] as number) + share * (row[o] as number);
  });
  means.set(prediction, chances);
  return chances;
}

// A prediction never changes.
const means = new WeakMap<Prediction, number[][]>();

// Causes that show the same at full load in every gear and to the hands, as they mostly are, and
// leave the same device in doubt where a test of it may be made.
function classesOf(inquiry: Inquiry, stage: Stage): number[][] {
  const { experience, tests } = inquiry;
  const open = new Set(STAGES.slice(0, STAGES.indexOf(stage) + 1));
  const made = tests
    .filter(({ test }) => open.has(experience.tests[test].at))
    .map((test): Test => (test.test === 'under power' ? { ...test, load: 'heavy' } : test));
  const rows = made.map((test) => byCause(inquiry, inquiry.predict(test)));
  const classes = new Map<string, number[]>();
  inquiry.causes.forEach((_, c) => {
    const key = rows
      .map((its, t) => {
        const row = its[c] as readonly number[];
        const most = Math.max(...row);
        // What is as good as a toss parts nothing.
        const sure = most >= (OUTCOMES[(made[t] as Test).test].length > 2 ? 0.6 : 0.7);
        return sure ? row.indexOf(most) : -1;
      })
      .join(' ');
    const group = classes.get(key);
    if (group) group.push(c);
    else classes.set(key, [c]);
  });
  return [...classes.values()];
}
