import type { DrawsAsked } from '../../shop/length/index.ts';
import { visible } from '../../telling/narrative/index.ts';
import { Refusal } from './refusal.ts';
import type { Options } from './session.ts';

/** How many stacks to draw, where --draws asks for some. */
export function drawsAsked({ draws, seed }: Options): DrawsAsked | undefined {
  if (draws === undefined) {
    if (seed !== undefined) throw new Refusal('bad.seed alone');
    return undefined;
  }
  return {
    draws: wholeOf(draws, 1000, MOST_DRAWS, 'bad.draws'),
    seed: wholeOf(seed ?? '1', 0, 2 ** 32 - 1, 'bad.seed'),
  };
}

// Some seconds.
const MOST_DRAWS = 20_000_000;

function wholeOf(text: string, least: number, most: number, bad: 'bad.draws' | 'bad.seed'): number {
  const value = /^\d{1,10}$/u.test(text) ? Number(text) : NaN;
  if (value >= least && value <= most) return value;
  throw new Refusal(bad, { given: visible(text), least: `${least}`, most: `${most}` });
}
