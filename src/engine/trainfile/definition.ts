import * as v from 'valibot';
import {
  APPLIED_DEVICE,
  BEARINGS_NAME,
  DEVICE_NAME,
  END_NAME,
  FINAL_PAIR,
  GEAR_NAME,
  JOIN_NAME,
  MEMBER,
  PACKED_DEVICE,
  SIZED_DEVICE,
  PAIR_NAME,
  PART_NAME,
  RANGE_NAME,
  SET_BAND,
  SET_NAME,
  SHAFT_NAME,
  WORN_NAME,
} from './name.ts';
import { BAND_SETTING } from './band.ts';
import { CAPACITY, CAPACITY_KEYS, ENGINE } from './capacity.ts';
import { CAR } from './car.ts';
import { END_PLAY } from './endplay.ts';
import { PACK } from './pack.ts';
import { FLUID, PART } from './part.ts';
import { BEVEL, PAIR, PLAIN, SET, SHARING, STEPPED, WHEELS } from './set.ts';
import { PRELOAD } from './preload.ts';
import { WEAR_CHECK } from './wear.ts';
import { or, teeth, text } from './value.ts';

// The train file, defined once: the reader walks these definitions and the JSON Schema is
// made from them. The message of a definition is what was expected (`Expected`).

const gearWheel = (description: string) =>
  v.pipe(v.strictTuple([MEMBER, teeth('the wheel')], or('wheel')), v.description(description));
export const GEAR_PAIR = v.pipe(
  v.strictObject(
    {
      driver: gearWheel('The member that drives, and its teeth.'),
      driven: gearWheel('The member that is driven, and its teeth.'),
      kind: v.exactOptional(
        v.pipe(
          v.picklist(['external', 'internal', 'chain'], or('pair kind')),
          v.description(
            'External wheels turn opposite ways; internal ones and a chain turn the same way. Absent: external.',
          ),
        ),
      ),
    },
    or('gear pair'),
  ),
  v.description('Two wheels on fixed axes, parallel to the main one.'),
);

const twoMembers = (description: string) =>
  v.pipe(v.strictTuple([MEMBER, MEMBER], or('two members')), v.description(description));
const CLUTCH = v.pipe(
  v.strictObject({ clutch: twoMembers('The two members that it joins.') }, or('device')),
  v.description('A multi-plate clutch: joins two members.'),
);
const BRAKE = v.pipe(
  v.strictObject({ brake: MEMBER }, or('device')),
  v.description('A multi-plate brake: holds a member to the case.'),
);
const BAND = v.pipe(
  v.strictObject({ band: MEMBER }, or('device')),
  v.description('A band: holds a member to the case.'),
);
const WAY = v.picklist(['clockwise', 'anticlockwise'], or('way'));
const ONE_WAY = v.pipe(
  v.strictObject(
    {
      'one-way': twoMembers('The inner member, then the outer.'),
      lets: v.pipe(
        WAY,
        v.description('How the inner member may turn against the outer, seen from the input end.'),
      ),
    },
    or('device'),
  ),
  v.description(
    'A one-way clutch: lets its inner member turn one way against the outer, and holds it the other way.',
  ),
);
const PAWL = v.pipe(
  v.strictObject({ pawl: MEMBER }, or('device')),
  v.description(
    'A park pawl: a tooth that the selector lays into a member, and holds it to the case.',
  ),
);
export const DEVICE = v.union([CLUTCH, BRAKE, BAND, PAWL, ONE_WAY], or('device'));

/**
 * The keys that tell what kind a set, a device or a capacity is, the first of them that stands there; a
 * set with none of them is a plain one.
 */
export const TELLING: readonly (readonly [key: string, definition: v.GenericSchema])[] = [
  ['sides', BEVEL],
  ['wheels', WHEELS],
  ['carried', WHEELS],
  ['meshes', WHEELS],
  ['shares', SHARING],
  ['steps', STEPPED],
  ['pairs', PAIR],
  ['inner', PAIR],
  ['outer', PAIR],
  ['sun', PLAIN],
  ['ring', PLAIN],
  ['planets', PLAIN],
  ['planet', PLAIN],
  ['clutch', CLUTCH],
  ['brake', BRAKE],
  ['band', BAND],
  ['pawl', PAWL],
  ['one-way', ONE_WAY],
  ['lets', ONE_WAY],
  ...CAPACITY_KEYS,
];

/** The version of the file form that this reader knows. */
export const VERSION = 1;

const section = <Key extends v.GenericSchema<string, string>, Value extends v.GenericSchema>(
  key: Key,
  value: Value,
  description: string,
) => v.pipe(v.nullish(v.record(key, value, or('section'))), v.description(description));

export const FILE = v.strictObject(
  {
    holdturn: v.pipe(
      v.literal(VERSION, or('version')),
      v.description('The version of the file form: 1.'),
    ),
    name: v.exactOptional(text('What the train is called.')),
    about: v.exactOptional(text('A paragraph for the reader.')),
    input: v.pipe(
      MEMBER,
      v.description('The member that the engine turns. Clockwise is seen from this end.'),
    ),
    output: v.pipe(
      v.union(
        [MEMBER, v.pipe(v.array(MEMBER, or('members')), v.minLength(1, or('members')))],
        or('members'),
      ),
      v.description(
        'The member that drives the load; or several, as [left half shaft, right half shaft].',
      ),
    ),
    forward: v.exactOptional(
      v.pipe(
        WAY,
        v.description(
          'How the output turns as the vehicle goes forward, seen from the input end. Absent: as most of the gears that drive turn it.',
        ),
      ),
    ),
    'final drive': v.exactOptional(
      v.pipe(
        v.union(
          [
            FINAL_PAIR,
            v.pipe(v.array(FINAL_PAIR, or('gear pairs')), v.minLength(1, or('gear pairs'))),
          ],
          or('gear pairs'),
        ),
        v.description(
          'The gear pair behind the gears, or several: overdrive and reduction are told of what stands before.',
        ),
      ),
    ),
    ends: v.exactOptional(
      v.pipe(
        v.strictTuple([END_NAME, END_NAME], or('two ends')),
        v.description(
          'What the two ends of the unit are called, the input end first, as [pump end, cover end].',
        ),
      ),
    ),
    sets: section(SET_NAME, SET, 'Planetary sets, by name.'),
    'gear pairs': section(PAIR_NAME, GEAR_PAIR, 'Pairs of wheels on fixed axes, by name.'),
    joined: section(
      JOIN_NAME,
      v.pipe(v.array(MEMBER, or('members')), v.minLength(1, or('members'))),
      'Members that are splined, tabbed or made in one piece, by the name of the one member they make.',
    ),
    devices: section(
      DEVICE_NAME,
      DEVICE,
      'Clutches, brakes, bands, park pawls and one-way clutches, by name.',
    ),
    ranges: section(
      RANGE_NAME,
      v.nullish(
        v.record(
          GEAR_NAME,
          v.pipe(
            v.array(APPLIED_DEVICE, or('devices')),
            v.description('The devices that are applied.'),
          ),
          or('section'),
        ),
      ),
      'What is applied in each gear of each position of the selector.',
    ),
    teardown: section(
      PART_NAME,
      v.nullish(PART),
      'The parts, by name, in the order in which they come off.',
    ),
    capacities: section(SIZED_DEVICE, CAPACITY, 'How much each device can carry, by device.'),
    engine: v.exactOptional(ENGINE),
    car: v.exactOptional(CAR),
    fluid: v.exactOptional(FLUID),
    endplay: section(SHAFT_NAME, END_PLAY, 'The end play of each shaft.'),
    preload: section(BEARINGS_NAME, PRELOAD, 'Bearings that are squeezed on purpose, by name.'),
    bands: section(SET_BAND, BAND_SETTING, 'What sets the clearance of each band at its drum.'),
    wear: section(
      WORN_NAME,
      WEAR_CHECK,
      'What wears and is measured: bushings, planets, the pump, springs.',
    ),
    packs: section(PACKED_DEVICE, PACK, 'The plates of clutches and brakes, by device.'),
  },
  or('section'),
);

export type SetEntry = v.InferOutput<typeof SET>;
export type PairEntry = v.InferOutput<typeof GEAR_PAIR>;
export type DeviceEntry = v.InferOutput<typeof DEVICE>;
