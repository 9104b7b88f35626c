import * as v from 'valibot';
import { CARRIED, COVER_NAME } from './name.ts';
import { count, note, or } from './value.ts';

/** A part of the teardown: a person writes what matters and leaves out the rest. */
export const PART = v.pipe(
  v.strictObject(
    {
      carries: v.exactOptional(
        v.pipe(
          v.array(CARRIED, or('carried')),
          v.description('The members, devices and races of one-way clutches that come with it.'),
        ),
      ),
      inner: v.exactOptional(note('What its inner edge engages: splines, lugs, a press fit.')),
      outer: v.exactOptional(note('What its outer edge engages: splines, lugs, a press fit.')),
      face: v.exactOptional(note('The face that looks at the input end.')),
      align: v.exactOptional(note('What must line up: a feed hole, a groove, a lug.')),
      frictions: v.exactOptional(count('friction plates')),
      steels: v.exactOptional(count('steel plates')),
      selective: v.exactOptional(
        v.pipe(
          v.picklist(['yes', 'no'], or('yes or no')),
          v.description('Whether it comes in several thicknesses. Absent: no.'),
        ),
      ),
      refit: v.exactOptional(
        v.pipe(
          v.picklist(['reuse', 'replace'], or('refit')),
          v.description('Whether it goes in again or a new one does.'),
        ),
      ),
      photo: v.exactOptional(note('The file name of a photograph.')),
      covers: v.exactOptional(
        v.pipe(
          v.array(COVER_NAME, or('part names')),
          v.description('Parts that cannot be reached while this one is on.'),
        ),
      ),
      under: v.exactOptional(
        v.pipe(
          v.array(COVER_NAME, or('part names')),
          v.description(
            'Parts that must come off before this one can be reached; [] for none. Absent: the one above it, unless another says that it covers it.',
          ),
        ),
      ),
    },
    or('part'),
  ),
  v.description('A part as it comes off: what it carries, and what to look at.'),
);

export type PartEntry = v.InferOutput<typeof PART>;
