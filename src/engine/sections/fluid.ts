import * as v from 'valibot';
import { note, or, volume } from '../form/index.ts';
import { SOURCED, whole } from '../entries/index.ts';

/** What the unit is filled with at the end. */
export const FLUID = whole(
  'fluid',
  v.pipe(
    v.strictObject(
      {
        kind: v.exactOptional(note('Which fluid.')),
        fill: v.exactOptional(volume('How much goes in.')),
        ...SOURCED,
      },
      or('fluid to fill'),
    ),
    v.description('What the unit is filled with at the end of the build.'),
  ),
);
