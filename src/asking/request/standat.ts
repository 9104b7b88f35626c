import type { Train } from '../../engine/train/index.ts';
import { meant } from './names.ts';
import { NoAnswer } from './refused.ts';
import { AT_THE_INPUT, type Stand } from './stand.ts';

/** Where a person who names an end, by the file's name for it or as input or output, stands. */
export function standAt(train: Train, seenFrom?: string): Stand {
  const { ends } = train;
  const stand = { ...AT_THE_INPUT, ...(ends && { ends }) };
  if (seenFrom === undefined) return stand;
  const own = ends && meant(seenFrom, ends, train);
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
