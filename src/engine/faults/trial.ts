import { coasting, ratioOf, stateOf, underPower, vehicleOf } from '../flow/index.ts';
import type { Motion } from '../motion/index.ts';
import { judge, observe, type Quantity, type Ruling } from '../reckon/index.ts';
import type { MemberName, Way } from '../train/index.ts';
import { Alike } from './alike.ts';
import type { Outcome } from './answer.ts';

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

/** Trials of one train with this or that wrong: whatever comes to the same thing is tried once. */
export class Trials {
  private readonly withSpeeds: boolean;
  private readonly alike: Alike;
  private readonly known = new Map<string, Trial>();

  constructor(withSpeeds: boolean) {
    this.withSpeeds = withSpeeds;
    // Where the ends and the devices move alike, other members may not.
    this.alike = new Alike(withSpeeds ? 'gears' : 'reach');
  }

  of(motion: Motion, on: readonly string[]): Trial {
    const ways = vehicleOf(motion.train).ways(on);
    const key = `${ways} ${this.alike.textOf(motion, on)}`;
    let trial = this.known.get(key);
    if (!trial) this.known.set(key, (trial = this.run(motion, on, ways)));
    return trial;
  }

  private run(motion: Motion, on: readonly string[], ways: readonly Way[]): Trial {
    const drive = judge(motion, underPower(motion.train, on));
    const [coast, back] = ways.map((way) => judge(motion, coasting(motion.train, on, way))) as [
      Ruling,
      Ruling?,
    ];
    return {
      drive: outcomeOf(drive, 'input'),
      coast: outcomeOf(coast, 'output'),
      ...(back && { inReverse: outcomeOf(back, 'output') }),
      ...(this.withSpeeds && { speeds: { drive: speedsOf(drive), coast: speedsOf(coast) } }),
    };
  }
}

function outcomeOf(ruling: Ruling, turned: 'input' | 'output'): Outcome {
  const state = stateOf(ruling);
  return state === 'driving' ? { state, ratio: ratioOf(ruling, turned) } : { state };
}

function speedsOf(ruling: Ruling): Speeds {
  return observe(ruling).members;
}
