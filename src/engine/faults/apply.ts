import {
  type Device,
  type GearSet,
  halfBuilt,
  setGearing,
  type Train,
  type Way,
} from '../train/index.ts';
import { rangesByOil } from '../controls/index.ts';
import type { OilFault } from '../hydraulics/index.ts';
import type { Fault } from './fault.ts';

/**
 * The train with something wrong; its `healthy` is the train that has nothing wrong. Throws where
 * the fault names what the train lacks.
 */
export function applyFault(train: Train, fault: Fault): Train {
  refuseStranger(train, fault);
  return { ...edited(train, fault), healthy: train.healthy ?? train };
}

// What names a device, a part, a member or a planet is told where that is looked for.
function refuseStranger(train: Train, fault: Fault): void {
  const { joins, pairs, sets } = train;
  const among = (name: string, all: readonly { readonly name: string }[]) => {
    if (all.some((its) => its.name === name)) return;
    throw new RangeError(
      `nothing is called ${name}: there are ${all.map((its) => its.name).join(', ')}`,
    );
  };
  if (fault.what === 'join') among(fault.join, joins);
  if (fault.what === 'pair') among(fault.pair, pairs);
  if (fault.what === 'set') among(fault.set, sets);
  if (fault.what === 'wheel') {
    const gearings = sets.map((set) => setGearing(train, set));
    const names = gearings.flatMap(({ members, planets }) => [
      ...members,
      ...planets.map(({ member }) => member),
    ]);
    among(
      fault.member,
      [...new Set(names)].map((name) => ({ name })),
    );
  }
}

function edited(train: Train, fault: Fault): Train {
  switch (fault.what) {
    case 'device':
      return withDevice(train, fault.device, (device) => {
        return { ...device, stuck: STUCK[fault.is] };
      });
    case 'one-way':
      return withDevice(train, fault.device, (device) => {
        if (device.kind !== 'one-way') throw new Error(`${device.name} is no one-way clutch`);
        if (fault.is === 'backwards') return { ...device, lets: other(device.lets) };
        return { ...device, stuck: fault.is === 'seized' ? 'locked' : 'open' };
      });
    case 'join':
      return withoutSplines(train, fault.join, fault.of);
    case 'member':
      return partedFrom(train, fault.member);
    case 'wheel':
      return { ...train, sets: train.sets.map((set) => strip(set, [fault.member])) };
    case 'pair': {
      const pairs = train.pairs.map((pair) => {
        return pair.name === fault.pair ? { ...pair, stripped: true } : pair;
      });
      return { ...train, pairs };
    }
    case 'planet': {
      const carrier = carrierOf(train, fault.member);
      return { ...train, joins: [...train.joins, { name: carrier, members: [fault.member] }] };
    }
    case 'set': {
      const sets = train.sets.map((set) => {
        if (set.name !== fault.set) return set;
        return strip(
          set,
          setGearing(train, set).meshes.map((mesh) => mesh.a.member),
        );
      });
      return { ...train, sets };
    }
    case 'part':
      return withoutPart(train, fault.part);
    case 'oil':
      return withOil(train, fault);
  }
}

// What the devices get is worked out anew, gear by gear.
function withOil(train: Train, fault: OilFault): Train {
  const faulty = { ...train, oilFaults: [...(train.oilFaults ?? []), fault] };
  return { ...faulty, ranges: rangesByOil(faulty) };
}

const STUCK = {
  'will not apply': 'open',
  'left out': 'open',
  slips: 'slipping',
  leaks: 'slipping',
  'will not release': 'locked',
} as const;

// What is splined to a member with teeth stays together, as a drum does; a hub without teeth
// loses each by itself.
function partedFrom(train: Train, member: string): Train {
  const at = train.devices.filter(({ first, second }) => first === member || second === member);
  if (at.length === 0) throw new Error(`no device holds or turns ${member}`);
  const drum = hasLoad(train, member);
  const devices = train.devices.map((device) => {
    if (!at.includes(device)) return device;
    const loose = drum ? `${member}, parted` : `${member}, parted from ${device.name}`;
    const end = (name: string) => (name === member ? loose : name);
    return { ...device, first: end(device.first), second: end(device.second) };
  });
  // The member itself stays, for hands and words.
  const kept = { name: member, members: [member] };
  return { ...train, devices, joins: [...train.joins, kept] };
}

function hasLoad({ input, output, joins, pairs }: Train, member: string): boolean {
  if (member.includes('.') || member === input || member === output) return true;
  if (pairs.some(({ driver, driven }) => [driver.member, driven.member].includes(member))) {
    return true;
  }
  return joins.some(({ name, members }) => name === member || members.includes(member));
}

function withoutPart(train: Train, name: string): Train {
  const { teardown = [] } = train;
  if (!teardown.some((part) => part.name === name)) throw new Error(`no part ${name}`);
  const left = teardown.map((part) => (part.name === name ? { ...part, missing: true } : part));
  return halfBuilt({ ...train, teardown: left }, () => true);
}

function withDevice(train: Train, name: string, edit: (device: Device) => Device): Train {
  if (!train.devices.some((device) => device.name === name)) throw new Error(`no device ${name}`);
  const devices = train.devices.map((device) => (device.name === name ? edit(device) : device));
  return { ...train, devices };
}

function withoutSplines(train: Train, name: string, of: string | undefined): Train {
  const joins = train.joins.flatMap((join) => {
    if (join.name !== name) return [join];
    const members = of === undefined ? [] : join.members.filter((member) => member !== of);
    return members.length > 0 ? [{ ...join, members }] : [];
  });
  return { ...train, joins };
}

function strip(set: GearSet, wheels: readonly string[]): GearSet {
  return { ...set, stripped: [...(set.stripped ?? []), ...wheels] };
}

function carrierOf(train: Train, planet: string): string {
  for (const set of train.sets) {
    const found = setGearing(train, set).planets.find(({ member }) => member === planet);
    if (found) return found.carrier;
  }
  throw new Error(`no planet ${planet}`);
}

function other(way: Way): Way {
  return way === 'clockwise' ? 'anticlockwise' : 'clockwise';
}
