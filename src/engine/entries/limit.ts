import * as v from 'valibot';
import { length, note, or } from '../form/index.ts';

// What sections of measured things share: a limit, a shelf of parts, where a figure stands.

/** Where a figure stands, and who wrote it down. */
export const SOURCED = {
  source: v.exactOptional(note('Where it stands: a manual and its page. Absent: unsourced.')),
  by: v.exactOptional(note('The initials of whoever wrote it down.')),
};

export const tolerance = v.exactOptional(length('More or less.'));

export const LIMIT = v.pipe(
  v.strictObject(
    {
      least: v.exactOptional(length('The least that is right.')),
      most: v.exactOptional(length('The most that is right.')),
      ...SOURCED,
    },
    or('limit'),
  ),
  v.description('A limit of the unit, with its source.'),
);

/** A part that comes in several thicknesses. */
export function shelf<Part extends v.GenericSchema>(part: Part, description: string) {
  return v.pipe(
    v.strictObject(
      {
        part,
        fitted: length('The one that is in while the gap is measured.'),
        sizes: v.pipe(
          v.array(length('A thickness that can be had.'), or('lengths')),
          v.minLength(1, or('lengths')),
          v.description('The thicknesses that can be had.'),
        ),
        tolerance,
      },
      or('shelf'),
    ),
    v.description(description),
  );
}
