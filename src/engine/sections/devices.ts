import * as v from 'valibot';
import { kinds, or, plainName, WAY } from '../form/index.ts';
import { assemble, CASE, type Device } from '../train/index.ts';
import type { Value } from '../yaml/index.ts';
import { MEMBER, byName, type Entry, listOf, mapOf, section } from '../entries/index.ts';

const DEVICE_NAME = plainName('The name of a device.', {
  as: 'device',
  names: 'device',
  own: true,
});
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
// A kind that is missing here does not compile.
const FORMS = {
  clutch: CLUTCH,
  brake: BRAKE,
  band: BAND,
  pawl: PAWL,
  'one-way': ONE_WAY,
} as const satisfies Record<Device['kind'], v.GenericSchema>;
const DEVICE = kinds(
  Object.values(FORMS),
  [
    ['clutch', CLUTCH],
    ['brake', BRAKE],
    ['band', BAND],
    ['pawl', PAWL],
    ['one-way', ONE_WAY],
    ['lets', ONE_WAY],
  ],
  or('device'),
);

export const DEVICES = section({
  key: 'devices',
  form: byName(
    DEVICE_NAME,
    DEVICE,
    'Clutches, brakes, bands, park pawls and one-way clutches, by name.',
  ),
  read: (entries) => ({ devices: listOf(entries, deviceOf) }),
  write: ({ devices }) => new Map(devices.map((its) => [its.name, deviceValue(its)])),
  check: ({ devices }, at, findings) => {
    for (const { kind, name, first, second } of devices) {
      if (first !== second) continue;
      findings.error(at('devices', name, kind), { problem: 'joined to itself', member: first });
    }
  },
  // A device between two members of one body.
  lookAgain: (train, at, findings) => {
    const { bodyOf } = assemble(train);
    for (const { name, first, second } of train.devices) {
      if (bodyOf(first) !== bodyOf(second)) continue;
      findings.warning(at('devices', name), {
        problem: 'one body',
        device: name,
        members: [first, second],
      });
    }
  },
});

function deviceOf(name: string, entry: Entry<typeof DEVICE>): Device {
  if ('clutch' in entry)
    return { kind: 'clutch', name, first: entry.clutch[0], second: entry.clutch[1] };
  if ('brake' in entry) return { kind: 'brake', name, first: entry.brake, second: CASE };
  if ('pawl' in entry) return { kind: 'pawl', name, first: entry.pawl, second: CASE };
  if ('band' in entry) return { kind: 'band', name, first: entry.band, second: CASE };
  const [first, second] = entry['one-way'];
  return { kind: 'one-way', name, first, second, lets: entry.lets };
}

/** As it stands in a file, without its name. */
export function deviceValue(device: Device): Value {
  switch (device.kind) {
    case 'clutch':
      return mapOf({ clutch: [device.first, device.second] });
    case 'brake':
    case 'band':
    case 'pawl':
      return mapOf({ [device.kind]: device.first });
    case 'one-way':
      return mapOf({ 'one-way': [device.first, device.second], lets: device.lets });
  }
}
