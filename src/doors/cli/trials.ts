import type { DrawsAsked } from '../../shop/length/index.ts';
import { visible } from '../../telling/narrative/index.ts';
import { Refusal } from './refusal.ts';
import type { Options } from './session.ts';

/** How many stacks to draw, where --trials asks for some. */
export function trialsAsked({ trials, series }: Options): DrawsAsked | undefined {
  if (trials === undefined) {
    if (series !== undefined) throw new Refusal('bad.series alone');
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
  text: string,
  least: number,
  most: number,
  bad: 'bad.trials' | 'bad.series',
): number {
  const value = /^\d{1,10}$/u.test(text) ? Number(text) : NaN;
  if (value >= least && value <= most) return value;
  throw new Refusal(bad, { given: visible(text), least: `${least}`, most: `${most}` });
}
