import type { Fault } from '../faults/index.ts';
import type { OutcomeWord, Shows } from '../experience/index.ts';
import type { Cause } from './cause.ts';
import { fedWays, leverWays, stuckGears } from './lever.ts';
import type { Road } from './road.ts';
import type { Bare, DeviceGrip, Manner } from './manner.ts';
import { lineWays, weakWays } from './weakness.ts';

/**
 * The manners of all causes; `grips`: what the file says of how strong a device is, `stall`: what the
 * experience says that a stall shows.
 */
export function mannersOf(
  causes: readonly Cause[],
  road: Road,
  grips: readonly DeviceGrip[],
  stall: Shows,
): Manner[] {
  const made = new Map<Cause, readonly Bare[]>();
  const of = (cause: Cause): readonly Bare[] => {
    let manners = made.get(cause);
    if (!manners) {
      manners = cause.both
        ? product(of(cause.both[0]), of(cause.both[1]))
        : singly(cause, road, grips, stall);
      made.set(cause, manners);
    }
    return manners;
  };
  return causes.flatMap((cause, c) => of(cause).map((manner) => ({ ...manner, cause: c })));
}

function singly(
  cause: Cause,
  road: Road,
  grips: readonly DeviceGrip[],
  stall: Shows,
): readonly Bare[] {
  const plain: Bare = { share: 1, faults: cause.faults, weak: [] };
  const [fault] = cause.faults;
  switch (cause.cause) {
    case 'device slips':
    case 'device leaks':
      return fault && 'device' in fault ? weakWays(fault.device, cause, road, grips) : [plain];
    case 'one-way clutch slips': {
      if (!fault || !('device' in fault)) return [plain];
      const rolls = weakWays(fault.device, cause, road, grips);
      const partly = rolls.map((manner) => ({ ...manner, share: manner.share * ROLLS }));
      return [{ ...plain, share: 1 - ROLLS }, ...partly];
    }
    case 'low line pressure':
      return lineWays();
    case 'stator slips':
    case 'engine weak':
      return stallWays(cause, stall);
    case 'device fed by mistake':
      return fedWays(cause, road);
    case 'selector linkage':
      return leverWays(road);
    case 'control':
      return stuckGears(road);
    default:
      return [plain];
  }
}

// A one-way clutch that fails mostly holds nothing; now and then it rolls over above a load.
const ROLLS = 0.25;

// Stalled in one range or another, an engine and its converter do the same.
function stallWays({ cause, faults }: Cause, stall: Shows): Bare[] {
  const shown = Object.entries(stall[cause] ?? {}) as [OutcomeWord, number][];
  const sum = shown.reduce((total, [, weight]) => total + weight, 0);
  if (sum === 0) return [{ share: 1, faults, weak: [] }];
  return shown
    .filter(([, weight]) => weight > 0)
    .map(([stalls, weight]) => ({ share: weight / sum, faults, weak: [], stalls }));
}

// Two causes at once, each in its manners; of many, some that stand for all.
function product(a: readonly Bare[], b: readonly Bare[]): Bare[] {
  const [few, others] = [thinned(a), thinned(b)];
  const lists = new Map<readonly Fault[], Map<readonly Fault[], readonly Fault[]>>();
  const both = (one: readonly Fault[], other: readonly Fault[]) => {
    if (one.length === 0 || other.length === 0) return one.length === 0 ? other : one;
    const known = lists.get(one) ?? new Map<readonly Fault[], readonly Fault[]>();
    lists.set(one, known);
    const faults = known.get(other) ?? [...one, ...other];
    known.set(other, faults);
    return faults;
  };
  return few.flatMap((one) =>
    others.map((other): Bare => {
      const faults = both(one.faults, other.faults);
      const instead = one.instead ?? other.instead;
      const stalls = one.stalls ?? other.stalls;
      return {
        share: one.share * other.share,
        faults,
        weak: [...one.weak, ...other.weak],
        ...(instead && { instead }),
        ...(stalls !== undefined && { stalls }),
      };
    }),
  );
}

function thinned(manners: readonly Bare[]): readonly Bare[] {
  const step = Math.ceil(manners.length / MOST_MANNERS);
  if (step === 1) return manners;
  const kept = manners.filter((_, k) => k % step === 0);
  const sum = kept.reduce((total, { share }) => total + share, 0);
  return kept.map((manner) => ({ ...manner, share: manner.share / sum }));
}

const MOST_MANNERS = 24;
