import { type LinearForm, type Int, valueOf, type Vector } from '../linear/index.ts';
import { type DeviceRow, type Motion, tieRows } from '../motion/index.ts';
import { TorqueBalance } from '../reckon/index.ts';
import { outputsOf } from '../train/index.ts';

/**
 * Every way in which the torques on a train balance, by the devices that push: of the meshes'
 * multipliers, what each of these devices puts on its first member, and what both ends put on
 * theirs. Under power and on coast they are mostly the same devices, so the ways are
 * found, and proved to be all, once.
 */
export class Balances {
  private readonly motion: Motion;
  private readonly known = new Map<string, Ways>();

  constructor(motion: Motion) {
    this.motion = motion;
  }

  of(pushers: readonly DeviceRow[]): Ways {
    const key = pushers.map(({ device }) => device.name).join('\n');
    let ways = this.known.get(key);
    if (!ways) this.known.set(key, (ways = waysOf(this.motion, pushers)));
    return ways;
  }
}

/** Torques, each in so many of the ways to balance. */
export interface Ways {
  readonly count: number;
  /** Of the devices, in their order. */
  readonly devices: readonly LinearForm[];
  /** Of the input end, clockwise. */
  readonly input: LinearForm;
}

function waysOf(motion: Motion, pushers: readonly DeviceRow[]): Ways {
  const { input, output } = motion.train;
  const balance = new TorqueBalance(motion);
  for (const mesh of motion.meshes) balance.pusher(mesh);
  const devices = pushers.map(({ slip }) => balance.pusher(slip));
  for (const tie of tieRows(motion, outputsOf(motion.train))) balance.pusher(tie);
  const [onInput] = [input, output].map((end) => balance.pusher(motion.speedOf(end)));
  const ways = balance.ways();
  return {
    count: ways.length,
    devices: devices.map((form) => inWays(ways, form)),
    input: inWays(ways, onInput as LinearForm),
  };
}

// What a form of the balance comes to, where each way is taken so many times its denominator.
function inWays(ways: readonly Vector[], form: LinearForm): LinearForm {
  const parts = ways.map(({ nums }) => valueOf(form, { nums, den: 1 }).num);
  const at = [...parts.keys()].filter((way) => parts[way] !== 0);
  return { at, coef: at.map((way) => parts[way] as Int) };
}
