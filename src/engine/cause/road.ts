import { Alike, type Fault, faultText, Variants } from '../faults/index.ts';
import {
  carriedBy,
  coasting,
  ratioOf,
  type State,
  stateOf,
  underPower,
  vehicleOf,
} from '../flow/index.ts';
import { equal, type Rational, toNumber } from '../linear/index.ts';
import type { Motion, ConeQuestion } from '../motion/index.ts';
import { isSpan, judge, type Quantity, speedAt, type Ruling } from '../reckon/index.ts';
import { type Device, gearsOf, isFriction, type Train, type Way } from '../train/index.ts';
import { membersOf } from './cause.ts';

/** One list for all that have no fault of the train, so that what is known of it is found. */
export const SOUND: readonly Fault[] = [];

export type Side = 'under power' | 'coast';

/** What a train does in a gear: the state of its ends, and input speed over output speed. */
export interface Run {
  readonly state: State;
  readonly ratio?: Rational;
}

/** Where devices share a reaction, the least of it that one must carry, and the most that it may. */
export interface Torque {
  readonly least: number;
  readonly most: number;
}

/**
 * A train on the road with this or that wrong, each gear asked once. A gear coasts the way in
 * which the healthy gear drives.
 */
export class Road {
  readonly train: Train;
  private readonly variants: Variants;
  private readonly motions = new Map<string, Motion>();
  private readonly known = new Map<readonly Fault[], Known>();
  private readonly byName = new Map<string, Known>();
  private readonly carried = new Map<string, number>();
  // What comes to the same thing with another fault, or in another gear, is solved once.
  private readonly runs = new Same<Run>('reach');
  private readonly loads = new Same<ReadonlyMap<string, Torque>>('gears');
  private readonly turns = new Map<readonly string[], readonly Way[]>();

  constructor(train: Train) {
    this.train = train;
    this.variants = new Variants(train);
  }

  motion(faults: readonly Fault[]): Motion {
    const key = faults.map(faultText).join('\n');
    let motion = this.motions.get(key);
    if (!motion) this.motions.set(key, (motion = this.variants.motion(faults)));
    return motion;
  }

  run(faults: readonly Fault[], on: readonly string[], side: Side): Run {
    const { runs } = this.knownOf(faults)[side];
    let run = runs.get(on);
    if (!run) runs.set(on, (run = this.judged(faults, on, side)));
    return run;
  }

  /** The same without a device. */
  without(device: Device, faults: readonly Fault[], on: readonly string[], side: Side): Run {
    const { opened } = this.knownOf(faults);
    let more = opened.get(device);
    if (!more) opened.set(device, (more = [...faults, open(device)]));
    return this.run(more, on, side);
  }

  /**
   * What each device carries for one unit of torque at the input, on its first-named member,
   * clockwise positive. Proved; only then a float.
   */
  torques(
    faults: readonly Fault[],
    on: readonly string[],
    side: Side,
  ): ReadonlyMap<string, Torque> {
    const known = this.knownOf(faults)[side].torques;
    let torques = known.get(on);
    if (!torques) {
      const motion = this.motion(faults);
      torques = this.loads.of(motion, on, this.courseOf(on, side), () => {
        const ruling = judge(motion, this.question(on, side));
        return stateOf(ruling) === 'driving' ? torquesOf(ruling) : new Map<string, Torque>();
      });
      known.set(on, torques);
    }
    return torques;
  }

  /**
   * What a gear asks of its friction devices: of the one that carries most of what it carries in
   * the gear that asks most of it, under power. 1 where one is asked for all that it ever is.
   */
  share(faults: readonly Fault[], on: readonly string[], side: Side): number {
    const { shares } = this.knownOf(faults)[side];
    let share = shares.get(on);
    if (share === undefined) {
      const torques = this.torques(faults, on, side);
      const all = this.train.devices.filter(isFriction).map(({ name }) => {
        return Math.abs(torques.get(name)?.most ?? 0) / this.greatest(name);
      });
      shares.set(on, (share = Math.max(...all, 0)));
    }
    return share;
  }

  private greatest(device: string): number {
    let most = this.carried.get(device);
    if (most === undefined) {
      const all = gearsOf(this.train).map(({ on }) => {
        return Math.abs(this.torques(SOUND, on, 'under power').get(device)?.most ?? 0);
      });
      this.carried.set(device, (most = Math.max(...all, 0) || 1));
    }
    return most;
  }

  /** Whether the members of a set turn within it, in a gear of the train in order. */
  works(set: string, on: readonly string[]): boolean {
    const ruling = judge(this.motion(SOUND), underPower(this.train, on));
    const found = this.train.sets.find(({ name }) => name === set);
    if (!found || stateOf(ruling) !== 'driving') return false;
    const [first, ...others] = membersOf(this.train, found).map((member) =>
      speedAt(ruling, member),
    );
    return others.some((speed) => first && !equal(speed, first));
  }

  // By the list itself, for it is asked for thousands of times; else by what it says.
  private knownOf(faults: readonly Fault[]): Known {
    const found = this.known.get(faults);
    if (found) return found;
    const key = faults.map(faultText).join('\n');
    let known = this.byName.get(key);
    if (!known) {
      const side = () => ({ runs: new Map(), torques: new Map(), shares: new Map() });
      known = { 'under power': side(), coast: side(), opened: new Map() };
      this.byName.set(key, known);
    }
    this.known.set(faults, known);
    return known;
  }

  /** Whether a gear of the train in order takes the vehicle backwards. */
  goesBack(on: readonly string[]): boolean {
    const [way, other] = this.waysOf(on);
    return way !== undefined && !other && vehicleOf(this.train).course(way) === 'reverse';
  }

  private waysOf(on: readonly string[]): readonly Way[] {
    let ways = this.turns.get(on);
    if (!ways) this.turns.set(on, (ways = vehicleOf(this.train).ways(on)));
    return ways;
  }

  private judged(faults: readonly Fault[], on: readonly string[], side: Side): Run {
    // What does not move cannot coast.
    if (side === 'coast' && this.run(faults, on, 'under power').state === 'tied up') {
      return { state: 'tied up' };
    }
    const motion = this.motion(faults);
    return this.runs.of(motion, on, this.courseOf(on, side), () => {
      return runOf(judge(motion, this.question(on, side)));
    });
  }

  private courseOf(on: readonly string[], side: Side): string {
    return side === 'under power' ? side : `coast ${this.waysOf(on)[0]}`;
  }

  // On coast the vehicle goes on the way the gear drives while nothing is wrong.
  private question(on: readonly string[], side: Side): ConeQuestion {
    if (side === 'under power') return underPower(this.train, on);
    const [way] = this.waysOf(on) as [Way];
    return coasting(this.train, on, way);
  }
}

// What is known of a question, for all that it is the same question for.
class Same<T> {
  private readonly known = new Map<string, T>();
  private readonly alike: Alike;

  constructor(by: 'reach' | 'gears') {
    this.alike = new Alike(by);
  }

  of(motion: Motion, on: readonly string[], course: string, solve: () => T): T {
    const key = `${course} ${this.alike.textOf(motion, on)}`;
    let found = this.known.get(key);
    if (found === undefined) this.known.set(key, (found = solve()));
    return found;
  }
}

interface Known extends Readonly<Record<Side, KnownSide>> {
  readonly opened: Map<Device, readonly Fault[]>;
}

interface KnownSide {
  readonly runs: Map<readonly string[], Run>;
  readonly torques: Map<readonly string[], ReadonlyMap<string, Torque>>;
  readonly shares: Map<readonly string[], number>;
}

function open({ name, kind }: Device): Fault {
  return kind === 'one-way'
    ? { what: 'one-way', device: name, is: 'slips' }
    : { what: 'device', device: name, is: 'will not apply' };
}

export function sameRun(a: Run, b: Run): boolean {
  if (a.state !== b.state) return false;
  return a.ratio && b.ratio ? equal(a.ratio, b.ratio) : a.ratio === b.ratio;
}

function runOf(ruling: Ruling): Run {
  const state = stateOf(ruling);
  if (state !== 'driving') return { state };
  const { output } = ruling.motion.train;
  const turned = ruling.question.reluctant === output ? 'input' : 'output';
  return { state, ratio: ratioOf(ruling, turned) };
}

function torquesOf(ruling: Ruling): Map<string, Torque> {
  const { devices } = carriedBy(ruling).torques;
  return new Map([...devices].map(([{ name }, torque]) => [name, endsOf(torque)]));
}

// A range that reaches to both sides, or has no end, is carried by others as well as by this one.
function endsOf(torque: Quantity): Torque {
  if (!isSpan(torque)) {
    const settled = toNumber(torque);
    return { least: settled, most: settled };
  }
  const [from = 0, to = 0] = [torque.from, torque.to].map((end) => (end ? toNumber(end) : 0));
  const [near, far] = Math.abs(from) < Math.abs(to) ? [from, to] : [to, from];
  return { least: from * to > 0 ? near : 0, most: far };
}
