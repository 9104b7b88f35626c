import type { Train, Way } from '../../engine/train/index.ts';
import { meant } from './names.ts';
import { NoAnswer } from './refused.ts';

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

/** Where a person who names an end, by the file's name for it or as input or output, stands. */
export function standAt({ ends }: Train, seenFrom?: string): Stand {
  const stand = { ...AT_THE_INPUT, ...(ends && { ends }) };
  if (seenFrom === undefined) return stand;
  const own = ends && meant(seenFrom, ends);
  const end =
    own === undefined
      ? ENDS.get(seenFrom.trim().toLowerCase())
      : [...(ends ?? [])].indexOf(own) === 0
        ? 'input'
        : 'output';
  if (!end) throw new NoAnswer({ refused: 'no.end', given: seenFrom, ends: ends ?? [] });
  return { ...stand, seenFrom: end };
}

/** The same, with the race of a one-way clutch that is held. */
export function raceHeld(stand: Stand, race?: string): Stand {
  if (race === undefined) return stand;
  const hold = RACES.get(race.trim().toLowerCase());
  if (!hold) throw new NoAnswer({ refused: 'no.race', given: race });
  return { ...stand, hold };
}

const ENDS: ReadonlyMap<string, Stand['seenFrom']> = new Map([
  ['input', 'input'],
  ['entrada', 'input'],
  ['output', 'output'],
  ['salida', 'output'],
]);

const RACES: ReadonlyMap<string, Stand['hold']> = new Map([
  ['outer', 'outer'],
  ['exterior', 'outer'],
  ['inner', 'inner'],
  ['interior', 'inner'],
]);
