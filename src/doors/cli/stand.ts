import { AT_THE_INPUT, type Stand, visible } from '../../telling/narrative/index.ts';
import { Refusal } from './refusal.ts';
import type { Options } from './session.ts';

/** Where --seen-from says that the reader stands. */
export function standOf({ seenFrom }: Options): Stand {
  if (seenFrom === undefined) return AT_THE_INPUT;
  const end = ENDS.get(seenFrom.trim().toLowerCase());
  if (!end) throw new Refusal('no.end', { given: visible(seenFrom) });
  return { ...AT_THE_INPUT, seenFrom: end };
}

/** The same, with the race of a one-way clutch that --hold names. */
export function raceHeld(stand: Stand, { hold }: Options): Stand {
  if (hold === undefined) return stand;
  const race = RACES.get(hold.trim().toLowerCase());
  if (!race) throw new Refusal('no.race', { given: visible(hold) });
  return { ...stand, hold: race };
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
