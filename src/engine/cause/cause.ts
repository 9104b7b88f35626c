import { everyFault, everyParting, type Fault } from '../faults/index.ts';
import { BESIDE, type CauseWord, type Experience } from '../experience/index.ts';
import { type GearSet, isFriction, setGearing, type Train } from '../train/index.ts';

/** One thing that may be wrong: with the train (a fault), beside it, or nothing at all. */
export interface Cause {
  readonly cause: CauseWord;
  /** None where the train itself is in order; two where it takes two to explain what was seen. */
  readonly faults: readonly Fault[];
  /** The member whose thrust washer it is. */
  readonly at?: string;
  /** Before anything is seen, of all causes together 1. */
  readonly prior: number;
  /** Two causes at once. */
  readonly both?: readonly [Cause, Cause];
}

/** What may be wrong with a train, in the order of the file; nothing that has no weight. */
export function causesOf(train: Train, experience: Experience): Cause[] {
  const faults = [...everyFault(train), ...weaknesses(train), ...everyParting(train)];
  const inTrain = faults.map((fault) => ({ cause: kindOf(fault), faults: [fault] }));
  const washers = train.sets.flatMap((set) => {
    return membersOf(train, set).map((at) => {
      return { cause: 'thrust washer left out' as const, faults: [], at };
    });
  });
  const fed = train.devices.filter(isFriction).map(({ name: device }) => {
    const is = 'will not release' as const;
    const fault: Fault = { what: 'device', device, is };
    return { cause: 'device fed by mistake' as const, faults: [fault] };
  });
  const beside = BESIDE.map((cause) => ({ cause, faults: [] }));
  const weighed = [...inTrain, ...fed, ...washers, ...beside]
    .map((its) => ({ ...its, weight: experience.causes[its.cause] }))
    .filter(({ weight }) => weight > 0);
  const sum = weighed.reduce((total, { weight }) => total + weight, 0);
  return weighed.map(({ weight, ...its }) => ({ ...its, prior: weight / sum }));
}

/** The wheels and the carrier of a set that turn about its axis. */
export function membersOf(train: Train, set: GearSet): string[] {
  const { meshes, planets } = setGearing(train, set);
  const pinned = new Set(planets.map(({ member }) => member));
  const wheels = meshes.flatMap(({ a, b }) => [a.member, b.member]);
  const all = [...wheels, ...planets.map(({ carrier }) => carrier)];
  return [...new Set(all)].filter((member) => {
    return !pinned.has(member) && member.startsWith(`${set.name}.`);
  });
}

// Each friction device with a part of its strength.
function weaknesses({ devices }: Train): Fault[] {
  return devices.filter(isFriction).flatMap(({ name }) => {
    return (['slips', 'leaks'] as const).map(
      (is) => ({ what: 'device', device: name, is }) as const,
    );
  });
}

function kindOf(fault: Fault): CauseWord {
  switch (fault.what) {
    case 'device':
      return fault.is === 'left out' ? 'device will not apply' : `device ${fault.is}`;
    case 'one-way':
      return `one-way clutch ${fault.is}`;
    case 'join':
    case 'member':
      return 'splines stripped';
    case 'wheel':
    case 'pair':
    case 'set':
      return 'teeth stripped';
    case 'part':
      return 'part left out';
    case 'planet':
      return 'planet seized';
    case 'oil':
      return 'control';
  }
}
