import * as v from 'valibot';
import { length } from '../../engine/form/index.ts';
import type { Expected } from '../../engine/yaml/index.ts';
import type { AgainReadings } from './again.ts';
import { readLength } from './bounds.ts';

const or = (what: Expected) => what;

/** What was read once another part was in, in a file of readings. */
export const AGAIN = v.strictObject(
  {
    fitted: length('The part that is in now.'),
    read: v.pipe(v.array(length('A reading.'), or('lengths')), v.minLength(1, or('lengths'))),
  },
  or('again'),
);

/** The same as lengths. */
export function againOf({ fitted, read }: v.InferOutput<typeof AGAIN>): AgainReadings {
  return { fitted: readLength(fitted), read: read.map(readLength) };
}
