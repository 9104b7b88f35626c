import * as v from 'valibot';
import { length, or, pressure } from '../form/index.ts';
import { PLATE_KINDS, SHELF_PARTS } from '../train/index.ts';
import { LIMIT, shelf, tolerance, PACKED_DEVICE, listed } from '../entries/index.ts';

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

/** The plates of a clutch or brake, and by what its clearance is set. */
const PACK = v.pipe(
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

export const PACKS = listed({
  key: 'packs',
  field: 'packs',
  as: 'device',
  name: PACKED_DEVICE,
  entry: PACK,
  description: 'The plates of clutches and brakes, by device.',
});
