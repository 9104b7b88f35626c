import { CASE, isApplied, isFriction, setGearing, type Train } from '../train/index.ts';
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
  }
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
