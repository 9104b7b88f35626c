import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { type Flow, flow, isSpan, type Quantity, type Working } from '../src/engine/flow/index.ts';
import { hand } from '../src/engine/hand/index.ts';
import {
  fraction,
  ONE,
  opposite,
  plus,
  type Rational,
  times,
  toText,
  ZERO,
} from '../src/engine/linear/index.ts';
import {
  CASE,
  type GearSet,
  isFriction,
  type MemberName,
  type Train,
  type Way,
  appliedIn,
} from '../src/engine/train/index.ts';
import { readTrain, trainText } from '../src/engine/trainfile/index.ts';
import { coneOf, type Terms } from './cone.ts';
import { Dice, seedOfRun, tries } from './dice.ts';
import { randomTrain } from './random-train.ts';
import { ROOT } from './sources.ts';

const RANDOM_TRAINS = tries(400);
const seed = seedOfRun();

interface Scene {
  readonly train: Train;
  readonly on: readonly string[];
  readonly flow: Flow;
}

// Every declared gear of our own trains, and a gear of each random one.
function* scenes(): Generator<Scene & { readonly name: string }> {
  for (const file of readdirSync(path.join(ROOT, 'trains'))) {
    if (!file.endsWith('.train.yaml')) continue;
    const { train } = readTrain(readFileSync(path.join(ROOT, 'trains', file), 'utf8'));
    if (train === undefined) throw new Error(`${file} does not read`);
    for (const range of train.ranges) {
      for (const gear of range.gears) {
        yield {
          train,
          on: appliedIn(train, gear),
          flow: flow(train, appliedIn(train, gear)),
          name: `${file}, ${range.name} ${gear.name}`,
        };
      }
    }
  }
  for (let k = 0; k < RANDOM_TRAINS; k++) {
    const train = randomTrain(seed + k);
    const dice = new Dice(seed + k);
    const on = train.devices
      .filter(isFriction)
      .map(({ name }) => name)
      .filter(() => dice.chance(0.4));
    yield {
      train,
      on,
      flow: flow(train, on),
      name: `SEED=${seed + k}, with [${on}] on:\n${trainText(train)}`,
    };
  }
}

const all = [...scenes()];

function everywhere(holds: (scene: Scene) => void): void {
  for (const scene of all) {
    try {
      holds(scene);
    } catch (error) {
      throw new Error(scene.name, { cause: error });
    }
  }
}

describe(`laws that hold for every train (SEED=${seed})`, () => {
  test('mirror the train, and every way and torque turns round', () =>
    everywhere(({ train, on, flow: { drive } }) => {
      // One-way clutches over-run the other way, and the input is turned the other way: then each
      // speed is the other way too. The hand check turns either way.
      const mirror = mirrored(train);
      const friction = train.devices.filter(isFriction).map(({ name }) => name);
      for (const way of ['clockwise', 'anticlockwise'] as const) {
        const check = {
          hold: [train.output],
          turn: train.input,
          on: friction.filter((name) => on.includes(name)),
        };
        const plain = hand(train, { ...check, way });
        const turned = hand(mirror, {
          ...check,
          way: way === 'clockwise' ? 'anticlockwise' : 'clockwise',
        });
        expect(turned.turns).toBe(plain.turns);
        if (!plain.turns || !turned.turns) continue;
        expect(texts(turned.moves)).toEqual(texts(plain.moves, -1));
      }
      // Without one-way clutches the mirror is the train itself.
      if (train.devices.every(isFriction))
        expect(told(flow(mirror, on).drive)).toEqual(told(drive));
    }));

  test('rename everything, and nothing else changes', () =>
    everywhere(({ train, on, flow: { drive, coast } }) => {
      const { renamed, nameOf } = withNewNames(train);
      const again = flow(renamed, on.map(nameOf));
      for (const [before, after] of [
        [drive, again.drive],
        [coast, again.coast],
      ] as const) {
        expect(after.state).toBe(before.state);
        expect(after.ratio).toEqual(before.ratio);
        const speeds = [...before.speeds].map(([member, speed]) => [nameOf(member), text(speed)]);
        expect(new Map(speeds as [string, string][])).toEqual(texts(after.speeds));
        const torques = [...before.devices].map(([device, { torque }]) => [
          nameOf(device),
          text(torque),
        ]);
        expect(torques).toEqual(
          [...after.devices].map(([device, { torque }]) => [device, text(torque)]),
        );
      }
    }));

  test('without losses, power in is power out', () =>
    everywhere(({ flow: { drive, coast } }) => {
      for (const { state, ratio, torques } of [drive, coast]) {
        if (state !== 'driving' || ratio === undefined) continue;
        const [input, output] = [torques.get('input'), torques.get('output')].map(settled);
        if (input === undefined || output === undefined) continue;
        // The input turns `ratio` times while the output turns once.
        expect(toText(plus(times(input, ratio), output))).toBe('0');
      }
    }));

  test('with losses, less comes out than goes in, and never more', () =>
    everywhere(({ train, on }) => {
      const losses = { external: fraction(97, 100), internal: fraction(98, 100) };
      for (const { efficiency } of both(flow(train, on, losses))) {
        if (efficiency?.state === 'runs') expect(inOrder(ZERO, efficiency.value, ONE)).toBe(true);
        if (efficiency?.state === 'self-locking' && efficiency.value)
          expect(efficiency.value.num <= 0).toBe(true);
      }
      for (const { efficiency } of both(flow(train, on, { external: ONE, internal: ONE }))) {
        if (efficiency !== undefined) expect(efficiency).toEqual({ state: 'runs', value: ONE });
      }
    }));

  test('speeds meet Willis in every set, every join and every device', () => {
    let checked = 0;
    everywhere(({ train, on, flow: answer }) => {
      const { level, letting } = coneOf(train, on);
      for (const { speeds, state } of both(answer)) {
        if (state === 'tied up') continue;
        const known = settledSpeeds(train, speeds);
        withPitchLines(known, level);
        for (const line of level) {
          const sum = along(line, known);
          if (sum === undefined) continue; // of which some member is free
          expect(toText(sum), [...line].join(' ')).toBe('0');
          checked++;
        }
        for (const line of letting) expect(along(line, known)?.num ?? 0).toBeGreaterThanOrEqual(0);
      }
    });
    expect(checked).toBeGreaterThan(4 * all.length);
  });

  test('torques balance on every member', () =>
    everywhere(({ train, flow: answer }) => {
      for (const working of both(answer)) {
        const groups = oneBody(train);
        const sums = new Map<MemberName, Rational>();
        let loose = false;
        const put = (member: MemberName, torque: Quantity | undefined, sign: 1 | -1 = 1) => {
          const number = settled(torque);
          if (number === undefined) loose = true;
          else {
            const body = groups(member);
            sums.set(body, plus(sums.get(body) ?? ZERO, sign > 0 ? number : opposite(number)));
          }
        };
        put(train.input, working.torques.get('input'));
        for (const [member, torque] of working.outputs) put(member, torque);
        for (const { first, second, name } of train.devices) {
          put(first, working.devices.get(name)?.torque);
          put(second, working.devices.get(name)?.torque, -1);
        }
        for (const { member, torque } of working.branches) put(member, torque);
        if (loose || working.state === 'tied up') continue;
        const frame = groups(CASE);
        for (const [body, sum] of sums) {
          if (body !== frame) expect(toText(sum), body).toBe('0');
        }
        expect(
          toText(plus(sums.get(frame) ?? ZERO, settled(working.torques.get('case')) ?? ZERO)),
        ).toBe('0');
      }
    }));

  test('a device beside another like it changes no speed', () =>
    everywhere(({ train, on, flow: { drive, coast } }) => {
      const first = train.devices.find(({ name, kind }) => on.includes(name) || kind === 'one-way');
      if (first === undefined) return;
      const twin = { ...first, name: 'twin of it' };
      const again = flow({ ...train, devices: [...train.devices, twin] }, [...on, twin.name]);
      expect(moves(again.drive)).toEqual(moves(drive));
      expect(moves(again.coast)).toEqual(moves(coast));
    }));

  test('teeth twice as many in a set change nothing', () =>
    everywhere(({ train, on, flow: { drive, coast } }) => {
      // Planets whose teeth follow from a sun of another set, and come to a half, are rounded.
      if (train.sets.some((set) => hasHalfTeeth(train, set))) return;
      const double = flow({ ...train, sets: train.sets.map(doubled) }, on);
      expect(told(double.drive)).toEqual(told(drive));
      expect(told(double.coast)).toEqual(told(coast));
    }));

  test('what the writer writes, the reader reads', () =>
    everywhere(({ train }) => {
      const { train: again, problems } = readTrain(trainText(train));
      expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
      expect(again).toEqual(train);
    }));
});

function both({ drive, coast }: Flow): readonly Working[] {
  return [drive, coast];
}

/** All that can be compared of a working in one look. */
function told(working: Working): unknown {
  const { devices, torques, meshes } = working;
  const work = [...devices].map(([name, { state, slip, torque }]) => [
    name,
    state,
    text(slip),
    text(torque),
  ]);
  return [moves(working), work, texts(torques), meshes.length];
}

function moves({ state, ratio, speeds }: Working): unknown {
  return [state, ratio && toText(ratio), texts(speeds)];
}

function texts(quantities: ReadonlyMap<string, Quantity>, sign: 1 | -1 = 1): Map<string, string> {
  return new Map([...quantities].map(([name, quantity]) => [name, text(quantity, sign)]));
}

function text(quantity: Quantity, sign: 1 | -1 = 1): string {
  const turned = (number: Rational) => toText(sign > 0 ? number : opposite(number));
  if (!isSpan(quantity)) return turned(quantity);
  const [from, to] = sign > 0 ? [quantity.from, quantity.to] : [quantity.to, quantity.from];
  return `${from ? turned(from) : ''} to ${to ? turned(to) : ''}`;
}

function settled(quantity: Quantity | undefined): Rational | undefined {
  return quantity === undefined || isSpan(quantity) ? undefined : quantity;
}

function inOrder(...numbers: readonly Rational[]): boolean {
  return numbers.every((number, k) => {
    const before = numbers[k - 1];
    return before === undefined || plus(number, opposite(before)).num >= 0;
  });
}

/** Every speed that is settled; the case's, under all its names, is 0. */
function settledSpeeds(train: Train, speeds: ReadonlyMap<MemberName, Quantity>) {
  const known = new Map<string, Rational>();
  const bodyOf = oneBody(train);
  for (const member of train.joins.flatMap(({ name, members }) => [name, ...members])) {
    if (bodyOf(member) === bodyOf(CASE)) known.set(member, ZERO);
  }
  for (const [member, speed] of speeds) if (!isSpan(speed)) known.set(member, speed);
  return known;
}

// A pitch line's speed follows from the first wheel that has one; the others must agree.
function withPitchLines(known: Map<string, Rational>, lines: readonly Terms[]): void {
  for (const line of lines) {
    const unknown = [...line].filter(([name]) => !known.has(name));
    const [pitch, coef] = unknown[0] ?? [];
    if (unknown.length !== 1 || !pitch?.includes('pitch line') || coef === undefined) continue;
    const rest = along(new Map([...line].filter(([name]) => name !== pitch)), known) as Rational;
    known.set(pitch, times(rest, fraction(-1, coef)));
  }
}

function along(line: Terms, known: ReadonlyMap<string, Rational>): Rational | undefined {
  let sum: Rational = ZERO;
  for (const [name, coef] of line) {
    const speed = known.get(name);
    if (speed === undefined) return undefined;
    sum = plus(sum, times(speed, fraction(coef)));
  }
  return sum;
}

/** Which body a member is of, by the joins alone; shared carriers and planets are one. */
function oneBody(train: Train): (member: MemberName) => MemberName {
  const links = train.joins.flatMap(({ name, members }) =>
    members.map((member) => [name, member] as const),
  );
  for (const set of train.sets) {
    if (set.kind === 'sharing') links.push([`${set.shares}.carrier`, `${set.name}.carrier`]);
  }
  const bodies = new Map<MemberName, MemberName>();
  const find = (member: MemberName): MemberName => {
    const above = bodies.get(member);
    return above === undefined ? member : find(above);
  };
  for (const [a, b] of links) {
    const [one, other] = [find(a), find(b)];
    if (one !== other) bodies.set(other, one);
  }
  return find;
}

function mirrored(train: Train): Train {
  const other = (way: Way): Way => (way === 'clockwise' ? 'anticlockwise' : 'clockwise');
  const devices = train.devices.map((device) => {
    return device.kind === 'one-way' ? { ...device, lets: other(device.lets) } : device;
  });
  return { ...train, devices };
}

/** Every set, join, device, pair and plain member under a name that says nothing. */
function withNewNames(train: Train): { renamed: Train; nameOf: (name: string) => string } {
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

function hasHalfTeeth(train: Train, set: GearSet): boolean {
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

function doubled(set: GearSet): GearSet {
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
