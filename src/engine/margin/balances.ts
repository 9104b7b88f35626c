import { Base, type Form, freedom, type Int, type Row, type Vector } from '../linear/index.ts';
import { type Motion, tiesOf } from '../motion/index.ts';
import { spansFreedom } from '../proof/index.ts';
import { outputsOf } from '../train/index.ts';

type Pushing = Motion['devices'][number];

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

  of(pushing: readonly Pushing[]): Ways {
    const key = pushing.map(({ device }) => device.name).join('\n');
    let ways = this.known.get(key);
    if (!ways) this.known.set(key, (ways = waysOf(this.motion, pushing)));
    return ways;
  }
}

/** Torques, each in so many of the ways to balance. */
export interface Ways {
  readonly count: number;
  /** Of the devices, in their order. */
  readonly devices: readonly Form[];
  /** Of the input end, clockwise. */
  readonly input: Form;
}

function waysOf(motion: Motion, pushing: readonly Pushing[]): Ways {
  const { input, output } = motion.train;
  const ties = tiesOf(motion, { tied: outputsOf(motion.train) });
  const forms: Form[] = [
    ...motion.meshes.map((_, m) => motion.base.rows[m] as Row),
    ...pushing.map(({ slip }) => slip),
    ...ties,
    motion.speedOf(input),
    motion.speedOf(output),
  ];
  const ways = balances(forms, motion.columns);
  return {
    count: ways.length,
    devices: pushing.map((_, k) => inWays(ways, motion.meshes.length + k)),
    input: inWays(ways, forms.length - 2),
  };
}

// Every way in which the torques on each body add up to nothing.
function balances(forms: readonly Form[], bodies: number): readonly Vector[] {
  const sums = Array.from({ length: bodies }, () => ({ at: [] as number[], coef: [] as Int[] }));
  forms.forEach(({ at, coef }, column) => {
    at.forEach((body, k) => {
      sums[body]?.at.push(column);
      sums[body]?.coef.push(coef[k] as Int);
    });
  });
  const rows = sums.map((form): Row => ({ ...form, sense: '=', right: 0 }));
  const ways = freedom(forms.length, rows, new Base(forms.length, rows));
  if (!spansFreedom(forms.length, rows, ways)) throw new Error('a way to balance was missed');
  return ways;
}

// What a column of the balance comes to, where each way is taken so many times its denominator.
function inWays(ways: readonly Vector[], column: number): Form {
  const at = ways.flatMap(({ nums }, way) => (nums[column] === 0 ? [] : [way]));
  return { at, coef: at.map((way) => ways[way]?.nums[column] as Int) };
}
