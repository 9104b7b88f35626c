import * as v from 'valibot';
import { WEAR_KINDS } from '../train/index.ts';
import { LIMIT } from './pack.ts';
import { or } from './value.ts';

/** What is measured of a part, and its limit. */
export const WEAR_CHECK = v.pipe(
  v.strictObject(
    {
      measure: v.pipe(
        v.picklist(WEAR_KINDS, or('wear kind')),
        v.description(
          'What is measured: a clearance of a bushing, a planet or a pump, or a spring.',
        ),
      ),
      limit: v.exactOptional(LIMIT),
    },
    or('wear check'),
  ),
  v.description('Something that wears or sags, and its limit.'),
);

export type WearEntry = v.InferOutput<typeof WEAR_CHECK>;
