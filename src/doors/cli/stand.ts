import type { Train } from '../../engine/train/index.ts';
import { AT_THE_INPUT, type Stand, visible } from '../../telling/narrative/index.ts';
import { meant } from './names.ts';
import { Refusal } from './refusal.ts';
import type { Options, Session } from './session.ts';

/** The session with the reader where --seen-from says, which may call an end by its own name. */
export function lookingAt({ ends }: Train, session: Session): Session {
  return { ...session, page: { ...session.page, stand: standOf(session.options, ends) } };
}

/** Where --seen-from says that the reader stands. */
function standOf({ seenFrom }: Options, ends: Train['ends']): Stand {
  const stand = { ...AT_THE_INPUT, ...(ends && { ends }) };
  if (seenFrom === undefined) return stand;
  const own = ends && meant(seenFrom, ends);
  const end =
    own === undefined
      ? ENDS.get(seenFrom.trim().toLowerCase())
      : [...(ends ?? [])].indexOf(own) === 0
        ? 'input'
        : 'output';
  if (!end) {
    const all = ends ? [...ends, 'input', 'output'].map(visible).join(', ') : 'no';
    throw new Refusal('no.end', { given: visible(seenFrom), all });
  }
  return { ...stand, seenFrom: end };
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
