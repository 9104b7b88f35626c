import * as v from 'valibot';
import { length, or } from '../form/index.ts';
import { ROD_PARTS } from '../train/index.ts';
import { LIMIT, shelf, SET_BAND, listed } from '../entries/index.ts';

/** How a band's clearance at its drum is set. */
const BAND_SETTING = v.pipe(
  v.strictObject(
    {
      pitch: v.exactOptional(
        length('How far the screw moves in one turn; 1/18 in for 18 threads an inch.'),
      ),
      lever: v.exactOptional(
        v.pipe(
          v.number(or('lever')),
          v.minValue(0.001, or('lever')),
          v.maxValue(20, or('lever')),
          v.description(
            'How far the band’s end moves for each unit of the screw’s or the rod’s travel. Absent: 1.',
          ),
        ),
      ),
      limits: v.exactOptional(
        v.pipe(
          v.strictObject(
            { clearance: v.exactOptional(LIMIT), travel: v.exactOptional(LIMIT) },
            or('section'),
          ),
          v.description('Of the clearance at the drum; of the travel of the screw or the rod.'),
        ),
      ),
      shelf: v.exactOptional(
        shelf(v.picklist(ROD_PARTS, or('rod part')), 'The rod by which the clearance is set.'),
      ),
    },
    or('band setting'),
  ),
  v.description('What sets the clearance of a band at its drum, and its limits.'),
);

export const BANDS = listed({
  key: 'bands',
  field: 'bands',
  as: 'device',
  name: SET_BAND,
  entry: BAND_SETTING,
  description: 'What sets the clearance of each band at its drum.',
});
