import * as v from 'valibot';
import { length, plainName, note, or } from '../form/index.ts';
import { PLAY_KINDS, WASHER_PARTS } from '../train/index.ts';
import { LIMIT, shelf, listed } from '../entries/index.ts';

/** The end play of a shaft: its limit, and the washer or race by which it is set. */
const END_PLAY = v.pipe(
  v.strictObject(
    {
      measure: v.exactOptional(
        v.pipe(
          v.picklist(PLAY_KINDS, or('play kind')),
          v.description('Along the shaft, or between teeth. Absent: end play.'),
        ),
      ),
      limit: v.exactOptional(LIMIT),
      shelf: v.exactOptional(
        shelf(v.picklist(WASHER_PARTS, or('washer part')), 'The part that sets the end play.'),
      ),
      stack: v.exactOptional(
        v.pipe(
          v.array(
            v.strictObject(
              {
                part: note('What it is.'),
                size: length('Its length along the shaft.'),
                tolerance: v.exactOptional(length('More or less.')),
                gap: v.pipe(
                  v.picklist(['opens', 'fills'], or('opens or fills')),
                  v.description('It makes the gap larger (a case), or fills it (a washer).'),
                ),
              },
              or('stack part'),
            ),
            or('stack'),
          ),
          v.minLength(1, or('stack')),
          v.description('The parts between the two stops.'),
        ),
      ),
    },
    or('end play'),
  ),
  v.description('The end play of a shaft.'),
);

export const END_PLAYS = listed({
  key: 'endplay',
  field: 'endPlays',
  as: 'shaft',
  name: plainName('What the end play is of.'),
  entry: END_PLAY,
  description: 'The end play of each shaft.',
  check: ({ endPlays = [] }, at, findings) => {
    for (const { shaft, measure, shelf: fitted } of endPlays) {
      // How much a shim moves a backlash is the teeth's, and nobody wrote it.
      if (measure !== 'backlash' || !fitted) continue;
      findings.error(at('endplay', shaft, 'shelf'), {
        problem: 'misplaced key',
        key: 'shelf',
        beside: 'measure',
      });
    }
  },
});
