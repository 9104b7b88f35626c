import * as v from 'valibot';
import type { Train } from '../../engine/train/index.ts';
import { type Expected, length, type Problem, readNamed } from '../../engine/trainfile/index.ts';
import { type Length, lengthFrom } from '../length/index.ts';

/** What a file of end plays says, by shaft; none of it where it has a mistake. */
export interface PlaysReading {
  readonly plays: ReadonlyMap<string, readonly Length[]>;
  readonly problems: readonly Problem[];
}

/** Reads end plays, by shaft: the train's, or of any shaft where none is given. Never throws. */
export function readPlays(text: string, train?: Train): PlaysReading {
  const shafts = train && (train.endPlays ?? []).map(({ shaft }) => shaft);
  const { things, problems } = readNamed<string[]>(text, PLAYS, shafts, (shaft, near) => {
    return { problem: 'no end play', shaft, ...near };
  });
  const plays = [...things].map(([shaft, texts]) => {
    return [shaft, texts.map((its) => lengthFrom(its) as Length)] as const;
  });
  return { plays: new Map(plays), problems };
}

const or = (what: Expected) => what;
const PLAYS = v.nullish(
  v.record(
    v.string(or('name')),
    v.pipe(v.array(length('A reading.'), or('lengths')), v.minLength(1, or('lengths'))),
    or('section'),
  ),
);
