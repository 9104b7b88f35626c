import * as v from 'valibot';
import { fromText, type Rational } from '../../engine/linear/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { length, readNamed } from '../../engine/form/index.ts';
import type { Expected, Problem } from '../../engine/yaml/index.ts';
import { readLength } from '../limits/index.ts';
import type { BandReadings } from './readings.ts';

/** What a file of readings of bands says; none of it where it has a mistake. */
export interface BandsReading {
  readonly readings: readonly BandReadings[];
  readonly problems: readonly Problem[];
}

/** Reads readings of bands, by device: the train's, or any where none is given. Never throws. */
export function readBands(text: string, train?: Train): BandsReading {
  const bands = train && (train.bands ?? []).map(({ device }) => device);
  const { things, problems } = readNamed<Entry>(
    text,
    BANDS,
    bands,
    (device, near) => {
      return { problem: 'no band', device, ...near };
    },
    train,
  );
  const readings = [...things].map(([device, { turns, travel }]): BandReadings => {
    return {
      device,
      ...(turns !== undefined && { turns: exactly(turns) }),
      ...(travel && { travel: travel.map(readLength) }),
    };
  });
  return { readings, problems };
}

interface Entry {
  readonly turns?: number;
  readonly travel?: readonly string[];
}

const or = (what: Expected) => what;
const BANDS = v.nullish(
  v.record(
    v.string(or('name')),
    v.strictObject(
      {
        turns: v.exactOptional(
          v.pipe(v.number(or('turns')), v.minValue(0, or('turns')), v.maxValue(100, or('turns'))),
        ),
        travel: v.exactOptional(
          v.pipe(v.array(length('A reading.'), or('lengths')), v.minLength(1, or('lengths'))),
        ),
      },
      or('band readings'),
    ),
    or('section'),
  ),
);

// "2.125" as it was written; no turn is told in less than thousandths.
function exactly(turns: number): Rational {
  return fromText(turns.toFixed(3)) as Rational;
}
