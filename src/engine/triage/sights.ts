import type { OutcomeWord } from '../experience/index.ts';
import type { Account, Observation } from '../suspects/index.ts';

/**
 * What of all that was seen bears on safety. An observation that nobody was sure of counts
 * here as well: what may be so is enough to stop.
 */
export class Sights {
  private readonly accounts: readonly Account[];

  constructor(accounts: readonly Account[]) {
    this.accounts = accounts;
  }

  /** The observations that say one of the words of a test of that kind. */
  saying(tests: readonly string[], words: readonly OutcomeWord[]): Observation[] {
    return this.accounts
      .filter(({ test }) => tests.includes(test.test))
      .flatMap(({ said, prediction: { outcomes, whole } }) =>
        said.flatMap(({ observation, means }) => {
          const meant = new Set(means.map((o) => outcomes[o]?.word as OutcomeWord));
          const so = meant.size === 1 && words.some((word) => meant.has(word));
          // Where that is what it should do, it bears on nothing.
          const sound = means.length === 1 && means[0] === whole;
          return so && !sound ? [observation] : [];
        }),
      );
  }

  /** The low readings at devices that are on in a gear: pulling there burns them, however lightly. */
  starved(on: readonly string[]): Observation[] {
    return this.saying(['device pressure'], ['low']).filter(({ test }) => {
      return 'device' in test && on.includes(test.device);
    });
  }

  /** What says that a gear ties up: no wheels turn in it. */
  bound(gear: string): Observation[] {
    return this.saying(['under power', 'coast'], ['ties up']).filter(({ test }) => {
      return 'gear' in test && test.gear === gear;
    });
  }

  /** What says that nothing drives in a gear. */
  lost(gear: string): Observation[] {
    return this.saying(['under power'], ['no drive']).filter(({ test }) => {
      return 'gear' in test && test.gear === gear;
    });
  }

  /** Whether a gear was driven, or rolled on its own, and was there. */
  moves(gear: string): boolean {
    return this.accounts.some(({ test, said, prediction: { outcomes } }) => {
      if ((test.test !== 'under power' && test.test !== 'coast') || test.gear !== gear)
        return false;
      const there = (o: number) => MOVES.has(outcomes[o]?.word as string) || test.test === 'coast';
      return said.some(({ observation, means }) => {
        return observation.sure === 'sure' && means.every(there);
      });
    });
  }

  /** Gears that nothing should drive and that drive. */
  creeping(): Observation[] {
    return this.accounts
      .filter(({ test, prediction: { outcomes, whole } }) => {
        return test.test === 'under power' && outcomes[whole]?.word === 'no drive';
      })
      .flatMap(({ said, prediction: { outcomes } }) =>
        said.flatMap(({ observation, means }) => {
          return means.every((o) => MOVES.has(outcomes[o]?.word as string)) ? [observation] : [];
        }),
      );
  }

  /** Whether a gear of those that are asked for surely drives, as it should. */
  goes(isAsked: (on: readonly string[]) => boolean): boolean {
    return this.accounts.some(({ test, said, prediction: { own } }) => {
      return (
        test.test === 'under power' &&
        isAsked(test.on) &&
        own !== undefined &&
        said.every(({ means }) => means.length === 1 && means[0] === own) &&
        said.some(({ observation }) => observation.sure === 'sure')
      );
    });
  }

  /** Whether something that was seen may come of weak pressure. */
  weak(): boolean {
    return (
      this.saying(['under power', 'coast', 'slip log'], ['slips', 'no drive']).length > 0 ||
      this.saying(['shift', 'engagement'], ['flares', 'late', 'harsh', 'none']).length > 0
    );
  }

  /** Whether anything was said of a test of that kind. */
  knows(test: string): boolean {
    return this.accounts.some((account) => account.test.test === test);
  }

  /** Whether somebody has surely read the pressure, on the line or at a device. */
  pressureIsRead(): boolean {
    return this.accounts.some(({ test, said }) => {
      const gauged = test.test === 'pressure' || test.test === 'device pressure';
      return gauged && said.some(({ observation }) => observation.sure === 'sure');
    });
  }

  pressureIsKnown(): boolean {
    return this.knows('pressure') || this.knows('device pressure');
  }
}

const MOVES: ReadonlySet<string> = new Set(['drives', 'another ratio', 'slips']);
