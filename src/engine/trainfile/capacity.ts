import * as v from 'valibot';
import { note, or } from './value.ts';

// A thousandth of whatever unit is nothing that anybody has measured.
const above = (most: number, what: Parameters<typeof or>[0], description: string) =>
  v.pipe(
    v.number(what),
    v.minValue(0.001, what),
    v.maxValue(most, what),
    v.description(description),
  );
const size = (description: string) => above(100_000, or('size'), description);
const friction = above(1, or('friction'), 'The coefficient of friction, lining on steel in fluid.');
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
const sourced = {
  source: v.exactOptional(note('Where it stands: a manual and its page. Absent: unsourced.')),
  by: v.exactOptional(note('The initials of whoever wrote it down.')),
};

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
      ...sourced,
    },
    or('capacity'),
  ),
  v.description('The sizes of a multi-plate clutch or brake.'),
);
const STRAP = v.pipe(
  v.strictObject(
    {
      'drum mm': size('The diameter of the drum.'),
      'wrap degrees': above(
        1440,
        or('size'),
        'How far the band goes round; twice for a double wrap.',
      ),
      friction,
      'servo mm': ring('Outer and inner diameter of the servo’s piston.'),
      'springs N': springs,
      lever: v.exactOptional(above(20, or('size'), 'Pull on the band over the servo’s force.')),
      tightens: v.pipe(
        v.picklist(['clockwise', 'anticlockwise'], or('way')),
        v.description(
          'A drum that is pushed this way, seen from the input end, drags the band towards its anchor.',
        ),
      ),
      ...sourced,
    },
    or('capacity'),
  ),
  v.description('The sizes of a band.'),
);
const RATING = v.pipe(
  v.strictObject(
    {
      'torque Nm': size('The torque that it carries; a one-way clutch, the way in which it holds.'),
      ...sourced,
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
      ...sourced,
    },
    or('capacity'),
  ),
  v.description('A torque for each way.'),
);
export const CAPACITY = v.union([PLATES, STRAP, RATING, SIGNED], or('capacity'));

export const ENGINE = v.pipe(
  v.strictObject(
    {
      'torque Nm': v.exactOptional(size('The engine’s greatest torque.')),
      'stall ratio': v.exactOptional(
        v.pipe(
          v.number(or('stall ratio')),
          v.minValue(1, or('stall ratio')),
          v.maxValue(10, or('stall ratio')),
          v.description('The converter’s torque ratio at stall; 1 without a converter.'),
        ),
      ),
      ...sourced,
    },
    or('section'),
  ),
  v.description('What the engine gives.'),
);

/** The keys that tell which of the four a capacity is. */
export const CAPACITY_KEYS = [
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
] as const;

export type CapacityEntry = v.InferOutput<typeof CAPACITY>;
export type EngineEntry = v.InferOutput<typeof ENGINE>;
