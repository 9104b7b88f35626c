import { coasting, ratioOf, type State, stateOf, underPower, vehicleOf } from '../flow/index.ts';
import { turns } from '../hand/index.ts';
import { type Rational, toText } from '../linear/index.ts';
import { type Motion, motionOf } from '../motion/index.ts';
import { OUTCOMES, type OutcomeWord, type Practice, type Row } from '../practice/index.ts';
import { judge } from '../reckon/index.ts';
import { applyFault } from '../faults/index.ts';
import type { Way } from '../train/index.ts';
import type { Cause } from './cause.ts';
import type { Outcome } from './outcome.ts';
import type { Goes, Test } from './test.ts';

/** What a test would show if each cause were the one. */
export interface Prediction {
  readonly outcomes: readonly Outcome[];
  /** The place in `outcomes` of what a train in order shows. */
  readonly whole: number;
  /** By cause, by outcome: the chance of it; 1 or 0 where mechanics settle it. */
  readonly chances: readonly (readonly number[])[];
}

/**
 * Turns a train with each cause applied. Gears and hand checks are worked out, exactly; what
 * mechanics cannot say is read off the practice's tables.
 */
export class Predictor {
  private readonly practice: Practice;
  private readonly causes: readonly Cause[];
  private readonly whole: Motion;
  private readonly motions: readonly Motion[];
  private readonly gears = new Map<string, readonly Driven[]>();

  constructor(whole: Motion, practice: Practice, causes: readonly Cause[]) {
    this.practice = practice;
    this.causes = causes;
    this.whole = whole;
    this.motions = causes.map(({ faults }) => {
      return faults.length > 0 ? motionOf(faults.reduce(applyFault, whole.train)) : whole;
    });
  }

  /** Where a train in order goes with these devices on. */
  goes(on: readonly string[]): Goes {
    const vehicle = vehicleOf(this.whole.train);
    const [way, other] = vehicle.ways(on);
    return !way || other ? 'nowhere' : vehicle.course(way);
  }

  predict(test: Test): Prediction {
    switch (test.test) {
      case 'under power':
        return this.underPower(test.on);
      case 'coast':
        return this.coast(test.on);
      case 'stall': {
        const gear = this.gear(test.on);
        return this.tabled('stall', (_, c) => {
          const state = gear[c]?.state;
          return state === 'neutral' ? 'gear slips' : state === 'tied up' ? 'gear ties up' : null;
        });
      }
      case 'fluid':
      case 'pressure':
        return this.tabled(test.test, () => null);
      case 'air check':
        return this.tabled('air check', ({ faults }) => {
          const its = faults.some((fault) => 'device' in fault && fault.device === test.device);
          return its ? null : 'otherwise';
        });
      case 'hand check': {
        const shown = (motion: Motion): OutcomeWord => {
          // A member that only a stripped part had is loose.
          const { hold, turn } = test.check;
          const there = [turn, ...hold].every((name) => motion.assembly.bodyOf(name) !== undefined);
          return !there || turns(motion, test.check) ? 'turns' : 'locks';
        };
        return settled('hand check', shown(this.whole), this.motions.map(shown));
      }
    }
  }

  // How a gear is under power, by cause.
  private gear(on: readonly string[]): readonly Driven[] {
    const key = on.join('\n');
    let driven = this.gears.get(key);
    if (!driven) {
      driven = this.motions.map((motion) => drivenBy(motion, on));
      this.gears.set(key, driven);
    }
    return driven;
  }

  private underPower(on: readonly string[]): Prediction {
    const whole = outcomeOf(drivenBy(this.whole, on));
    const shown = this.gear(on).map(outcomeOf);
    const outcomes: Outcome[] = [];
    const place = (outcome: Outcome) => {
      const same = outcomes.findIndex((other) => keyOf(other) === keyOf(outcome));
      return same < 0 ? outcomes.push(outcome) - 1 : same;
    };
    const at = place(whole);
    for (const outcome of shown) if (outcome.ratio) place(outcome);
    for (const word of ['slips', 'ties up', 'another ratio'] as const) place({ word });
    const { shows = {} } = this.practice.tests['under power'];
    const chances = this.causes.map(({ cause }, c) => {
      const row = outcomes.map(() => 0);
      const table = shows[cause];
      if (!table || whole.word !== 'drives') row[place(shown[c] as Outcome)] = 1;
      else {
        const shares = shared(table, OUTCOMES['under power']);
        OUTCOMES['under power'].forEach((word, k) => {
          const o = word === 'drives' ? at : place({ word });
          row[o] = shares[k] as number;
        });
      }
      return row;
    });
    return { outcomes, whole: at, chances };
  }

  private coast(on: readonly string[]): Prediction {
    const whole = drivenBy(this.whole, on);
    const [way] = vehicleOf(this.whole.train).ways(on) as [Way];
    const shown = (motion: Motion, driven: Driven): OutcomeWord => {
      // What does not move cannot coast.
      if (driven.state === 'tied up') return 'ties up';
      const coast = stateOf(judge(motion, coasting(motion.train, on, way)));
      return coast === 'driving' ? 'brakes' : coast === 'neutral' ? 'runs free' : 'ties up';
    };
    const gear = this.gear(on);
    return settled(
      'coast',
      shown(this.whole, whole),
      this.motions.map((motion, c) => shown(motion, gear[c] as Driven)),
    );
  }

  // `instead`: the row of a cause that has none of its own, or must not use it.
  private tabled(
    test: 'stall' | 'fluid' | 'pressure' | 'air check',
    instead: (cause: Cause, c: number) => Row | null,
  ): Prediction {
    const words = OUTCOMES[test];
    const { shows = {} } = this.practice.tests[test];
    const chances = this.causes.map((cause, c) => {
      const other = instead(cause, c);
      const own = other === 'otherwise' ? undefined : shows[cause.cause];
      const table = own ?? (other === null ? undefined : shows[other]) ?? shows.otherwise ?? {};
      return shared(table, words);
    });
    return { outcomes: words.map((word) => ({ word })), whole: 0, chances };
  }
}

interface Driven {
  readonly state: State;
  readonly ratio: Rational | undefined;
}

function drivenBy(motion: Motion, on: readonly string[]): Driven {
  const verdict = judge(motion, underPower(motion.train, on));
  const state = stateOf(verdict);
  return { state, ratio: state === 'driving' ? ratioOf(verdict, 'input') : undefined };
}

function outcomeOf({ state, ratio }: Driven): Outcome {
  if (ratio) return { word: 'drives', ratio };
  return { word: state === 'tied up' ? 'ties up' : 'slips' };
}

function keyOf({ word, ratio }: Outcome): string {
  return ratio ? toText(ratio) : word;
}

// Where mechanics settle what is shown.
function settled(
  test: 'coast' | 'hand check',
  whole: OutcomeWord,
  shown: readonly OutcomeWord[],
): Prediction {
  const words: readonly OutcomeWord[] = OUTCOMES[test];
  return {
    outcomes: words.map((word) => ({ word })),
    whole: words.indexOf(whole),
    chances: shown.map((its) => words.map((word) => (word === its ? 1 : 0))),
  };
}

// A row's proportions as chances.
function shared(
  table: Readonly<Partial<Record<OutcomeWord, number>>>,
  words: readonly OutcomeWord[],
): number[] {
  const sum = words.reduce((total, word) => total + (table[word] ?? 0), 0);
  return words.map((word) => (table[word] ?? 0) / sum);
}
