import { coasting, observe, ratioOf, stateOf, underPower, vehicleOf } from '../flow/index.ts';
import type { Row } from '../linear/index.ts';
import type { Motion } from '../motion/index.ts';
import { judge, type Quantity, type Verdict } from '../reckon/index.ts';
import type { MemberName, Way } from '../train/index.ts';
import type { Outcome } from './answer.ts';
import { reachOf } from './reach.ts';

/** What a train does with some devices applied. */
export interface Trial {
  readonly drive: Outcome;
  /** As the healthy vehicle travels: the way it is driven, else forward. */
  readonly coast: Outcome;
  /** Where the healthy gear drives nothing. */
  readonly inReverse?: Outcome;
  /** Only where they are asked for; none where nothing turns. */
  readonly speeds?: { readonly drive: Speeds; readonly coast: Speeds };
}

export type Speeds = ReadonlyMap<MemberName, Quantity>;

/**
 * Trials of one train with this or that wrong. Faults and gears often come to the same thing:
 * a gear that applies a device and a fault that never releases it, any wheel of a set without
 * its teeth. Each such thing is tried once.
 */
export class Trials {
  private readonly withSpeeds: boolean;
  private readonly byBase = new WeakMap<Motion['base'], Map<string, Trial>>();
  private readonly byReach = new Map<string, Map<string, Trial>>();

  constructor(withSpeeds: boolean) {
    this.withSpeeds = withSpeeds;
  }

  of(motion: Motion, on: readonly string[]): Trial {
    const known = this.known(motion);
    const ways = vehicleOf(motion.train).ways(on);
    const key = `${ways} ${rowsOf(motion, on)}`;
    let trial = known.get(key);
    if (!trial) known.set(key, (trial = this.run(motion, on, ways)));
    return trial;
  }

  // Where the ends and the devices move alike, other members may not: speeds are not shared.
  private known(motion: Motion): Map<string, Trial> {
    let known = this.byBase.get(motion.base);
    if (known) return known;
    const reach = this.withSpeeds ? undefined : reachOf(motion);
    known = (reach !== undefined && this.byReach.get(reach)) || new Map();
    this.byBase.set(motion.base, known);
    if (reach !== undefined) this.byReach.set(reach, known);
    return known;
  }

  private run(motion: Motion, on: readonly string[], ways: readonly Way[]): Trial {
    const drive = judge(motion, underPower(motion.train, on));
    const [coast, back] = ways.map((way) => judge(motion, coasting(motion.train, on, way))) as [
      Verdict,
      Verdict?,
    ];
    return {
      drive: outcomeOf(drive, 'input'),
      coast: outcomeOf(coast, 'output'),
      ...(back && { inReverse: outcomeOf(back, 'output') }),
      ...(this.withSpeeds && { speeds: { drive: speedsOf(drive), coast: speedsOf(coast) } }),
    };
  }
}

// A letter a device: which row it has, if any.
function rowsOf({ devices }: Motion, on: readonly string[]): string {
  const letter = (row: Row | undefined, first: Row['coef'][number] | undefined) => {
    if (!row) return '-';
    if (row.sense === '=') return '=';
    return row.coef[0] === first ? '>' : '<';
  };
  return devices
    .map(({ device, slip, whenOn, whenOff }) => {
      return letter(on.includes(device.name) ? whenOn : whenOff, slip.coef[0]);
    })
    .join('');
}

function outcomeOf(verdict: Verdict, turned: 'input' | 'output'): Outcome {
  const state = stateOf(verdict);
  return state === 'driving' ? { state, ratio: ratioOf(verdict, turned) } : { state };
}

function speedsOf(verdict: Verdict): Speeds {
  return verdict.turns ? observe(verdict).members : new Map();
}
