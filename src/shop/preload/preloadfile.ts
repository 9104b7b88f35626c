import * as v from 'valibot';
import type { Train } from '../../engine/train/index.ts';
import { force, length, readNamed, torque } from '../../engine/form/index.ts';
import type { Expected, Problem } from '../../engine/yaml/index.ts';
import { readLength } from '../limits/index.ts';
import type { PreloadReadings } from './readings.ts';
import { pulled, readTorque } from './torque.ts';

/** What a file of readings of preloads says; none of it where it has a mistake. */
export interface PreloadReading {
  readonly readings: readonly PreloadReadings[];
  readonly problems: readonly Problem[];
}

/** Reads preloads, by bearings: the train's, or of any where none is given. Never throws. */
export function readPreloads(text: string, train?: Train): PreloadReading {
  const known = train && (train.preloads ?? []).map(({ bearings }) => bearings);
  const { things, problems } = readNamed<Entry>(
    text,
    PRELOADS,
    known,
    (bearings, near) => {
      return { problem: 'no preload', bearings, ...near };
    },
    train,
  );
  const readings = [...things].map(([bearings, entry]): PreloadReadings => {
    const { turning, pull, gap, bearings: state } = entry;
    return {
      bearings,
      ...(turning && { turning: turning.map(readTorque) }),
      ...(pull && { pull: pull.force.map((its) => pulled(its, readLength(pull.radius))) }),
      ...(gap && { gap: gap.map(readLength) }),
      ...(state && { state }),
    };
  });
  return { readings, problems };
}

const or = (what: Expected) => what;
const some = <Its extends v.GenericSchema>(its: Its, what: Expected) =>
  v.pipe(v.array(its, or(what)), v.minLength(1, or(what)));

const ENTRY = v.strictObject(
  {
    turning: v.exactOptional(some(torque('What keeps it turning.'), 'torques')),
    pull: v.exactOptional(
      v.strictObject(
        {
          force: some(force('Of a spring balance.'), 'forces'),
          radius: length('At which the cord leaves the hub.'),
        },
        or('pull'),
      ),
    ),
    gap: v.exactOptional(some(length('The play with the fitted part in.'), 'lengths')),
    bearings: v.exactOptional(v.picklist(['new', 'used'], or('bearings'))),
  },
  or('preload readings'),
);
const PRELOADS = v.nullish(v.record(v.string(or('name')), ENTRY, or('section')));

type Entry = v.InferOutput<typeof ENTRY>;
