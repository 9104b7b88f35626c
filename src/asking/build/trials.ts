import type { DrawsAsked } from '../../shop/length/index.ts';
import { NoAnswer } from '../request/index.ts';

/** How many stacks are drawn by chance, and by which series; each a whole number. */
export interface TrialsRequest {
  readonly trials?: string;
  readonly series?: string;
}

/** Undefined where no stacks are asked for. */
export function trialsAsked({ trials, series }: TrialsRequest): DrawsAsked | undefined {
  if (trials === undefined) {
    if (series !== undefined) throw new NoAnswer({ refused: 'bad.series alone' });
    return undefined;
  }
  return {
    draws: wholeOf(trials, 1000, MOST_DRAWS, 'bad.trials'),
    seed: wholeOf(series ?? '1', 0, 2 ** 32 - 1, 'bad.series'),
  };
}

// Some seconds.
const MOST_DRAWS = 20_000_000;

function wholeOf(
  given: string,
  least: number,
  most: number,
  refused: 'bad.trials' | 'bad.series',
): number {
  const value = /^\d{1,10}$/u.test(given) ? Number(given) : NaN;
  if (value >= least && value <= most) return value;
  throw new NoAnswer({ refused, given, least, most });
}
