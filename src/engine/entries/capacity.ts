import * as v from 'valibot';
import { kinds, or, WAY } from '../form/index.ts';
import { SOURCED } from './limit.ts';

// A thousandth of whatever unit is nothing that anybody has measured.
const upTo = (most: number, what: Parameters<typeof or>[0], description: string) =>
  v.pipe(
    v.number(what),
    v.minValue(0.001, what),
    v.maxValue(most, what),
    v.description(description),
  );
export const size = (description: string) => upTo(100_000, or('size'), description);
const friction = upTo(1, or('friction'), 'The coefficient of friction, lining on steel in fluid.');
const springs = v.pipe(
  v.number(or('proportion')),
  v.minValue(0, or('proportion')),
  v.maxValue(1_000_000, or('proportion')),
  v.description('The force of the return springs, applied; 0 for none.'),
);
const ring = (description: string) =>
  v.pipe(
    v.strictTuple([size('The outer diameter.'), size('The inner diameter.')], or('ring')),
    v.description(description),
  );
const PLATES = v.pipe(
  v.strictObject(
    {
      faces: v.pipe(
        v.number(or('count')),
        v.integer(or('count')),
        v.minValue(1, or('count')),
        v.maxValue(100, or('count')),
        v.description('Rubbing faces: two a friction disc, one a single-sided one.'),
      ),
      friction,
      'lining mm': ring('Outer and inner diameter of the friction lining.'),
      'piston mm': ring('Outer and inner diameter of the piston.'),
      'springs N': springs,
      presses: v.exactOptional(
        v.pipe(
          v.picklist(['uniform pressure', 'uniform wear'], or('presses')),
          v.description(
            'New linings press evenly, worn-in ones by wear. Absent: uniform pressure.',
          ),
        ),
      ),
      ...SOURCED,
    },
    or('capacity'),
  ),
  v.description('The sizes of a multi-plate clutch or brake.'),
);
const STRAP = v.pipe(
  v.strictObject(
    {
      'drum mm': size('The diameter of the drum.'),
      'wrap degrees': upTo(
        1440,
        or('size'),
        'How far the band goes round; twice for a double wrap.',
      ),
      friction,
      'servo mm': ring('Outer and inner diameter of the servo’s piston.'),
      'springs N': springs,
      lever: v.exactOptional(upTo(20, or('size'), 'Pull on the band over the servo’s force.')),
      tightens: v.pipe(
        WAY,
        v.description(
          'A drum that is pushed this way, seen from the input end, drags the band towards its anchor.',
        ),
      ),
      ...SOURCED,
    },
    or('capacity'),
  ),
  v.description('The sizes of a band.'),
);
const RATING = v.pipe(
  v.strictObject(
    {
      'torque Nm': size('The torque that it carries; a one-way clutch, the way in which it holds.'),
      ...SOURCED,
    },
    or('capacity'),
  ),
  v.description('A torque.'),
);
const SIGNED = v.pipe(
  v.strictObject(
    {
      'clockwise Nm': size('The torque at which its first-named member slips, pushed clockwise.'),
      'anticlockwise Nm': size('The same, pushed anticlockwise.'),
      ...SOURCED,
    },
    or('capacity'),
  ),
  v.description('A torque for each way.'),
);
export const CAPACITY = kinds(
  [PLATES, STRAP, RATING, SIGNED],
  [
    ['faces', PLATES],
    ['lining mm', PLATES],
    ['piston mm', PLATES],
    ['presses', PLATES],
    ['drum mm', STRAP],
    ['wrap degrees', STRAP],
    ['servo mm', STRAP],
    ['tightens', STRAP],
    ['lever', STRAP],
    ['torque Nm', RATING],
    ['clockwise Nm', SIGNED],
    ['anticlockwise Nm', SIGNED],
  ],
  or('capacity'),
);
