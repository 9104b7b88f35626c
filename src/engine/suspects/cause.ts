import { everyFault, type Fault } from '../faults/index.ts';
import type { CauseWord, Practice } from '../practice/index.ts';
import type { Train } from '../train/index.ts';

/** One thing that may be wrong: with the train (a fault), beside it, or nothing at all. */
export interface Cause {
  readonly cause: CauseWord;
  /** None where the train itself is in order; two where it takes two to explain what was seen. */
  readonly faults: readonly Fault[];
  /** Before anything is seen, of all causes together 1. */
  readonly prior: number;
}

/** What may be wrong with a train, in the order of the file; nothing that has no weight. */
export function causesOf(train: Train, practice: Practice): Cause[] {
  const inTrain = everyFault(train).map((fault) => ({ cause: kindOf(fault), faults: [fault] }));
  const found = [...inTrain, ...BESIDE.map((cause) => ({ cause, faults: [] }))];
  const weighed = found
    .map((its) => ({ ...its, weight: practice.causes[its.cause] }))
    .filter(({ weight }) => weight > 0);
  const sum = weighed.reduce((total, { weight }) => total + weight, 0);
  return weighed.map(({ weight, ...its }) => ({ ...its, prior: weight / sum }));
}

const BESIDE = ['low line pressure', 'stator slips', 'engine weak', 'nothing wrong'] as const;

function kindOf(fault: Fault): CauseWord {
  switch (fault.what) {
    case 'device':
      return fault.is === 'will not release' ? 'device will not release' : 'device will not apply';
    case 'one-way':
      return `one-way clutch ${fault.is}`;
    case 'join':
      return 'splines stripped';
    case 'wheel':
    case 'pair':
    case 'set':
      return 'teeth stripped';
    case 'part':
      return 'part left out';
    case 'planet':
      return 'planet seized';
  }
}
