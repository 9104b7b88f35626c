import * as v from 'valibot';
import { plainName, or, torque } from '../form/index.ts';
import { PRELOAD_PARTS } from '../train/index.ts';
import { LIMIT, shelf, SOURCED, listed } from '../entries/index.ts';

const TORQUE_LIMIT = v.pipe(
  v.strictObject(
    {
      least: v.exactOptional(torque('The least that is right.')),
      most: v.exactOptional(torque('The most that is right.')),
      ...SOURCED,
    },
    or('torque limit'),
  ),
  v.description('A limit of a torque, with its source.'),
);

/** How far bearings are squeezed, the torque that proves it, and the shim that sets it. */
const PRELOAD = v.pipe(
  v.strictObject(
    {
      turning: v.exactOptional(TORQUE_LIMIT),
      used: v.exactOptional(TORQUE_LIMIT),
      squeeze: v.exactOptional(LIMIT),
      shelf: v.exactOptional(
        shelf(v.picklist(PRELOAD_PARTS, or('preload part')), 'The part that sets the preload.'),
      ),
    },
    or('preload'),
  ),
  v.description('The preload of bearings: the torque that turns them, new or used, or a squeeze.'),
);

export const PRELOADS = listed({
  key: 'preload',
  field: 'preloads',
  as: 'bearings',
  name: plainName('What the bearings are of.'),
  entry: PRELOAD,
  description: 'Bearings that are squeezed on purpose, by name.',
});
