import * as v from 'valibot';
import { PLATE_KINDS, SHELF_PARTS } from '../train/index.ts';
import { length, note, or, pressure } from './value.ts';

const tolerance = v.exactOptional(length('More or less.'));

const PLATE = v.pipe(
  v.strictObject(
    {
      kind: v.pipe(v.picklist(PLATE_KINDS, or('plate kind')), v.description('Which plate it is.')),
      thickness: length('How thick it is, new.'),
      tolerance,
      coned: v.exactOptional(length('Coned on purpose, by so much.')),
      squash: v.exactOptional(length('Of a cushion plate: how much thinner air makes it.')),
      at: v.exactOptional(pressure('The pressure of that air.')),
    },
    or('plate'),
  ),
  v.description('A plate of a pack.'),
);

export const LIMIT = v.pipe(
  v.strictObject(
    {
      least: v.exactOptional(length('The least that is right.')),
      most: v.exactOptional(length('The most that is right.')),
      source: v.exactOptional(note('Where it stands: a manual and its page. Absent: unsourced.')),
      by: v.exactOptional(note('The initials of whoever wrote it down.')),
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

/** The plates of a clutch or brake, and by what its clearance is set. */
export const PACK = v.pipe(
  v.strictObject(
    {
      plates: v.pipe(
        v.array(PLATE, or('plates')),
        v.minLength(1, or('plates')),
        v.description('From the piston to the snap ring.'),
      ),
      depth: v.exactOptional(
        v.pipe(
          v.strictObject(
            { size: length('From the piston, at rest, to the snap ring.'), tolerance },
            or('depth'),
          ),
          v.description('The room that the plates and the clearance fill together.'),
        ),
      ),
      shelf: v.exactOptional(
        shelf(v.picklist(SHELF_PARTS, or('shelf part')), 'The part by which the clearance is set.'),
      ),
      limits: v.exactOptional(
        v.pipe(
          v.strictObject(
            {
              clearance: v.exactOptional(LIMIT),
              'each friction': v.exactOptional(LIMIT),
              friction: v.exactOptional(LIMIT),
              steel: v.exactOptional(LIMIT),
              cone: v.exactOptional(LIMIT),
            },
            or('section'),
          ),
          v.description('Clearance, clearance for each friction, thicknesses, and the cone.'),
        ),
      ),
    },
    or('pack'),
  ),
  v.description('A pack of plates as it lies, and its limits.'),
);

export type PackEntry = v.InferOutput<typeof PACK>;
