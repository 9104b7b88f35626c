import { toNumber, type Rational } from '../linear/index.ts';
import type { OutcomeWord } from '../experience/index.ts';
import { isWithin, type RatioRange, type RoadReading } from '../road/index.ts';

/** What a test shows. A gear that drives has the ratio at which it does. */
export interface TestOutcome {
  readonly word: OutcomeWord;
  readonly ratio?: Rational;
}

/** What a person says that a test showed: one outcome, or several between which it is open. */
export type Sight =
  | { readonly saw: 'as it should' | 'not as it should' }
  | { readonly saw: OutcomeWord }
  | {
      readonly saw: 'ratio';
      readonly ratio: number;
      /** Where it was read off engine and road: between which bounds it is, and what was read. */
      readonly range?: RatioRange;
      readonly read?: RoadReading;
    };

/** The outcomes that a test can have: which of them a healthy train shows, and a gear's own ratio. */
interface Foreseen {
  readonly outcomes: readonly TestOutcome[];
  readonly whole: number;
  readonly own?: number | undefined;
}

/** A ratio that was read off a road is as good as this. */
const RATIO_ALLOWANCE = 0.03;

/**
 * Which of a test's outcomes a sight means. A ratio is the nearest one that something would give,
 * else another ratio. A gear that drives or brakes does so at its own ratio, where it has one.
 */
export function meantBy(sight: Sight, { outcomes, whole, own }: Foreseen): number[] {
  const all = outcomes.map((_, o) => o);
  switch (sight.saw) {
    case 'as it should':
      return [whole];
    case 'not as it should':
      return all.filter((o) => o !== whole);
    case 'ratio': {
      const { ratio, range } = sight;
      if (range) {
        const within = all.filter((o) => {
          const its = outcomes[o]?.ratio;
          return its && isWithin(range, toNumber(its));
        });
        // An engine that runs ahead of every ratio slips.
        return within.length > 0 ? within : all.filter((o) => LOOSE.has(outcomes[o]?.word ?? ''));
      }
      const off = (o: number) => {
        const its = outcomes[o]?.ratio;
        return its ? Math.abs(toNumber(its) / ratio - 1) : Infinity;
      };
      const best = all.reduce((a, b) => (off(b) < off(a) ? b : a), 0);
      if (off(best) <= RATIO_ALLOWANCE) return [best];
      return all.filter((o) => outcomes[o]?.word === 'another ratio');
    }
    case 'drives':
    case 'brakes':
      if (own !== undefined) return [own];
      return all.filter((o) => outcomes[o]?.ratio || outcomes[o]?.word === 'another ratio');
    case 'another ratio':
      return all.filter((o) => {
        return o !== own && (outcomes[o]?.ratio || outcomes[o]?.word === 'another ratio');
      });
    default:
      return all.filter((o) => outcomes[o]?.word === sight.saw);
  }
}

const LOOSE: ReadonlySet<string> = new Set(['another ratio', 'slips']);

/** An outcome as a sight that means it and no other. */
export function sightOf({ word, ratio }: TestOutcome): Sight {
  return ratio ? { saw: 'ratio', ratio: toNumber(ratio) } : { saw: word };
}
