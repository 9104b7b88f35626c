import { CASE, type GearSet, type Train, type Way } from '../src/engine/train/index.ts';

// Trains that are like another but for one thing, and what laws say of both.

/** Its one-way clutches over-run the other way. */
export function mirrored(train: Train): Train {
  const other = (way: Way): Way => (way === 'clockwise' ? 'anticlockwise' : 'clockwise');
  const devices = train.devices.map((device) => {
    return device.kind === 'one-way' ? { ...device, lets: other(device.lets) } : device;
  });
  return { ...train, devices };
}

/** Every set, join, device, pair and plain member under a name that says nothing. */
export function withNewNames(train: Train): { renamed: Train; nameOf: (name: string) => string } {
  const names = new Map<string, string>([[CASE, CASE]]);
  const nameOf = (name: string): string => {
    const [whole, part] = name.split('.') as [string, string | undefined];
    if (!names.has(whole)) names.set(whole, `x${names.size}`);
    return part === undefined ? (names.get(whole) as string) : `${names.get(whole)}.${part}`;
  };
  const sets = train.sets.map((set): GearSet => {
    const named = { ...set, name: nameOf(set.name) };
    return named.kind === 'sharing' ? { ...named, shares: nameOf(named.shares) } : named;
  });
  const renamed: Train = {
    ...train,
    input: nameOf(train.input),
    output: nameOf(train.output),
    ...(train.others && { others: train.others.map(nameOf) }),
    sets,
    pairs: train.pairs.map(({ name, driver, driven, ...pair }) => ({
      ...pair,
      name: nameOf(name),
      driver: { ...driver, member: nameOf(driver.member) },
      driven: { ...driven, member: nameOf(driven.member) },
    })),
    joins: train.joins.map(({ name, members }) => ({
      name: nameOf(name),
      members: members.map(nameOf),
    })),
    devices: train.devices.map((device) => ({
      ...device,
      name: nameOf(device.name),
      first: nameOf(device.first),
      second: nameOf(device.second),
    })),
    ranges: train.ranges.map(({ name, gears }) => ({
      name,
      gears: gears.map((gear) => ({ ...gear, on: gear.on.map(nameOf) })),
    })),
  };
  return { renamed, nameOf };
}

/** Whether planets have half a tooth, as others' teeth say: twice as many teeth are not rounded. */
export function hasHalfTeeth(train: Train, set: GearSet): boolean {
  if (set.kind !== 'pair' || set.outer !== undefined) return false;
  return train.sets.some(
    (other) =>
      other.kind === 'sharing' &&
      other.shares === set.name &&
      other.pairs === undefined &&
      other.sun !== undefined &&
      (set.ring - other.sun) % 2 !== 0,
  );
}

/** The set with twice as many teeth on every wheel. */
export function doubled(set: GearSet): GearSet {
  switch (set.kind) {
    case 'plain':
      return {
        ...set,
        sun: 2 * set.sun,
        ring: 2 * set.ring,
        ...(set.planet && { planet: 2 * set.planet }),
      };
    case 'pair':
      return {
        ...set,
        sun: 2 * set.sun,
        ring: 2 * set.ring,
        ...(set.inner && { inner: 2 * set.inner }),
        ...(set.outer && { outer: 2 * set.outer }),
      };
    case 'stepped':
      return {
        ...set,
        sun: 2 * set.sun,
        ring: 2 * set.ring,
        steps: [2 * set.steps[0], 2 * set.steps[1]],
      };
    case 'sharing':
      return {
        ...set,
        ...(set.sun && { sun: 2 * set.sun }),
        ...(set.ring && { ring: 2 * set.ring }),
        ...(set.inner && { inner: 2 * set.inner }),
      };
    case 'wheels':
      return { ...set, wheels: new Map([...set.wheels].map(([name, teeth]) => [name, 2 * teeth])) };
    case 'bevel':
      return {
        ...set,
        sides: [2 * set.sides[0], 2 * set.sides[1]],
        ...(set.pinion && { pinion: 2 * set.pinion }),
      };
  }
}
