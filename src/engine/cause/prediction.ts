import { type HandCheck, turns } from '../hand/index.ts';
import { toText } from '../linear/index.ts';
import { OUTCOMES, type OutcomeWord, type Experience } from '../experience/index.ts';
import type { Train } from '../train/index.ts';
import { Behaviour, plainly, type Shown } from './behaviour.ts';
import type { Cause } from './cause.ts';
import { type TestOutcome, gearText, type Test, testText } from '../sight/index.ts';
import { type Road, sameRun, SOUND } from './road.ts';
import { type Reason, Tables } from './tables.ts';
import { faultsIn, type Manner } from './manner.ts';

/** What a test would show if each cause were the one. */
export interface Prediction {
  readonly outcomes: readonly TestOutcome[];
  /** The place in `outcomes` of what a train in order shows. */
  readonly whole: number;
  /** The place of a gear's own ratio, where it has one. */
  readonly own?: number;
  /** Whether it parts the manners of a cause, as a road test does, or its reasons. */
  readonly by: 'manners' | 'reasons';
  /** By manner or by reason, by outcome: the chance of it; rows that are alike may be one. */
  readonly rows: readonly (readonly number[])[];
}

/** What may be the case, flat: the manners and the reasons of every cause. */
export interface Cases {
  readonly causes: readonly Cause[];
  readonly manners: readonly Manner[];
  readonly reasons: readonly Reason[];
}

/**
 * What each test shows in each manner and for each reason. Gears and hand checks are worked out,
 * exactly; what mechanics cannot say is read off the experience's tables.
 */
export class Predictor {
  private readonly road: Road;
  private readonly cases: Cases;
  private readonly tables: Tables;
  private readonly known = new Map<string, Prediction>();

  constructor(road: Road, experience: Experience, cases: Cases) {
    this.road = road;
    this.cases = cases;
    this.tables = new Tables(experience, road);
  }

  /** Worked out when it is first asked for, and remembered. */
  predict(test: Test): Prediction {
    const key = testText(test);
    let prediction = this.known.get(key);
    if (!prediction) this.known.set(key, (prediction = this.made(test)));
    return prediction;
  }

  private made(test: Test): Prediction {
    switch (test.test) {
      case 'under power':
      case 'coast':
        return this.driven(test);
      case 'slip log':
        return this.logged(test);
      case 'hand check':
        return this.byHand(test.check);
      case 'stall':
      case 'engagement':
        return this.standing(test);
      case 'stray pressure':
        return this.strayed(test);
      default: {
        const { causes, reasons } = this.cases;
        const rows = reasons.map(({ cause, kinds }) => {
          return this.tables.shown(test, causes[cause] as Cause, kinds);
        });
        return { outcomes: wordsOf(test.test), whole: 0, by: 'reasons', rows };
      }
    }
  }

  private driven(test: Test & { test: 'under power' | 'coast' }): Prediction {
    const { road } = this;
    const whole = road.run(SOUND, test.on, test.test);
    const outcomes: TestOutcome[] = [];
    const known = new Map<string, number>();
    const place = (outcome: TestOutcome) => {
      const key = keyOf(outcome);
      let at = known.get(key);
      if (at === undefined) known.set(key, (at = outcomes.push(outcome) - 1));
      return at;
    };
    const at = place(plainly(whole, test.test));
    const ratio = ownRatio(road, test);
    const own = ratio && place({ word: test.test === 'coast' ? 'brakes' : 'drives', ratio });
    const behaviour = new Behaviour(road, test, test.test);
    const shown = this.cases.manners.map((manner) => behaviour.shown(manner));
    const different = new Set(shown);
    for (const its of different) for (const [outcome] of its) place(outcome);
    for (const word of OUTCOMES[test.test]) {
      if (word !== 'drives' && word !== 'brakes') place({ word });
    }
    const made = new Map<string, readonly number[]>();
    const rowBy = new Map<Shown, readonly number[]>();
    for (const its of different) rowBy.set(its, rowOf(its, outcomes.length, place, made));
    const rows = shown.map((its) => rowBy.get(its) as readonly number[]);
    return { outcomes, whole: at, by: 'manners', rows, ...(own !== undefined && { own }) };
  }

  // Whether the gear holds at part throttle, as speeds side by side show it.
  private logged({ gear, on }: Test & { test: 'slip log' }): Prediction {
    const { outcomes, rows } = this.predict({ test: 'under power', gear, on });
    const made = new Map<readonly number[], readonly number[]>();
    const held = rows.map((row) => {
      let its = made.get(row);
      if (!its) {
        const slips = outcomes.reduce((sum, { word }, o) => {
          return word === 'slips' || word === 'no drive' ? sum + (row[o] as number) : sum;
        }, 0);
        made.set(row, (its = [1 - slips, slips]));
      }
      return its;
    });
    return { outcomes: wordsOf('slip log'), whole: 0, by: 'manners', rows: held };
  }

  // Whether oil comes to a device in a gear that does not apply it.
  private strayed({ test, device, gear, on }: Test & { test: 'stray pressure' }): Prediction {
    const { causes, manners } = this.cases;
    const [fed = [], dry = []] = (['device fed by mistake', 'otherwise'] as const).map((row) => {
      return this.tables.row(test, [row, 'otherwise']);
    });
    const rows = manners.map(({ cause, instead, fed: its }) => {
      const [fault] = (causes[cause] as Cause).faults;
      const own = fault && 'device' in fault && fault.device === device;
      const applied = (instead?.get(gear) ?? on).includes(device);
      return applied || (own && its?.gears.has(gear)) ? fed : dry;
    });
    return { outcomes: wordsOf(test), whole: 0, by: 'manners', rows };
  }

  private byHand(check: HandCheck): Prediction {
    const shown = (manner: Pick<Manner, 'faults'>): OutcomeWord => {
      const motion = this.road.motion(manner.faults);
      // A member that only a stripped part had is loose.
      const there = [check.turn, ...check.hold].every((name) => {
        return motion.assembly.bodyOf(name) !== undefined;
      });
      return !there || turns(motion, check) ? 'turns' : 'locks';
    };
    const words = OUTCOMES['hand check'];
    const [turning, locking] = words.map((word) => words.map((its) => (its === word ? 1 : 0)));
    const felt = new Map<readonly unknown[], readonly number[]>();
    const rows = this.cases.manners.map((manner) => {
      let row = felt.get(manner.faults);
      if (!row)
        felt.set(manner.faults, (row = (shown(manner) === 'turns' ? turning : locking) ?? []));
      return row;
    });
    const whole = words.indexOf(shown({ faults: SOUND }) as (typeof words)[number]);
    return { outcomes: wordsOf('hand check'), whole, by: 'manners', rows };
  }

  // A gear that nothing holds, at all or with all its load, or that cannot turn, shows itself;
  // and what is wrong with a device shows where the gear needs it.
  private standing({ test, range, on, ...how }: Test & Standing): Prediction {
    const gear = firstGear(this.road.train, range);
    const { causes, manners } = this.cases;
    const whole = this.road.run(SOUND, on, 'under power');
    const made = new Map<string, readonly number[]>();
    const words: readonly OutcomeWord[] = OUTCOMES[test];
    const certain = new Map(words.map((word) => [word, words.map((w) => (w === word ? 1 : 0))]));
    const only = (word: OutcomeWord) => certain.get(word) as readonly number[];
    // Each gear that a driver starts in, pulled hard.
    const pulled = new Behaviour(this.road, { gear: '', on, load: 'heavy' }, 'under power');
    const rows = manners.map((manner) => {
      const run = this.road.run(faultsIn(manner, gear), on, 'under power');
      const { cause, faults } = causes[manner.cause] as Cause;
      const stalled = test === 'stall' && pulled.slips(manner);
      const eased = 'heat' in how && how.heat !== undefined && isEased(manner, how.heat);
      const firm = test === 'stall' && run.state === 'driving' && !stalled;
      if (firm && manner.stalls !== undefined) return only(manner.stalls);
      const needed =
        !eased && (faults.length === 0 || !sameRun(run, whole) || pulled.needs(manner));
      const row =
        run.state === 'neutral' || stalled
          ? 'gear slips'
          : run.state === 'tied up'
            ? 'gear ties up'
            : needed
              ? cause
              : 'otherwise';
      let chances = made.get(row);
      if (!chances) {
        chances = this.tables.row(test, [row, 'otherwise']) as readonly number[];
        made.set(row, chances);
      }
      return chances;
    });
    return { outcomes: wordsOf(test), whole: 0, by: 'manners', rows };
  }
}

interface Standing {
  readonly test: 'stall' | 'engagement';
}

function firstGear({ ranges }: Train, range: string): string {
  const [gear] = ranges.find(({ name }) => name === range)?.gears ?? [];
  return gear ? gearText(range, gear.name) : range;
}

// Whether what is weak holds better cold, and it is, or hot.
function isEased({ weak: [weakness] }: Manner, heat: 'cold' | 'hot'): boolean {
  if (!weakness?.device) return false;
  return weakness.cold < 1 === (heat === 'cold');
}

// The ratio that a driver expects of the gear; of one that is free on coast, as it drives.
function ownRatio(road: Road, { test, on }: Test & { test: 'under power' | 'coast' }) {
  const { ratio } = road.run(SOUND, on, test);
  return ratio ?? (test === 'coast' ? road.run(SOUND, on, 'under power').ratio : undefined);
}

function keyOf({ word, ratio }: TestOutcome): string {
  return ratio ? toText(ratio) : word;
}

function wordsOf(test: keyof typeof OUTCOMES): TestOutcome[] {
  return OUTCOMES[test].map((word) => ({ word }));
}

// The shown as a row; one that was made before is the same.
function rowOf(
  shown: Shown,
  length: number,
  place: (outcome: TestOutcome) => number,
  made: Map<string, readonly number[]>,
): readonly number[] {
  const key = shown.map(([outcome, chance]) => `${place(outcome)} ${chance}`).join();
  let row = made.get(key);
  if (!row) {
    const chances = Array.from({ length }, () => 0);
    for (const [outcome, chance] of shown) {
      const o = place(outcome);
      chances[o] = (chances[o] as number) + chance;
    }
    made.set(key, (row = chances));
  }
  return row;
}
