import { equal, ONE, opposite, over, type Rational, signOf } from '../linear/index.ts';
import { type Motion, motionOf, type ConeQuestion } from '../motion/index.ts';
import { isSpan, judge, type Quantity, speedAt, type Ruling } from '../reckon/index.ts';
import {
  assemble,
  type GearPair,
  gearsOf,
  type MemberName,
  outputsOf,
  type Train,
  type Way,
} from '../train/index.ts';

/** Where the vehicle goes. */
export type Course = 'forward' | 'reverse';

/** The input turned once clockwise; the load keeps the outputs as slow as it can. */
export function underPower(train: Train, on: readonly string[]): ConeQuestion {
  const given = [{ member: train.input, speed: ONE }];
  return { on: new Set(on), given, reluctant: train.output, tied: outputsOf(train) };
}

/** The output turned once, the way the vehicle travels; the engine keeps the input slow. */
export function coasting(train: Train, on: readonly string[], way: Way): ConeQuestion {
  const given = [{ member: train.output, speed: turnOf(way) }];
  return { on: new Set(on), given, reluctant: train.input, tied: outputsOf(train) };
}

/** One turn. */
export function turnOf(way: Way): Rational {
  return way === 'clockwise' ? ONE : opposite(ONE);
}

export function against(way: Way): Way {
  return way === 'clockwise' ? 'anticlockwise' : 'clockwise';
}

/**
 * Input speed over the speed before the final drive: that of the wheels that drive the first of
 * its gear pairs, whatever the wheels behind do; pairs side by side, one a half shaft, are one
 * step. `speedOf` tells speeds for one turn of the input. Undefined where the file does not say
 * which pairs that is, or those wheels stand, or do not turn alike. Throws on a pair that is not there.
 */
export function beforeFinal(
  train: Train,
  speedOf: (member: MemberName) => Quantity | undefined,
): Rational | undefined {
  const { bodyOf } = assemble(train);
  const chain = (train.finalDrive ?? []).map((name) => pairCalled(train, name));
  const driven = new Set(chain.map((pair) => bodyOf(pair.driven.member)));
  const [speed, ...others] = chain.flatMap(({ driver: { member } }) => {
    return driven.has(bodyOf(member)) ? [] : [speedOf(member)];
  });
  if (!speed || isSpan(speed) || signOf(speed) === 0) return undefined;
  const alike = others.every((other) => other && !isSpan(other) && equal(other, speed));
  return alike ? over(ONE, speed) : undefined;
}

function pairCalled({ pairs }: Train, name: string): GearPair {
  const pair = pairs.find((its) => its.name === name);
  if (!pair) throw new Error(`no gear pair is called ${name}`);
  return pair;
}

/** The vehicle that a train is in; with a fault, that which it was before. */
export function vehicleOf(train: Train): Vehicle {
  const healthy = train.healthy ?? train;
  let vehicle = known.get(healthy);
  if (!vehicle) known.set(healthy, (vehicle = new Vehicle(healthy)));
  return vehicle;
}

const WAYS: readonly Way[] = ['clockwise', 'anticlockwise'];

// A train never changes: what was found of it stands.
const known = new WeakMap<Train, Vehicle>();

/**
 * Which way the output turns as the vehicle travels. A gear travels as it drives while nothing
 * is wrong; a combination that drives nothing may be rolled either way.
 */
export class Vehicle {
  private readonly train: Train;
  private motion: Motion | undefined;
  private gears: readonly Way[] | undefined;
  private readonly driven = new Map<string, Way | 'nowhere'>();

  constructor(train: Train) {
    this.train = train;
  }

  /** The file's; else that of most declared gears that drive; of as many each way, of the first. */
  get forward(): Way {
    return this.train.forward ?? this.mostly ?? this.declared[0] ?? 'clockwise';
  }

  /** How more than half of the declared gears that drive turn the output, if one way does. */
  get mostly(): Way | undefined {
    return WAYS.find((way) => {
      return this.declared.filter((driven) => driven === way).length * 2 > this.declared.length;
    });
  }

  /** Whether declared gears drive the output both ways. */
  get hasReverse(): boolean {
    return new Set(this.declared).size > 1;
  }

  course(output: Way): Course {
    return output === this.forward ? 'forward' : 'reverse';
  }

  /**
   * The ways of the output in which the vehicle may travel with these devices applied: one where
   * they drive it, else both, forward first. `drive` spares a question, if it has been asked.
   */
  ways(on: readonly string[], drive?: Ruling): readonly Way[] {
    const asked = drive?.motion.train === this.train ? drive : undefined;
    const driven = this.drivenBy(on, asked);
    return driven ? [driven] : [this.forward, against(this.forward)];
  }

  private get declared(): readonly Way[] {
    return (this.gears ??= gearsOf(this.train).flatMap(({ on }) => this.drivenBy(on) ?? []));
  }

  // Every fault of a matrix asks the same gears.
  private drivenBy(on: readonly string[], drive?: Ruling): Way | undefined {
    const key = on.join('\n');
    const found = this.driven.get(key) ?? this.wayOf(on, drive);
    this.driven.set(key, found);
    return found === 'nowhere' ? undefined : found;
  }

  private wayOf(on: readonly string[], drive?: Ruling): Way | 'nowhere' {
    this.motion ??= drive?.motion ?? motionOf(this.train);
    const ruling = drive ?? judge(this.motion, underPower(this.train, on));
    const sign = signOf(speedAt(ruling, this.train.output));
    return sign === 0 ? 'nowhere' : sign > 0 ? 'clockwise' : 'anticlockwise';
  }
}
