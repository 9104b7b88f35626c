import {
  type FrictionDevice,
  type OneWayClutch,
  type Pawl,
  reachAssumed,
  type Train,
} from '../train/index.ts';
import { agendaOf } from './agenda.ts';
import type { Felt, Mistake, Plan, PlannedCheck, Step } from './answer.ts';
import { Bench, type Check } from './bench.ts';
import { smallestCover } from './cover.ts';
import { type Made, mistakesOf } from './mistakes.ts';
import { wholeAt } from './ready.ts';
import { watchedBy } from './watch.ts';

/** A unit has 20 to 40; the work grows with the fourth power of them. */
export const MOST_PARTS = 60;

/**
 * The build of a train, step by step, with the fewest hand checks that catch every mistake that
 * hands can, each at the first step at which any check would, and with what is measured, set,
 * tightened and put on air at its place. Undefined where the train has no teardown; throws a
 * RangeError beyond MOST_PARTS parts.
 *
 * A check holds one member or none and turns another both ways, with nothing applied. Hands
 * feel whether it moves. A check whose own part is left out is no check: eyes see that.
 */
export function plan(train: Train): Plan | undefined {
  if (!train.teardown) return undefined;
  const { length } = train.teardown;
  if (length > MOST_PARTS) throw new RangeError(`${length} parts are more than ${MOST_PARTS}`);
  const its = plans.get(train) ?? worked(train);
  plans.set(train, its);
  return its;
}

// Whoever builds asks at every step; it is looked for once.
const plans = new WeakMap<Train, Plan>();

function worked(train: Train): Plan {
  const bench = new Bench(train);
  const agenda = agendaOf(train);
  const mistakes = mistakesOf(train);
  const checks = catching(bench, mistakes);
  const { chosen, proven } = smallestCover(checks.map(({ catches }) => catches));
  const kept = chosen.map((i) => checks[i] as Catching);
  let left = kept.reduce((union, { catches }) => union | catches, 0n);
  const feltAt = new Map<Made, number>();
  const planned = kept.map(({ check, catches }): [number, PlannedCheck] => {
    const fresh = mistakes.filter((_, bit) => ((catches & left) >> BigInt(bit)) & 1n);
    left &= ~catches;
    for (const made of fresh) feltAt.set(made, check.step);
    return [check.step, plannedCheck(bench, check, fresh)];
  });
  const untold = unfeltBackwards(train, mistakes, feltAt);
  const steps = agenda.map(({ on, ...task }): Step => {
    switch (task.does) {
      case 'fit':
        return {
          ...task,
          checks: planned.flatMap(([at, check]) => (at === on ? [check] : [])),
          oneWays: untold.filter((device) => wholeAt(train, bench.build, device) === on),
        };
      case 'tighten': {
        const still = bench.still(on);
        return { ...task, ...(still && { still }) };
      }
      case 'air check':
      case 'pawl check': {
        const unfelt = mistakes.filter((made) => made.made <= on && !feltAt.has(made));
        const check = airCheck(bench, on, task.device, unfelt);
        return { ...task, ...(check && { check }) };
      }
      default:
        return task;
    }
  });
  const watched = mistakes.map((made) => watchedBy(made, feltAt.get(made), steps, agenda));
  const { teardown = [] } = train;
  const assumed = teardown.filter((part) => reachAssumed(teardown, part)).length;
  return { steps, mistakes: watched, checks: kept.length, assumed, proven };
}

// One-way clutches that no hand check feels backwards.
function unfeltBackwards(
  train: Train,
  mistakes: readonly Made[],
  feltAt: ReadonlyMap<Made, number>,
): OneWayClutch[] {
  const unfelt = new Set(
    mistakes.flatMap((made) => {
      const { mistake } = made;
      const is = mistake.what === 'one-way' && mistake.is === 'backwards' && !feltAt.has(made);
      return is ? [mistake.device] : [];
    }),
  );
  return train.devices.filter((device): device is OneWayClutch => {
    return device.kind === 'one-way' && unfelt.has(device.name);
  });
}

interface Catching {
  readonly check: Check;
  /** A bit for each mistake. */
  readonly catches: bigint;
}

// Every check that is the first to feel something; at one step those that hold nothing, or the
// output, and turn what went on last, come first.
function catching(bench: Bench, mistakes: readonly Made[]): Catching[] {
  const found = new Map<number, { check: Check; catches: bigint }>();
  mistakes.forEach((made, bit) => {
    for (const check of firstFelt(bench, made)) {
      // Each check has a rank of its own.
      const known = found.get(check.rank);
      if (known) known.catches |= 1n << BigInt(bit);
      else found.set(check.rank, { check, catches: 1n << BigInt(bit) });
    }
  });
  return [...found.values()].toSorted((a, b) => a.check.rank - b.check.rank);
}

// The checks that feel a mistake at the first step at which any does.
function firstFelt(bench: Bench, { mistake, made }: Made): readonly Check[] {
  const last = mistake.what === 'slip' || !bench.shows(mistake) ? 0 : bench.build.length;
  for (let step = made; step <= last; step++) {
    const checks = bench.differences(step, mistake);
    if (checks.length > 0) return checks;
  }
  return [];
}

function plannedCheck(bench: Bench, check: Check, fresh: readonly Made[]): PlannedCheck {
  return told(check, bench.felt(check), fresh, (mistake) => bench.felt(check, mistake));
}

// With air on a device; of the mistakes that no hand check feels those that change the answer.
function airCheck(
  bench: Bench,
  on: number,
  device: FrictionDevice | Pawl,
  unfelt: readonly Made[],
): PlannedCheck | undefined {
  const check = bench.onAir(on, device);
  if (!check) return undefined;
  const right = bench.feltOnAir(check, device);
  const gripped = new Set([check.turn.part, check.hold?.part]);
  const felts = new Map<Mistake, Felt>();
  for (const { mistake } of unfelt) {
    if (mistake.what === 'slip' || (mistake.what === 'part' && gripped.has(mistake.part))) continue;
    const felt = bench.spoiltOnAir(check, device, right, mistake);
    if (felt) felts.set(mistake, felt);
  }
  const shown = unfelt.filter(({ mistake }) => felts.has(mistake));
  return told(check, right, shown, (mistake) => felts.get(mistake) as Felt);
}

function told(
  { hold, turn }: Check,
  right: Felt,
  made: readonly Made[],
  feltOf: (mistake: Mistake) => Felt,
): PlannedCheck {
  const felts = new Map<Felt, Mistake[]>();
  for (const { mistake } of made) {
    const felt = feltOf(mistake);
    felts.set(felt, [...(felts.get(felt) ?? []), mistake]);
  }
  const wrong = [...felts].map(([felt, mistakes]) => ({ felt, mistakes }));
  return { ...(hold && { hold }), turn, right, wrong };
}
