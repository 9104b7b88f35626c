import * as v from 'valibot';
import { PRELOAD_PARTS } from '../train/index.ts';
import { LIMIT, shelf } from './pack.ts';
import { note, or, torque } from './value.ts';

const TORQUE_LIMIT = v.pipe(
  v.strictObject(
    {
      least: v.exactOptional(torque('The least that is right.')),
      most: v.exactOptional(torque('The most that is right.')),
      source: v.exactOptional(note('Where it stands: a manual and its page. Absent: unsourced.')),
      by: v.exactOptional(note('The initials of whoever wrote it down.')),
    },
    or('torque limit'),
  ),
  v.description('A limit of a torque, with its source.'),
);

/** How far bearings are squeezed, the torque that proves it, and the shim that sets it. */
export const PRELOAD = v.pipe(
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

export type PreloadEntry = v.InferOutput<typeof PRELOAD>;
