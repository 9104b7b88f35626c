import { CASE, isApplied, isFriction, setGearing, type Train } from '../train/index.ts';
import { circuitOf, type OilFault } from '../hydraulics/index.ts';
import type { Fault } from './fault.ts';

/**
 * Everything that can be wrong with a train, one thing at a time, in the order of the file. A
 * part of the teardown that carries nothing (a washer, a gasket) changes nothing that turns.
 * `slipping`: friction devices that hold with a part of their strength, too.
 */
export function everyFault(train: Train, { slipping = false } = {}): Fault[] {
  return [
    ...train.devices.flatMap((device): Fault[] => {
      const slips = { what: 'device', device: device.name, is: 'slips' } as const;
      return [...deviceFaults(device), ...(slipping && isFriction(device) ? [slips] : [])];
    }),
    ...train.joins.flatMap(({ name, members }): Fault[] => {
      return members.map((of) => ({ what: 'join', join: name, is: 'stripped', of }));
    }),
    ...train.sets.flatMap((set) => toothFaults(train, set.name)),
    ...train.pairs.map(({ name }): Fault => ({ what: 'pair', pair: name, is: 'stripped' })),
    ...(train.teardown ?? []).flatMap(({ name, carries }): Fault[] => {
      return carries.length === 0 ? [] : [{ what: 'part', part: name, is: 'left out' }];
    }),
  ];
}

/** Every member, beside the case, that two devices or more hold or turn: parted from them. */
export function everyParting(train: Train): Fault[] {
  const ends = train.devices.flatMap(({ first, second }) => [first, second]);
  const members = [...new Set(ends)].filter((member) => {
    return member !== CASE && ends.filter((end) => end === member).length > 1;
  });
  return members.map((member) => ({ what: 'member', member, is: 'parted' }));
}

/** A fault as a person would write it: "low sprag: backwards". `faultNamed` reads it back. */
export function faultText(fault: Fault): string {
  switch (fault.what) {
    case 'device':
    case 'one-way':
      return `${fault.device}: ${fault.is}`;
    case 'join':
      return `${fault.join}: stripped${fault.of === undefined ? '' : ` at ${fault.of}`}`;
    case 'member':
    case 'wheel':
    case 'planet':
      return `${fault.member}: ${fault.is}`;
    case 'pair':
      return `${fault.pair}: ${fault.is}`;
    case 'set':
      return `${fault.set}: ${fault.is}`;
    case 'part':
      return `${fault.part}: ${fault.is}`;
    case 'oil':
      return `${fault.name}: ${oilText(fault)}`;
  }
}

function oilText(fault: OilFault): string {
  if (fault.is === 'stuck') return `stuck in position ${fault.at}`;
  if (fault.is === 'swapped') return `wires swapped with ${fault.with}`;
  return fault.is === 'joined' ? `joined to ${fault.with}` : fault.is;
}

/** Everything that can be wrong upstream of the devices, one thing at a time, in the file's order. */
export function everyOilFault({ controls }: Train): Fault[] {
  if (!controls) return [];
  const { solenoids, valves, passages, servos } = circuitOf(controls);
  const oil = (fault: OilFault): Fault => ({ what: 'oil', ...fault });
  const lines = new Set(servos.flatMap(({ chambers }) => chambers.map(({ line }) => line)));
  const names = solenoids.map(({ name }) => name);
  return [
    ...names.flatMap((name) =>
      (['never flows', 'always flows', 'no current'] as const).map((is) =>
        oil({ part: 'solenoid', name, is }),
      ),
    ),
    ...names.flatMap((name, i) =>
      names.slice(i + 1).map((other) => oil({ part: 'wires', name, is: 'swapped', with: other })),
    ),
    ...valves.flatMap(({ name, positions, stays }): Fault[] => {
      if (stays) return [oil({ part: 'ball', name, is: 'left out' })];
      const stuck = positions.map((_, i) => oil({ part: 'valve', name, is: 'stuck', at: i + 1 }));
      return [...stuck, oil({ part: 'valve', name, is: 'spring broken' })];
    }),
    ...passages.flatMap(({ name, oneWay }): Fault[] => {
      if (name === undefined) return [];
      return [
        oil(
          oneWay
            ? { part: 'ball', name, is: 'left out' }
            : { part: 'orifice', name, is: 'blocked' },
        ),
      ];
    }),
    ...[...lines].flatMap((name) =>
      (['leaks', 'blocked'] as const).map((is) => oil({ part: 'line', name, is })),
    ),
    // A gasket or a porous wall between two lines, either way round the same.
    ...[...lines].flatMap((name, i) =>
      [...lines]
        .slice(i + 1)
        .map((other) => oil({ part: 'line', name, is: 'joined', with: other })),
    ),
  ];
}

function deviceFaults(device: Train['devices'][number]): Fault[] {
  const { name } = device;
  if (isApplied(device)) {
    return (['will not apply', 'will not release'] as const).map((is) => {
      return { what: 'device', device: name, is };
    });
  }
  return (['slips', 'seized', 'backwards', 'left out'] as const).map((is) => {
    return { what: 'one-way', device: name, is };
  });
}

// Each wheel of a set without its teeth, each planet seized; a shared planet is its owner's.
function toothFaults(train: Train, name: string): Fault[] {
  const set = train.sets.find((other) => other.name === name);
  if (!set) return [];
  const { meshes, planets } = setGearing(train, set);
  const wheels = new Set(meshes.flatMap(({ a, b }) => [a.member, b.member]));
  const own = [...wheels].filter((member) => member.startsWith(`${name}.`));
  return [
    ...own.map((member): Fault => ({ what: 'wheel', member, is: 'stripped' })),
    ...planets.map(({ member }): Fault => ({ what: 'planet', member, is: 'seized' })),
  ];
}
