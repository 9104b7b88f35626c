import * as v from 'valibot';
import { note, or } from '../form/index.ts';
import { whole } from '../entries/index.ts';

const within = (least: number, most: number, what: 'tyre' | 'final drive', description: string) =>
  v.pipe(
    v.number(or(what)),
    v.minValue(least, or(what)),
    v.maxValue(most, or(what)),
    v.description(description),
  );

export const CAR = whole(
  'car',
  v.pipe(
    v.strictObject(
      {
        'tyre mm': within(
          200,
          2500,
          'tyre',
          'The diameter on which the loaded tyre rolls: twice the height of the axle.',
        ),
        'final drive': v.exactOptional(
          within(
            0.2,
            20,
            'final drive',
            'Turns of the train’s output for one of the wheels; absent: 1, the output is a half shaft.',
          ),
        ),
        source: v.exactOptional(note('Where it stands, or who measured it.')),
        by: v.exactOptional(note('The initials of whoever wrote it down.')),
      },
      or('section'),
    ),
    v.description('What stands between the train’s output and the road.'),
  ),
);
