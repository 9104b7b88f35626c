import { assemble } from './body.ts';
import { setGearing } from './gearing.ts';
import { type Part, upOf } from './part.ts';
import { CASE, type Join, type MemberName } from './member.ts';
import { type Device, isFriction, type Train } from './train.ts';

/**
 * The parts that cover one. Where neither it nor they say which, it is the part that comes off
 * just before it; the first to come off from an end of the unit has none.
 */
export function coversOf(teardown: readonly Part[], part: Part): string[] {
  const saying = teardown.filter(({ covers }) => covers?.includes(part.name));
  const said = saying.map(({ name }) => name);
  if (part.under) return [...new Set([...part.under, ...said])];
  if (said.length > 0) return said;
  const before = teardown[teardown.indexOf(part) - 1];
  const up = upOf(teardown);
  return before && up(before) === up(part) ? [before.name] : [];
}

/** Whether what keeps hands off a part is only taken to be the one above it: the file does not say. */
export function reachAssumed(teardown: readonly Part[], part: Part): boolean {
  const said = part['hidden by'] ?? part.under;
  const covered = teardown.some(({ covers }) => covers?.includes(part.name));
  return said === undefined && !covered && hidersOf(teardown, part).length > 0;
}

/** The parts that keep hands off one: as it says, or those that cover it. */
export function hidersOf(teardown: readonly Part[], part: Part): readonly string[] {
  return part['hidden by'] ?? coversOf(teardown, part);
}

/** What of a one-way clutch parts can carry: all of it but the races, or a race. */
export function piecesOf({ name, kind }: Device): string[] {
  return kind === 'one-way' ? [name, `${name}.inner`, `${name}.outer`] : [name];
}

/** One name for each thing that has two: the carrier of planets that are shared, and they. */
export function ownName(train: Train): (name: MemberName) => MemberName {
  const welds = train.sets.flatMap((set) => setGearing(train, set).welds);
  const own = new Map(welds.map(({ name, members }) => [name, members[0] as MemberName]));
  const named = (name: MemberName): MemberName => {
    const other = own.get(name);
    return other === undefined ? name : named(other);
  };
  return named;
}

/** Which part carries a name (by its `ownName`); the first, where a file says it twice. */
export function carriersOf(train: Train): ReadonlyMap<string, Part> {
  const own = ownName(train);
  const carriers = new Map<string, Part>();
  for (const part of train.teardown ?? []) {
    for (const name of part.carries.map(own)) if (!carriers.has(name)) carriers.set(name, part);
  }
  return carriers;
}

/**
 * What no part carries yet: devices (a one-way clutch may come as its two races), wheels and carriers
 * of sets, and bodies, each by one name.
 */
export function uncarried(train: Train): string[] {
  const carriers = carriersOf(train);
  const own = ownName(train);
  const forgotten = train.devices.flatMap((device): string[] => {
    const [whole = '', ...races] = piecesOf(device);
    if (carriers.has(whole)) return [];
    const missing = races.filter((race) => !carriers.has(race));
    return missing.length === 1 ? missing : missing.length === 0 && races.length > 0 ? [] : [whole];
  });
  const gearings = train.sets.map((set) => setGearing(train, set));
  const planets = new Set(gearings.flatMap((its) => its.planets.map(({ member }) => member)));
  const wheels = gearings.flatMap((its) => its.members.map(own));
  const members = new Set(wheels.filter((wheel) => !planets.has(wheel)));
  forgotten.push(...[...members].filter((member) => !carriers.has(member)));
  for (const { label, names } of assemble(train).bodies) {
    const told = names.some((name) => carriers.has(own(name)) || members.has(own(name)));
    const planet = names.some((name) => planets.has(own(name)));
    if (!told && !planet && !names.includes(CASE)) forgotten.push(label);
  }
  return forgotten;
}

/**
 * Whether all the oil goes through a part: of three or more clutches, brakes and bands that parts
 * carry it feeds every one. That is a valve body, and it covers the ports in the case through
 * which air is put on them, so air comes before it; a pump or a support feeds some, between port
 * and piston, and air comes after. Common practice, no source.
 */
export function coversPorts(train: Train, { feeds = [] }: Part): boolean {
  const carriers = carriersOf(train);
  const own = ownName(train);
  const aired = train.devices.filter((device) => {
    return isFriction(device) && carriers.has(own(device.name));
  });
  return aired.length >= 3 && aired.every(({ name }) => feeds.includes(name));
}

/**
 * The train with only some of its parts on: wheels mesh where both are there, members are joined
 * where both are, devices hold where they and both their members are. A planet comes with its
 * carrier; what no part carries is there from the start. Names stay, so that all may be asked.
 */
export function halfBuilt(train: Train, isOn: (part: Part) => boolean): Train {
  const there = presence(train, (part) => !part.missing && isOn(part));
  const gearings = train.sets.map((set) => setGearing(train, set));
  const absent = gearings
    .flatMap(({ members, planets }) => [...members, ...planets.map(({ member }) => member)])
    .filter((name) => !there(name));
  const carriers = carriersOf(train);
  const own = ownName(train);
  const parts = (device: Device) => piecesOf(device).every(there.carried);
  return {
    ...train,
    sets: train.sets.map((set) => ({ ...set, stripped: [...(set.stripped ?? []), ...absent] })),
    pairs: train.pairs.map((pair) => {
      return there(pair.driver.member) && there(pair.driven.member)
        ? pair
        : { ...pair, stripped: true };
    }),
    joins: train.joins.flatMap((join) => {
      const members = join.members.filter(there);
      if (there(join.name)) return members.length > 0 ? [{ ...join, members }] : [];
      return onePiece(members, carriers, own);
    }),
    devices: train.devices.map((device) => {
      const whole = parts(device) && there(device.first) && there(device.second);
      return whole ? device : { ...device, stuck: 'open' };
    }),
  };
}

/** Members that no join holds together any more: those on one part are one piece still. */
export function onePiece(
  members: readonly MemberName[],
  carriers: ReadonlyMap<string, Part>,
  own: (name: MemberName) => MemberName,
): Join[] {
  const pieces = new Map<Part, MemberName[]>();
  for (const member of members) {
    const part = carriers.get(own(member));
    if (part) pieces.set(part, [...(pieces.get(part) ?? []), member]);
  }
  return [...pieces.values()].flatMap(([name, ...others]): Join[] => {
    return name === undefined || others.length === 0 ? [] : [{ name, members: others }];
  });
}

interface Presence {
  (member: MemberName): boolean;
  /** The same of a name that is no member: there, unless a part that is not on carries it. */
  readonly carried: (name: string) => boolean;
}

function presence(train: Train, isOn: (part: Part) => boolean): Presence {
  const own = ownName(train);
  const carriers = carriersOf(train);
  const planets = train.sets.flatMap((set) => setGearing(train, set).planets);
  const pins = new Map(planets.map(({ member, carrier }) => [member, carrier]));
  const joins = new Map(train.joins.map((join) => [join.name, join]));
  const carried = (name: string) => {
    const part = carriers.get(name);
    return part === undefined || isOn(part);
  };
  // A join that no part carries by its name is there as soon as one of its members is.
  const there = (member: MemberName, asked: ReadonlySet<MemberName>): boolean => {
    const name = own(member);
    if (name === CASE || asked.has(name)) return name === CASE;
    if (carriers.has(name)) return carried(name);
    const inner = new Set([...asked, name]);
    const pin = pins.get(name);
    if (pin !== undefined) return there(pin, inner);
    const join = joins.get(name);
    return join === undefined || join.members.some((other) => there(other, inner));
  };
  return Object.assign((member: MemberName) => there(member, new Set()), { carried });
}
