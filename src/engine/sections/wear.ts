import * as v from 'valibot';
import { plainName, or } from '../form/index.ts';
import { WEAR_KINDS } from '../train/index.ts';
import { LIMIT, listed } from '../entries/index.ts';

/** What is measured of a part, and its limit. */
const WEAR_CHECK = v.pipe(
  v.strictObject(
    {
      measure: v.pipe(
        v.picklist(WEAR_KINDS, or('wear kind')),
        v.description(
          'A clearance (bushing, planet, pump, seal ring), a drum, a thickness, or a spring.',
        ),
      ),
      limit: v.exactOptional(LIMIT),
    },
    or('wear check'),
  ),
  v.description('Something that wears or sags, and its limit.'),
);

export const WEAR = listed({
  key: 'wear',
  field: 'wear',
  as: 'part',
  name: plainName('What is measured.'),
  entry: WEAR_CHECK,
  description:
    'What wears and is measured: bushings, planets, the pump, seal rings, drums, washers, springs.',
});
