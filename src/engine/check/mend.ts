import { ratioOf, stateOf, underPower } from '../flow/index.ts';
import { compare, opposite, type Rational, signOf } from '../linear/index.ts';
import { type Motion, motionOf, withDevices } from '../motion/index.ts';
import { judge } from '../reckon/index.ts';
import {
  CASE,
  type Device,
  gearsOf,
  type MemberName,
  setGearing,
  type Train,
  type Way,
} from '../train/index.ts';

/** One thing that may be described wrongly, with what would mend it: an edit of the train. */
export type Mend =
  /** A one-way clutch that lets the other way. */
  | { readonly mend: 'turned round'; readonly device: string; readonly lets: Way }
  /** Two devices, each with the other's members. */
  | { readonly mend: 'devices exchanged'; readonly device: string; readonly other: string }
  /** Two members of a set, each where the other is named. */
  | {
      readonly mend: 'members exchanged';
      readonly set: string;
      readonly members: readonly [MemberName, MemberName];
    }
  /** A device with another member in place of one of its own. */
  | {
      readonly mend: 'other member';
      readonly device: string;
      readonly was: MemberName;
      readonly member: MemberName;
    };

/**
 * What, changed alone, leaves a train of which `isOdd` says nothing. A one-way clutch turned round is
 * believed of one odd gear (two are told, more are not); an exchange or another member only of
 * several, if it alone mends them, and the gears of each range then stand in order of their numbers.
 */
export function mendsOf(
  motion: Motion,
  isOdd: (motion: Motion) => boolean,
  oddGears: number,
): Mend[] {
  const { train } = motion;
  const works = (mend: Mend) => !isOdd(mended(motion, mend));
  const turned = train.devices.flatMap((device): Mend[] => {
    if (device.kind !== 'one-way') return [];
    const lets = device.lets === 'clockwise' ? 'anticlockwise' : 'clockwise';
    return [{ mend: 'turned round', device: device.name, lets }];
  });
  const found = turned.filter(works);
  if (found.length > 0) return found.length > 2 ? [] : found;
  if (oddGears < 2) return [];
  let only: Mend | undefined;
  for (const mend of [...exchangesOf(train), ...movesOf(motion)]) {
    if (!works(mend) || !inOrder(mended(motion, mend))) continue;
    if (only) return [];
    only = mend;
  }
  return only ? [only] : [];
}

function mended(motion: Motion, mend: Mend): Motion {
  const { train } = motion;
  const devices = (edit: (device: Device) => Device) =>
    withDevices(motion, { ...train, devices: train.devices.map(edit) });
  switch (mend.mend) {
    case 'turned round':
      return devices((its) =>
        its.name === mend.device && its.kind === 'one-way' ? { ...its, lets: mend.lets } : its,
      );
    case 'devices exchanged': {
      const [a, b] = [deviceOf(train, mend.device), deviceOf(train, mend.other)];
      return devices((its) => (its === a ? placed(its, b) : its === b ? placed(its, a) : its));
    }
    case 'other member':
      return devices((its) => (its.name === mend.device ? moved(its, mend.was, mend.member) : its));
    case 'members exchanged':
      return motionOf(exchanged(train, mend.members));
  }
}

function placed(device: Device, { first, second }: Device): Device {
  return { ...device, first, second };
}

function moved(device: Device, was: MemberName, member: MemberName): Device {
  return device.first === was ? { ...device, first: member } : { ...device, second: member };
}

function exchanged(train: Train, [a, b]: readonly [MemberName, MemberName]): Train {
  const other = (name: MemberName) => (name === a ? b : name === b ? a : name);
  const { input, output, others, joins, pairs, devices } = train;
  return {
    ...train,
    input: other(input),
    output: other(output),
    ...(others && { others: others.map(other) }),
    joins: joins.map((join) => ({ ...join, members: join.members.map(other) })),
    pairs: pairs.map((pair) => {
      const { driver, driven } = pair;
      return {
        ...pair,
        driver: { ...driver, member: other(driver.member) },
        driven: { ...driven, member: other(driven.member) },
      };
    }),
    devices: devices.map((its) => {
      return { ...its, first: other(its.first), second: other(its.second) };
    }),
  };
}

function deviceOf({ devices }: Train, name: string): Device {
  return devices.find((device) => device.name === name) as Device;
}

// Devices of one kind; and the sun, the ring and the carrier of a set, or whatever it has.
function exchangesOf({ devices, sets, ...rest }: Train): Mend[] {
  const train = { devices, sets, ...rest };
  return [
    ...pairsOf(devices).flatMap(([a, b]): Mend[] => {
      const isSame = a.first === b.first && a.second === b.second;
      if (a.kind !== b.kind || isSame) return [];
      return [{ mend: 'devices exchanged', device: a.name, other: b.name }];
    }),
    ...sets.flatMap((set) => {
      const own = setGearing(train, set).members.filter((name) => name.startsWith(`${set.name}.`));
      return pairsOf(own).map((members): Mend => {
        return { mend: 'members exchanged', set: set.name, members };
      });
    }),
  ];
}

// A brake's and a band's second member is the case.
function movesOf({ train, assembly }: Motion): Mend[] {
  const bodies = assembly.bodies.filter((_, body) => body > 0 && !assembly.onPins.has(body));
  return train.devices.flatMap(({ name, first, second }) => {
    return [first, second].flatMap((was) => {
      if (was === CASE) return [];
      return bodies.flatMap(({ label, names }): Mend[] => {
        const isThere = names.includes(first) || names.includes(second);
        return isThere ? [] : [{ mend: 'other member', device: name, was, member: label }];
      });
    });
  });
}

function pairsOf<T>(all: readonly T[]): (readonly [T, T])[] {
  return all.flatMap((a, i) => all.slice(i + 1).map((b) => [a, b] as const));
}

// As the trade counts: the higher the number, the less reduction.
function inOrder(motion: Motion): boolean {
  const { train } = motion;
  return train.ranges.every((range) => {
    const numbered = gearsOf(train, [range])
      .filter(({ gear }) => /^\d+$/u.test(gear))
      .toSorted((a, b) => Number(a.gear) - Number(b.gear));
    const sizes = numbered.flatMap(({ on }): Rational[] => {
      const ruling = judge(motion, underPower(train, on));
      if (stateOf(ruling) !== 'driving') return [];
      const ratio = ratioOf(ruling, 'input');
      return [signOf(ratio) < 0 ? opposite(ratio) : ratio];
    });
    return sizes.every((size, i) => i === 0 || compare(size, sizes[i - 1] as Rational) < 0);
  });
}
