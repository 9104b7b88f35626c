import { beforeAll, expect, test } from 'vitest';
import { chart, STATES, sweep } from '../src/engine/chart/index.ts';
import {
  coasting,
  type Flow,
  flow,
  isSpan,
  type Quantity,
  underPower,
  type Working,
} from '../src/engine/flow/index.ts';
import {
  type Bound,
  extremes,
  floatExtremes,
  ONE,
  toNumber,
  Unsure,
  valueOf,
} from '../src/engine/linear/index.ts';
import { motionOf, pose } from '../src/engine/motion/index.ts';
import { isFriction, type MemberName, type Train } from '../src/engine/train/index.ts';
import { Dice, seedOfRun, tries } from './dice.ts';
import { FloatCone } from './floatcone.ts';
import { lineOf } from './lineof.ts';
import { type FloatProgramme, inFloats, loadPeers, type Peer } from './peers.ts';
import { randomTrain } from './random-train.ts';
import { Tally } from './tally.ts';

const TRAINS = tries(600);
const seed = seedOfRun();

let peers: readonly Peer[] = [];
beforeAll(async () => {
  peers = await loadPeers();
});

/** One gear of one train, as a person can play it again. */
interface Case {
  readonly train: Train;
  readonly on: readonly string[];
  readonly flow: Flow;
  readonly dice: Dice;
}

// A case that fails prints its train in one line, with the gear and the seed that made it.
function onEveryCase(property: (scene: Case) => void): void {
  for (let k = 0; k < TRAINS; k++) {
    const scene = (cases[k] ??= makeCase(seed + k));
    try {
      property({ ...scene, flow: (scene.flow ??= flow(scene.train, scene.on)) });
    } catch (error) {
      const line = lineOf(scene.train);
      throw new Error(`SEED=${seed + k}, with [${scene.on}] on: ${String(error)}\n${line}`, {
        cause: error,
      });
    }
  }
}

const cases: (Omit<Case, 'flow'> & { flow?: Flow })[] = [];

function makeCase(number: number): Omit<Case, 'flow'> {
  const train = randomTrain(number);
  const dice = new Dice(number);
  const friction = train.devices.filter(isFriction).map(({ name }) => name);
  return { train, on: friction.filter(() => dice.chance(0.4)), dice };
}

test(`general-purpose solvers agree with the exact one on its own programmes (SEED=${seed})`, () => {
  const tally = new Tally({ driving: 120, neutral: 180, 'tied up': 300 });
  onEveryCase(({ train, on, flow: { drive, coast, output } }) => {
    const motion = motionOf(train);
    for (const [working, question] of [
      [drive, underPower(train, on)],
      [coast, coasting(train, on, output)],
    ] as const) {
      const programme = inFloats(pose(motion, question));
      agree(programme, reluctance(working, working === drive));
      tally.met(working.state);
    }
  });
  tally.enough();
});

test(`and on programmes built from the teeth, without the engine (SEED=${seed})`, () => {
  const tally = new Tally({ driving: 50, reverse: 3 }); // hundreds of reverse stand in travel.test.ts
  onEveryCase(({ train, on, flow: { drive, coast, output } }) => {
    const cone = new FloatCone(train, on);
    const under = cone.reluctant(train.input, train.output);
    agree(under, reluctance(drive, true));
    // A gear that drives its output anticlockwise coasts that way.
    const speed = drive.ratio && 1 / toNumber(drive.ratio);
    const way = (speed ?? (output === 'clockwise' ? 1 : -1)) < 0 ? -1 : 1;
    if (speed !== undefined) tally.met(way < 0 ? 'reverse' : 'driving');
    agree(cone.reluctant(train.output, train.input, way), reluctance(coast, false));
  });
  tally.enough();
});

test(`they agree on how far each member is free, and on what has no limit (SEED=${seed})`, () => {
  const tally = new Tally({ limitless: 100, settled: 350 });
  onEveryCase(({ train, on, flow: { drive, coast, output }, dice }) => {
    const cone = new FloatCone(train, on);
    const working = dice.chance(0.5) ? drive : coast;
    if (working.state === 'tied up') return;
    const [turned, other] =
      working === drive ? [train.input, train.output] : [train.output, train.input];
    const speed = reluctance(working, working === drive) as number;
    const turns = working === coast && output === 'anticlockwise' ? -1 : 1;
    const way = working.ratio && working.ratio.num < 0 ? -turns : turns;
    const names = [...working.speeds.keys()].filter((name) => cone.knows(name));
    for (const name of dice.several(names, 3)) {
      const [from, to] = ends(working.speeds.get(name) as Quantity);
      const motion: [MemberName, number][] = [
        [turned, turns],
        [other, way * speed],
      ];
      agree(cone.least(name, 1, motion), from);
      agree(cone.least(name, -1, motion), to === null ? null : 0 - to);
      if (from === null || to === null) tally.met('limitless');
      else if (from === to) tally.met('settled');
    }
  });
  tally.enough();
});

test(`the float path agrees in every combination of devices (SEED=${seed})`, () => {
  const tally = new Tally({ states: 12_000, ratios: 500 });
  for (let k = 0; k < TRAINS / 4; k++) {
    const train = randomTrain(seed + k);
    const { drive, driveSpeed, coast, inReverse } = sweep(motionOf(train));
    for (const [mask, gear] of chart(train).gears.entries()) {
      const where = `SEED=${seed + k}, with [${gear.on}] on`;
      expect(STATES[drive[mask] as number], where).toBe(gear.drive);
      expect(STATES[coast[mask] as number], where).toBe(gear.coast);
      expect(STATES[inReverse[mask] as number], where).toBe(gear.inReverse ?? gear.coast);
      if (gear.ratio !== undefined) {
        tally.met('ratios');
        const speed = 1 / toNumber(gear.ratio);
        const off = Math.abs((driveSpeed[mask] as number) - speed);
        expect(off, where).toBeLessThanOrEqual(1e-9 * Math.abs(speed));
      }
      tally.met('states', 3);
    }
  }
  tally.enough();
});

test(`and in how far a form can go where rows hold (SEED=${seed})`, () => {
  const tally = new Tally({ sure: 150, 'no motion': 130, unsure: 0 });
  onEveryCase(({ train, on }) => {
    const motion = motionOf(train);
    const programme = pose(motion, {
      on: new Set(on),
      given: [{ member: train.input, speed: ONE }],
    });
    const { columns, rows } = programme;
    const forms = [motion.speedOf(train.output), motion.speedOf(train.input)];
    const exact = extremes(columns, rows, forms, motion.base);
    try {
      const found = floatExtremes(columns, rows, forms, motion.base);
      const wanted = exact.map(({ least, greatest }) => [bound(least, 1), bound(greatest, -1)]);
      tally.met(found ? 'sure' : 'no motion');
      if (found === undefined) expect(wanted.flat().every((end) => end === undefined)).toBe(true);
      found?.forEach(({ least, greatest }, k) => {
        expect(wanted[k]?.[0]).toBeCloseTo(least, 9);
        expect(wanted[k]?.[1]).toBeCloseTo(greatest, 9);
      });
    } catch (error) {
      if (!(error instanceof Unsure)) throw error;
      tally.met('unsure');
    }
  });
  expect(tally.count('unsure')).toBeLessThan(TRAINS / 20);
  tally.enough();
});

/** The exact bound as a float; infinite for no limit, undefined where the rows cannot hold. */
function bound({ programme, solution }: Bound, sign: 1 | -1): number | undefined {
  if (solution.state === 'infeasible') return undefined;
  if (solution.state === 'unbounded') return -sign * Infinity;
  return sign * toNumber(valueOf(programme.minimise, solution.point));
}

/** How fast the reluctant end turns, whichever way; undefined where the train is tied up. */
function reluctance({ state, ratio }: Working, driving: boolean): number | undefined {
  if (state === 'tied up') return undefined;
  if (ratio === undefined) return 0;
  return Math.abs(driving ? 1 / toNumber(ratio) : toNumber(ratio));
}

function ends(quantity: Quantity): [from: number | null, to: number | null] {
  if (!isSpan(quantity)) return [toNumber(quantity), toNumber(quantity)];
  return [quantity.from && toNumber(quantity.from), quantity.to && toNumber(quantity.to)];
}

/**
 * Every peer must find `wanted`: the least value, null for no limit, undefined where no motion
 * is possible. HiGHS must always. yalps loses its way on one degenerate programme in some
 * hundreds: it may, where HiGHS stands by the exact answer, and is counted.
 */
function agree(programme: FloatProgramme, wanted: number | null | undefined): void {
  for (const peer of peers) {
    const doubt = doubtOf(peer, programme, wanted);
    asked.set(peer.name, (asked.get(peer.name) ?? 0) + 1);
    if (doubt === undefined) continue;
    if (peer.name === 'highs') throw new Error(doubt);
    strays.push(doubt);
  }
}

const asked = new Map<string, number>();
const strays: string[] = [];

function doubtOf(
  peer: Peer,
  programme: FloatProgramme,
  wanted: number | null | undefined,
): string | undefined {
  const answer = peer.solve(programme);
  const state = wanted === undefined ? 'infeasible' : wanted === null ? 'unbounded' : 'optimal';
  if (answer.state !== state)
    return `${peer.name} says ${answer.state}, exactly it is ${state} (${wanted})`;
  if (answer.state !== 'optimal' || typeof wanted !== 'number') return undefined;
  const most = 1e-9 * (Math.abs(wanted) || 1) + peer.rounding;
  if (Math.abs(answer.value - wanted) <= most) return undefined;
  return `${peer.name} says ${answer.value}, exactly it is ${wanted}`;
}

test('yalps stands by the exact solver but for one question in two hundred at most', () => {
  expect(strays.length, strays.slice(0, 5).join('\n')).toBeLessThanOrEqual(
    (asked.get('yalps') ?? 0) / 200,
  );
});
