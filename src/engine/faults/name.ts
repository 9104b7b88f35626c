import { CASE, type Device, setGearing, type Train } from '../train/index.ts';
import { everyOilFault, faultText } from './every.ts';
import type { Fault, FrictionFault, OneWayFault } from './fault.ts';

/**
 * What a text such as "low sprag: backwards" means for a train. Where it means nothing: the
 * name or the fault that is not known, and what could stand in its place.
 */
export type NamedFault =
  | { readonly fault: Fault }
  | {
      readonly unknown: 'name' | 'fault' | 'place';
      readonly said: string;
      readonly known: readonly string[];
    };

const FRICTION_FAULTS: readonly FrictionFault[] = [
  'will not apply',
  'will not release',
  'slips',
  'left out',
];
const PAWL_FAULTS: readonly FrictionFault[] = ['will not apply', 'will not release', 'left out'];
const ONE_WAY_FAULTS: readonly OneWayFault[] = ['slips', 'seized', 'backwards', 'left out'];

/**
 * Reads NAME: FAULT. The name is of a device, a join, a gear pair, a set, a set's part or a part
 * of the teardown; a join may say where it is stripped ("main shaft: stripped at rear.ring").
 */
export function faultNamed(text: string, train: Train): NamedFault {
  const colon = text.lastIndexOf(':');
  const name = (colon < 0 ? text : text.slice(0, colon)).trim();
  const said =
    colon < 0
      ? ''
      : text
          .slice(colon + 1)
          .trim()
          .toLowerCase()
          .replace(/\s+/g, ' ');
  const choices = [
    ...faultsOf(name, train),
    ...missing(name, train),
    ...parting(name, train),
    ...everyOilFault(train).filter((fault) => fault.what === 'oil' && fault.name === name),
  ];
  if (choices.length === 0) return { unknown: 'name', said: name, known: nameable(train) };
  const place = /^stripped at (.*)$/.exec(said)?.[1];
  const join = train.joins.find((other) => other.name === name);
  if (place !== undefined && join) {
    const of = join.members.find((member) => member.toLowerCase() === place);
    if (of === undefined) return { unknown: 'place', said: place, known: join.members };
    return { fault: { what: 'join', join: name, is: 'stripped', of } };
  }
  const words = choices.map((fault) => faultText(fault).slice(name.length + 2));
  const fault = choices[words.findIndex((its) => its.toLowerCase() === said)];
  return fault ? { fault } : { unknown: 'fault', said, known: words };
}

/** The faults that a name of the train can have; none for a name that it lacks. */
function faultsOf(name: string, train: Train): Fault[] {
  const device = train.devices.find((other) => other.name === name);
  if (device) return faultsOfDevice(device);
  if (train.joins.some((join) => join.name === name)) {
    return [{ what: 'join', join: name, is: 'stripped' }];
  }
  if (train.pairs.some((pair) => pair.name === name)) {
    return (['stripped', 'left out'] as const).map((is) => ({ what: 'pair', pair: name, is }));
  }
  if (train.sets.some((set) => set.name === name)) {
    return [{ what: 'set', set: name, is: 'left out' }];
  }
  return partFaults(name, train);
}

function faultsOfDevice({ kind, name: device }: Device): Fault[] {
  switch (kind) {
    case 'clutch':
    case 'brake':
    case 'band':
      return FRICTION_FAULTS.map((is) => ({ what: 'device', device, is }));
    case 'pawl':
      return PAWL_FAULTS.map((is) => ({ what: 'device', device, is }));
    case 'one-way':
      return ONE_WAY_FAULTS.map((is) => ({ what: 'one-way', device, is }));
  }
}

// A part may be called after a join, which is stripped, never left out.
function missing(name: string, { teardown = [] }: Train): Fault[] {
  if (!teardown.some((part) => part.name === name)) return [];
  return [{ what: 'part', part: name, is: 'left out' }];
}

// A member that devices hold or turn may come apart from them.
function parting(name: string, train: Train): Fault[] {
  const holds = train.devices.some(({ first, second }) => first === name || second === name);
  return holds && name !== CASE ? [{ what: 'member', member: name, is: 'parted' }] : [];
}

// A planet can seize or lose its teeth; a sun or a ring only lose them.
function partFaults(name: string, train: Train): Fault[] {
  const gearings = train.sets.map((set) => setGearing(train, set));
  const alias = gearings.flatMap(({ welds }) => welds).find((weld) => weld.name === name);
  const member = alias?.members[0] ?? name;
  const faults: Fault[] = [];
  if (gearings.some(({ planets }) => planets.some((planet) => planet.member === member))) {
    faults.push({ what: 'planet', member, is: 'seized' });
  }
  const meshes = gearings.flatMap((gearing) => gearing.meshes);
  if (meshes.some(({ a, b }) => a.member === member || b.member === member)) {
    faults.push({ what: 'wheel', member, is: 'stripped' });
  }
  return faults;
}

function nameable(train: Train): string[] {
  const named = [
    ...train.devices,
    ...train.joins,
    ...train.pairs,
    ...train.sets,
    ...(train.teardown ?? []),
  ];
  const upstream = everyOilFault(train).flatMap((its) => (its.what === 'oil' ? [its.name] : []));
  const parts = train.sets.flatMap((set) => {
    return setGearing(train, set).meshes.flatMap(({ a, b }) => [a.member, b.member]);
  });
  return [...new Set([...named.map(({ name }) => name), ...parts, ...upstream])];
}
