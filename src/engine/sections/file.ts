import * as v from 'valibot';
import { or } from '../form/index.ts';
import type { Train } from '../train/index.ts';
import { BANDS } from './bands.ts';
import { CAPACITIES } from './capacities.ts';
import { CAR } from './car.ts';
import { CONTROLS } from './controls.ts';
import { DEVICES } from './devices.ts';
import { END_PLAYS } from './endplay.ts';
import { ENGINE } from './engine.ts';
import { FLUID } from './fluid.ts';
import { ABOUT, FINAL_DRIVE, FORWARD, INPUT, NAME, OUTPUT, UNIT_ENDS } from './head.ts';
import { JOINED } from './joined.ts';
import { IN_LANGUAGES } from './languages.ts';
import { PACKS } from './packs.ts';
import { PAIRS } from './pairs.ts';
import { PRELOADS } from './preload.ts';
import { RANGES } from './ranges.ts';
import type { AnySection } from '../entries/index.ts';
import { SETS } from './sets.ts';
import { TEARDOWN } from './teardown.ts';
import { WEAR } from './wear.ts';

// The train file, defined once: its sections, in the order in which they are written and offered.
const ALL = [
  NAME,
  ABOUT,
  INPUT,
  OUTPUT,
  FORWARD,
  FINAL_DRIVE,
  UNIT_ENDS,
  SETS,
  PAIRS,
  JOINED,
  DEVICES,
  RANGES,
  CONTROLS,
  TEARDOWN,
  CAPACITIES,
  ENGINE,
  CAR,
  FLUID,
  END_PLAYS,
  PRELOADS,
  BANDS,
  WEAR,
  PACKS,
  IN_LANGUAGES,
] as const;

export const SECTIONS: readonly AnySection[] = ALL;

/** The version of the file form that this reader knows. */
export const VERSION = 1;

/** The form of the whole file. The message of a definition is what was expected (`Expected`). */
export const FILE = v.strictObject(
  {
    holdturn: v.pipe(
      v.literal(VERSION, or('version')),
      v.description('The version of the file form: 1.'),
    ),
    ...Object.fromEntries(SECTIONS.map(({ key, form }) => [key, form])),
  },
  or('section'),
);

/** The train of what a file's entries say; what is missing is left empty. */
export function trainOf(entries: Readonly<Record<string, unknown>>): Train {
  const said = SECTIONS.map((section) => section.read(entries[section.key] as never));
  return Object.assign({}, ...said) as WhatIsSaid satisfies Train;
}

// What all sections say together. A field of the train that no section reads does not compile, but
// for what faults alone set.
type Said = ReturnType<(typeof ALL)[number]['read']>;
type WhatIsSaid =
  | Together<Said>
  | None<Exclude<keyof Train, KeyOf<Said> | 'healthy' | 'oilFaults'>>;
type Together<Its> = (Its extends unknown ? (it: Its) => void : never) extends (
  it: infer All,
) => void
  ? All
  : never;
type KeyOf<Its> = Its extends unknown ? keyof Its : never;
type None<Fields extends never> = Fields;
