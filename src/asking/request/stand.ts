import type { Way } from '../../engine/train/index.ts';

/**
 * Where the reader of a sentence stands. What turns which way is reckoned once, inner race
 * against outer, seen from the input end; words are made for the reader. Each of the three
 * things turns the words of a one-way clutch round, and two of them cancel.
 */
export interface Stand {
  /** The end from which the reader looks. */
  readonly seenFrom: 'input' | 'output';
  /** What the ends of the unit are called, the input end first; input and output end if left out. */
  readonly ends?: readonly [input: string, output: string];
  /** The race of a one-way clutch that is held; the other one is turned. */
  readonly hold: 'outer' | 'inner';
  /** Which face of a one-way clutch is up: as the file describes it where this is left out. */
  readonly fitted?: 'as described' | 'other way up';
}

/** Where everything is reckoned. */
export const AT_THE_INPUT: Stand = { seenFrom: 'input', hold: 'outer' };

/** What the reader calls a way; told what the reader calls it, the way. */
export function wayFor(way: Way, { seenFrom }: Stand): Way {
  return seenFrom === 'input' ? way : opposite(way);
}

export function opposite(way: Way): Way {
  return way === 'clockwise' ? 'anticlockwise' : 'clockwise';
}
