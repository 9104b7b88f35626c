import * as v from 'valibot';
import type { Train } from '../../engine/train/index.ts';
import { length, readNamed } from '../../engine/form/index.ts';
import type { Expected, Problem } from '../../engine/yaml/index.ts';
import { readLength } from '../limits/index.ts';
import type { WearReadings } from './readings.ts';

/** What a file of readings of worn parts says; none of it where it has a mistake. */
export interface WearReading {
  readonly readings: readonly WearReadings[];
  readonly problems: readonly Problem[];
}

/** Reads readings by part: the train's, or any where none is given. Never throws. */
export function readWear(text: string, train?: Train): WearReading {
  const parts = train && (train.wear ?? []).map(({ part }) => part);
  const { things, problems } = readNamed<Entry>(
    text,
    WEAR,
    parts,
    (part, near) => {
      return { problem: 'no wear', part, ...near };
    },
    train,
  );
  const readings = [...things].map(([part, entry]): WearReadings => {
    const read = Object.entries(entry).map(([key, texts]) => {
      return [key, (texts as readonly string[]).map(readLength)] as const;
    });
    return { part, ...Object.fromEntries(read) };
  });
  return { readings, problems };
}

type Entry = { readonly [key in 'read' | 'bore' | 'shaft']?: readonly string[] };

const or = (what: Expected) => what;
const lengths = v.exactOptional(
  v.pipe(v.array(length('A reading.'), or('lengths')), v.minLength(1, or('lengths'))),
);
const WEAR = v.nullish(
  v.record(
    v.string(or('name')),
    v.strictObject({ read: lengths, bore: lengths, shaft: lengths }, or('wear readings')),
    or('section'),
  ),
);
