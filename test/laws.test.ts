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
  isFriction,
  type MemberName,
  type Train,
  appliedIn,
} from '../src/engine/train/index.ts';
import { readTrain, trainText } from '../src/engine/trainfile/index.ts';
import { doubled, hasHalfTeeth, mirrored, withNewNames } from './alike.ts';
import { coneOf, type Terms } from './cone.ts';
import { Dice, seedOfRun, tries } from './dice.ts';
import { trainOf } from './line.ts';
import { lineOf } from './lineof.ts';
import { randomTrain } from './random-train.ts';
import { Tally } from './tally.ts';
import { OURS, ours } from './trains.ts';

const RANDOM_TRAINS = tries(400);
const seed = seedOfRun();

interface Scene {
  readonly train: Train;
  readonly on: readonly string[];
  readonly flow: Flow;
}

// Every declared gear of our own trains, and a gear of each random one.
function* scenes(): Generator<Scene & { readonly name: string }> {
  for (const file of OURS) {
    const train = ours(file);
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
      name: `SEED=${seed + k}, with [${on}] on: ${lineOf(train)}`,
    };
  }
}

// Hardly any train by chance locks itself. These do: two wheels nearly alike are carried round a fixed
// and a last one nearly alike, and driven from the last one, against the sense of their power.
function* creepers(): Generator<Scene & { readonly name: string }> {
  const dice = new Dice(seed);
  for (let k = 0; k < 20; k++) {
    const [fixed, near] = [dice.whole(70, 90), dice.whole(16, 20)];
    const meshes = `fixed ${fixed} ~ near* ${near}, last ${fixed - dice.whole(1, 4)} ~ far* ${near - 1}`;
    const line = `creeper: ${meshes}; planet = creeper.near + creeper.far; case = creeper.fixed`;
    const name = `${line}; in creeper.last; out creeper.carrier`;
    const train = trainOf(name);
    yield { train, on: [], flow: flow(train, []), name };
  }
}

const all = [...scenes(), ...creepers()];

/** The law in every scene; it says which of its conditions a scene met, and each must be by so many. */
function everywhere<Condition extends string>(
  least: Readonly<Record<Condition, number>>,
  holds: (scene: Scene, met: (condition: Condition, cases?: number) => void) => void,
): void {
  const tally = new Tally(least);
  for (const scene of all) {
    try {
      holds(scene, (condition, cases) => tally.met(condition, cases));
    } catch (error) {
      throw new Error(scene.name, { cause: error });
    }
  }
  tally.enough();
}

describe(`laws that hold for every train (SEED=${seed})`, () => {
  test('mirror the train, and every way and torque turns round', () =>
    everywhere(
      { turns: 200, locks: 350, 'no one-way clutch': 50 },
      ({ train, on, flow: { drive } }, met) => {
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
          met(plain.turns ? 'turns' : 'locks');
          if (!plain.turns || !turned.turns) continue;
          expect(texts(turned.moves)).toEqual(texts(plain.moves, -1));
        }
        // Without one-way clutches the mirror is the train itself.
        if (!train.devices.every(isFriction)) return;
        met('no one-way clutch');
        expect(told(flow(mirror, on).drive)).toEqual(told(drive));
      },
    ));

  test('rename everything, and nothing else changes', () =>
    everywhere(
      { driving: 150, neutral: 150, 'tied up': 200 },
      ({ train, on, flow: { drive, coast } }, met) => {
        const { renamed, nameOf } = withNewNames(train);
        const again = flow(renamed, on.map(nameOf));
        for (const [before, after] of [
          [drive, again.drive],
          [coast, again.coast],
        ] as const) {
          met(before.state);
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
      },
    ));

  test('without losses, power in is power out', () =>
    everywhere({ settled: 150 }, ({ flow: { drive, coast } }, met) => {
      for (const { state, ratio, torques } of [drive, coast]) {
        if (state !== 'driving' || ratio === undefined) continue;
        const [input, output] = [torques.get('input'), torques.get('output')].map(settled);
        if (input === undefined || output === undefined) continue;
        met('settled');
        // The input turns `ratio` times while the output turns once.
        expect(toText(plus(times(input, ratio), output))).toBe('0');
      }
    }));

  test('with losses, less comes out than goes in, and never more', () =>
    everywhere({ runs: 150, 'self-locking': 10, lossless: 150 }, ({ train, on }, met) => {
      const losses = { external: fraction(97, 100), internal: fraction(98, 100) };
      for (const { efficiency } of both(flow(train, on, losses))) {
        if (!efficiency?.value) continue;
        met(efficiency.state);
        if (efficiency.state === 'runs') expect(inOrder(ZERO, efficiency.value, ONE)).toBe(true);
        else expect(efficiency.value.num <= 0).toBe(true);
      }
      for (const { efficiency } of both(flow(train, on, { external: ONE, internal: ONE }))) {
        if (efficiency === undefined) continue;
        met('lossless');
        expect(efficiency).toEqual({ state: 'runs', value: ONE });
      }
    }));

  test('speeds meet Willis in every set, every join and every device', () => {
    everywhere(
      { level: 4000, 'one-way': 150, 'over-running': 120 },
      ({ train, on, flow: answer }, met) => {
        const { level, letting } = coneOf(train, on);
        for (const { speeds, state } of both(answer)) {
          if (state === 'tied up') continue;
          const known = settledSpeeds(train, speeds);
          withPitchLines(known, level);
          for (const line of level) {
            const sum = along(line, known);
            if (sum === undefined) continue; // of which some member is free
            expect(toText(sum), [...line].join(' ')).toBe('0');
            met('level');
          }
          for (const line of letting) {
            const sum = along(line, known);
            if (sum === undefined) continue;
            met(sum.num === 0 ? 'one-way' : 'over-running');
            expect(sum.num).toBeGreaterThanOrEqual(0);
          }
        }
      },
    );
  });

  test('torques balance on every member', () =>
    everywhere({ 'under load': 120 }, ({ train, flow: answer }, met) => {
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
        if (working.state === 'driving') met('under load');
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
    everywhere({ friction: 220, 'one-way': 30 }, ({ train, on, flow: { drive, coast } }, met) => {
      const first = train.devices.find(({ name, kind }) => on.includes(name) || kind === 'one-way');
      if (first === undefined) return;
      met(first.kind === 'one-way' ? 'one-way' : 'friction');
      const twin = { ...first, name: 'twin of it' };
      const again = flow({ ...train, devices: [...train.devices, twin] }, [...on, twin.name]);
      expect(moves(again.drive)).toEqual(moves(drive));
      expect(moves(again.coast)).toEqual(moves(coast));
    }));

  test('teeth twice as many in a set change nothing', () =>
    everywhere({ doubled: 270 }, ({ train, on, flow: { drive, coast } }, met) => {
      // Planets whose teeth follow from a sun of another set, and come to a half, are rounded.
      if (train.sets.some((set) => hasHalfTeeth(train, set))) return;
      met('doubled');
      const double = flow({ ...train, sets: train.sets.map(doubled) }, on);
      expect(told(double.drive)).toEqual(told(drive));
      expect(told(double.coast)).toEqual(told(coast));
    }));

  test('what the writer writes, the reader reads', () =>
    everywhere({}, ({ train }) => {
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
