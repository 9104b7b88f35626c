import { type HandCheck, handChecks, turns } from '../hand/index.ts';
import type { Motion } from '../motion/index.ts';
import { isFriction, type Train } from '../train/index.ts';
import type { Changed, FaultMatrix, FaultRow, MatrixGear } from './answer.ts';
import { everyFault } from './every.ts';
import { type Fault, isSlipping } from './fault.ts';
import { Variants } from './variants.ts';

/** What gives a fault away, held against the healthy train. */
export type Sign = BenchSign | RoadSign;

/** A hand check that turns where the healthy train locks, or the other way round. */
export interface BenchSign {
  readonly sign: 'bench';
  readonly check: HandCheck;
  /** What the faulty train does. */
  readonly turns: boolean;
}

/**
 * A gear that works otherwise: under power, or on coast only; rolled backwards only (`inReverse`)
 * where it drives nothing.
 */
export interface RoadSign {
  readonly sign: 'road';
  readonly gear: MatrixGear;
  readonly end: 'drive' | 'coast' | 'inReverse';
  readonly now: Changed;
}

/**
 * The first gear that shows the row's faults, as a driver meets them: those that are neutral
 * first, the others in the order of the file. Undefined where none does.
 */
export function roadSign({ gears }: FaultMatrix, { cells }: FaultRow): RoadSign | undefined {
  const places = gears.map((_, k) => k);
  const idle = (k: number) => gears[k]?.drive.state === 'neutral';
  const met = [...places.filter(idle), ...places.filter((k) => !idle(k))];
  // Nobody pushes a vehicle backwards in neutral before it has been driven.
  const looks = [
    ...met.flatMap((place) => [[place, 'drive'] as const, [place, 'coast'] as const]),
    ...met.map((place) => [place, 'inReverse'] as const),
  ];
  for (const [place, end] of looks) {
    const [gear, now] = [gears[place], cells[place]?.[end]];
    if (gear && now && now.is !== 'same') return { sign: 'road', gear, end, now };
  }
  return undefined;
}

/** Finds the simplest hand check that shows a fault: the healthy train is asked only once. */
export class CheckFinder {
  private readonly variants: Variants;
  private readonly checks: readonly HandCheck[];
  private readonly sound = new Map<HandCheck, boolean>();

  constructor(train: Train) {
    this.variants = new Variants(train);
    const { columns } = this.variants.motion([]);
    const size = Math.max(10, train.devices.length) * Math.max(1, columns / 20) ** 2;
    const work = everyFault(train).length * size;
    this.checks = simplestFirst(train).slice(0, Math.floor(MOST_WORK / work));
  }

  /**
   * Undefined where no check with two things held or applied shows the faults: hands never reach
   * the load at which something slips. Of a train with dozens of devices only the simplest checks
   * are asked.
   */
  sign(all: readonly Fault[]): BenchSign | undefined {
    const faults = all.filter((fault) => !isSlipping(fault));
    const motion = this.variants.motion(faults);
    for (const check of this.nearestFirst(faults)) {
      if (!hasAll(motion, check)) continue;
      const found = turns(motion, check);
      if (found !== this.isSound(check)) return { sign: 'bench', check, turns: found };
    }
    return undefined;
  }

  // Of checks that are as simple, those that touch nothing but the faulty device.
  private nearestFirst(faults: readonly Fault[]): HandCheck[] {
    const { bodies, bodyOf } = this.variants.motion([]).assembly;
    const names = new Set(faults.map((fault) => ('device' in fault ? fault.device : '')));
    const touched = this.variants.train.devices.filter(({ name }) => names.has(name));
    const near = new Set(
      touched.flatMap(({ first, second }) => {
        return [first, second].map((member) => bodies[bodyOf(member) ?? 0]?.label);
      }),
    );
    const isFar = ({ hold, turn }: HandCheck) => [turn, ...hold].some((name) => !near.has(name));
    const rank = (check: HandCheck) => 2 * effortOf(check) + (isFar(check) ? 1 : 0);
    return this.checks.toSorted((a, b) => rank(a) - rank(b));
  }

  private isSound(check: HandCheck): boolean {
    let sound = this.sound.get(check);
    if (sound === undefined) {
      this.sound.set(check, (sound = turns(this.variants.motion([]), check)));
    }
    return sound;
  }
}

// Checks times faults times devices, and more for many members: more than any of our trains
// takes, and a second's work.
const MOST_WORK = 1_000_000;

// Every hand and every device on air makes a check harder; a hand is easier had than air.
function simplestFirst(train: Train): HandCheck[] {
  const bare = handChecks(train, 2);
  const onAir = train.devices.filter(isFriction).flatMap(({ name }) => {
    return bare.filter(({ hold }) => hold.length < 2).map((check) => ({ ...check, on: [name] }));
  });
  return [...bare, ...onAir].toSorted((a, b) => effortOf(a) - effortOf(b));
}

function effortOf({ hold, on }: HandCheck): number {
  return hold.length + on.length;
}

// A stripped join may have taken its name with it.
function hasAll({ assembly }: Motion, { hold, turn }: HandCheck): boolean {
  return [turn, ...hold].every((member) => assembly.bodyOf(member) !== undefined);
}
