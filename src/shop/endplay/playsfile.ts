import * as v from 'valibot';
import type { Train } from '../../engine/train/index.ts';
import { length, readNamed } from '../../engine/form/index.ts';
import type { Expected, Problem } from '../../engine/yaml/index.ts';
import { AGAIN, againOf, readLength } from '../limits/index.ts';
import type { PlayReadings } from './readings.ts';

/** What a file of end plays says; none of it where it has a mistake. */
export interface PlaysReading {
  readonly readings: readonly PlayReadings[];
  readonly problems: readonly Problem[];
}

/** Reads end plays, by shaft: the train's, or of any shaft where none is given. Never throws. */
export function readPlays(text: string, train?: Train): PlaysReading {
  const shafts = train && (train.endPlays ?? []).map(({ shaft }) => shaft);
  const { things, problems } = readNamed<Entry>(
    text,
    PLAYS,
    shafts,
    (shaft, near) => {
      return { problem: 'no end play', shaft, ...near };
    },
    train,
  );
  const readings = [...things].map(([shaft, entry]): PlayReadings => {
    const { play, again } = Array.isArray(entry) ? { play: entry } : entry;
    return {
      shaft,
      ...(play && { play: play.map(readLength) }),
      ...(again && { again: againOf(again) }),
    };
  });
  return { readings, problems };
}

const or = (what: Expected) => what;
const LENGTHS = v.pipe(v.array(length('A reading.'), or('lengths')), v.minLength(1, or('lengths')));
const PLAY = v.union(
  [
    LENGTHS,
    v.strictObject(
      { play: v.exactOptional(LENGTHS), again: v.exactOptional(AGAIN) },
      or('play readings'),
    ),
  ],
  or('play readings'),
);
const PLAYS = v.nullish(v.record(v.string(or('name')), PLAY, or('section')));

type Entry = v.InferOutput<typeof PLAY>;
