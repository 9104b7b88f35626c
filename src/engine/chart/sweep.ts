import { coasting, type State, stateOf, underPower, vehicleOf } from '../flow/index.ts';
import { FloatTable, type LinearForm, NOTHING, toNumber, Unsure } from '../linear/index.ts';
import { type Motion, tieRows } from '../motion/index.ts';
import { judge, speedAt, type Ruling } from '../reckon/index.ts';
import { isApplied, outputsOf } from '../train/index.ts';
import { namesOf } from './mask.ts';

/**
 * What every combination of friction devices does, in float64: a combination is a number with
 * a bit for each friction device, in the order of the file. States are indices into STATES.
 * `unsure` are the combinations that rounding leaves open, to be asked of the exact engine;
 * their entries mean nothing.
 */
export interface Sweep {
  readonly drive: Uint8Array;
  /** Output turns for one input turn; only where `drive` is driving. */
  readonly driveSpeed: Float64Array;
  /** As the vehicle travels: the way it is driven, else forward. */
  readonly coast: Uint8Array;
  /** Input turns for one output turn that way; only where `coast` is driving. */
  readonly coastSpeed: Float64Array;
  /** In reverse, where nothing is driven; else as `coast`. */
  readonly inReverse: Uint8Array;
  readonly unsure: readonly number[];
}

export const STATES: readonly State[] = ['driving', 'neutral', 'tied up'];
const [DRIVING, NEUTRAL, TIED] = [0, 1, 2];

/**
 * Makes the sweep of a train in order ready; each call of what is returned goes through the combinations.
 * They are a tree: each device is left off or put on, and what the rows come to at a branch
 * is where the next device begins.
 */
export function sweeper(motion: Motion): () => Sweep {
  const walk = new Walk(motion);
  return () => walk.run();
}

/** A sweep with nothing left open: what rounding leaves unsure the exact engine has answered. */
export function sweep(motion: Motion): Sweep {
  const found = sweeper(motion)();
  const devices = motion.train.devices.filter(isApplied).map(({ name }) => name);
  for (const mask of found.unsure) {
    const on = namesOf(mask, devices);
    const drive = judge(motion, underPower(motion.train, on));
    const ways = vehicleOf(motion.train).ways(on, drive);
    const coasts = ways.map((way) => judge(motion, coasting(motion.train, on, way)));
    const [coast, back] = [coasts[0] as Ruling, coasts.at(-1) as Ruling];
    found.inReverse[mask] = STATES.indexOf(stateOf(back));
    found.drive[mask] = STATES.indexOf(stateOf(drive));
    found.driveSpeed[mask] = toNumber(speedAt(drive, motion.train.output));
    found.coast[mask] = STATES.indexOf(stateOf(coast));
    found.coastSpeed[mask] = toNumber(speedAt(coast, motion.train.input));
  }
  return { ...found, unsure: [] };
}

class Walk {
  private readonly friction: number;
  private readonly input: number; // the rows of the ends' speeds
  private readonly output: number;
  private readonly asked: number; // how many rows a question at a leaf has: the ends, the one-way clutches
  private readonly heights: readonly number[]; // how many rows there are while a depth's device is open
  private readonly levels: FloatTable[]; // the rows at each depth of the tree
  private readonly work: FloatTable; // for one question at a leaf
  private readonly forward: 1 | -1;
  private readonly states: [drive: Uint8Array, coast: Uint8Array, inReverse: Uint8Array];
  private readonly speeds: [drive: Float64Array, coast: Float64Array, inReverse: Float64Array];
  private unsure: number[] = [];

  constructor(motion: Motion) {
    const friction = motion.devices.filter(({ device }) => isApplied(device));
    const oneWays = motion.devices.filter(({ whenOff }) => whenOff?.sense === '>=');
    const locked = motion.devices.filter(({ whenOff }) => whenOff?.sense === '=');
    this.friction = friction.length;
    const always = [...locked.map(({ slip }) => slip), ...tieRows(motion, outputsOf(motion.train))];
    const width = motion.base.free.length;
    const rows = 2 + oneWays.length + friction.length + always.length;
    this.levels = Array.from({ length: friction.length + 1 }, () => new FloatTable(rows, width));
    const count = 2 ** friction.length;
    this.states = [new Uint8Array(count), new Uint8Array(count), new Uint8Array(count)];
    this.speeds = [new Float64Array(count), new Float64Array(count), new Float64Array(count)];
    this.forward = vehicleOf(motion.train).forward === 'clockwise' ? 1 : -1;
    const { base, speedOf, train } = motion;
    const root = this.levels[0] as FloatTable;
    root.reset(width);
    this.input = root.addForm(speedOf(train.input), base);
    this.output = root.addForm(speedOf(train.output), base);
    for (const [label, { whenOff }] of oneWays.entries()) {
      root.addForm(whenOff as LinearForm, base, label);
    }
    this.asked = root.height;
    this.work = new FloatTable(this.asked, width);
    // A device is settled at its depth of the tree, and then its row is done with: so the last
    // device's row stands first.
    const heights = friction.toReversed().map(({ whenOn }) => {
      root.addForm(whenOn ?? NOTHING, base);
      return root.height;
    });
    this.heights = heights.toReversed();
    for (const form of always) root.addForm(form, base);
    for (const _ of always) root.settleLast();
  }

  run(): Sweep {
    this.unsure = [];
    this.visit(this.levels[0] as FloatTable, 0, 0);
    const [drive, coast, inReverse] = this.states.map((states) => states.slice()) as [
      Uint8Array,
      Uint8Array,
      Uint8Array,
    ];
    const [driveSpeed, coastSpeed] = this.speeds.map((s) => s.slice()) as [
      Float64Array,
      Float64Array,
    ];
    return { drive, coast, driveSpeed, coastSpeed, inReverse, unsure: this.unsure };
  }

  // The combinations whose first `depth` devices are as in `mask`, which `table` holds.
  private visit(table: FloatTable, depth: number, mask: number): void {
    if (depth === this.friction) {
      this.ask(table, mask);
      return;
    }
    this.visit(table, depth + 1, mask);
    const on = mask | (1 << depth);
    const next = this.levels[depth + 1] as FloatTable;
    next.copy(table, this.heights[depth] as number);
    try {
      next.settleLast();
    } catch (error) {
      if (!(error instanceof Unsure)) throw error;
      this.giveUp(depth, on);
      return;
    }
    this.visit(next, depth + 1, on);
  }

  private giveUp(depth: number, mask: number): void {
    for (let rest = 0; rest < 2 ** (this.friction - depth - 1); rest++) {
      this.unsure.push(mask | (rest << (depth + 1)));
    }
  }

  private ask(table: FloatTable, mask: number): void {
    const { input, output } = this;
    try {
      this.answer(table, mask, 0, input, output, 1);
      const drives = this.states[0][mask] === DRIVING;
      const way = drives ? ((this.speeds[0][mask] as number) < 0 ? -1 : 1) : this.forward;
      this.answer(table, mask, 1, output, input, way);
      if (drives) this.states[2][mask] = this.states[1][mask] as number;
      else this.answer(table, mask, 2, output, input, way > 0 ? -1 : 1);
    } catch (error) {
      if (!(error instanceof Unsure)) throw error;
      this.unsure.push(mask);
    }
  }

  // One end turned once, `way` it is told, the other as slow as can be.
  private answer(
    table: FloatTable,
    mask: number,
    side: 0 | 1 | 2,
    turned: number,
    slow: number,
    way: 1 | -1,
  ): void {
    const { work } = this;
    work.copy(table, this.asked);
    work.shift(turned, -way);
    let state = TIED;
    if (work.settleEquality(turned)) {
      work.settleVariables();
      if (work.crissCross(-1, 1) !== 'stuck') {
        const sign = work.sign(slow, 0);
        state = NEUTRAL;
        if (
          sign !== 0 &&
          work.crissCross(slow, sign) === 'optimal' &&
          work.sign(slow, 0) === sign
        ) {
          state = DRIVING;
          this.speeds[side][mask] = work.value(slow);
        }
      }
    }
    this.states[side][mask] = state;
  }
}
