import * as v from 'valibot';
import { or } from '../form/index.ts';
import { size, SOURCED, whole } from '../entries/index.ts';

export const ENGINE = whole(
  'engine',
  v.pipe(
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
        ...SOURCED,
      },
      or('section'),
    ),
    v.description('What the engine gives.'),
  ),
);
