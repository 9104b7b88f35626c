import type { Fault } from '../faults/index.ts';
import type { OutcomeWord, Shows } from '../practice/index.ts';
import { appliedIn, gearsOf } from '../train/index.ts';
import type { Cause } from './cause.ts';
import { type Road, SOUND } from './road.ts';
import { gearText, rangesOf } from './test.ts';

/**
 * One of the ways in which a cause may be so, which the road can tell apart: how weak, worse
 * cold or hot, which way a band holds better, which gears of the lever are meant.
 */
export interface Way {
  /** The place of its cause. */
  readonly cause: number;
  /** How often it is this way, of the cause's ways together 1. */
  readonly share: number;
  readonly faults: readonly Fault[];
  readonly weak: readonly Weakness[];
  /** What is applied in place of what a gear applies, by gear. */
  readonly instead?: ReadonlyMap<string, readonly string[]>;
  /** What a stall shows in whichever range, where something holds: engine and converter are the same. */
  readonly stalls?: OutcomeWord;
}

/** What holds with a part of its strength. */
export interface Weakness {
  /** Absent: every device, for want of line pressure. */
  readonly device?: string;
  /** Which part of full load it holds, in the gear that asks most of it. */
  readonly strength: number;
  /** How the load is felt cold: below 1 it holds more. */
  readonly cold: number;
  /** What it can carry each way for what it carries in the gear that asks most of it. */
  readonly grip: Grip;
  /** Line pressure in reverse, times that of a forward gear. */
  readonly back: number;
  /** It takes the pressure of the others, which then hold this part of full load. */
  readonly starves?: number;
}

/** What a device can put on its first-named member, each way; only the proportions count. */
export interface Grip {
  readonly device: string;
  readonly clockwise: number;
  readonly anticlockwise: number;
}

/**
 * The ways of all causes; `grips`: what the file says of how strong a device is, `stall`: what the
 * practice says that a stall shows.
 */
export function waysOf(
  causes: readonly Cause[],
  road: Road,
  grips: readonly Grip[],
  stall: Shows,
): Way[] {
  const made = new Map<Cause, readonly Bare[]>();
  const of = (cause: Cause): readonly Bare[] => {
    let ways = made.get(cause);
    if (!ways) {
      ways = cause.both
        ? product(of(cause.both[0]), of(cause.both[1]))
        : singly(cause, road, grips, stall);
      made.set(cause, ways);
    }
    return ways;
  };
  return causes.flatMap((cause, c) => of(cause).map((way) => ({ ...way, cause: c })));
}

type Bare = Omit<Way, 'cause'>;

function singly(cause: Cause, road: Road, grips: readonly Grip[], stall: Shows): readonly Bare[] {
  const plain: Bare = { share: 1, faults: cause.faults, weak: [] };
  const [fault] = cause.faults;
  switch (cause.cause) {
    case 'device slips':
    case 'device leaks':
      return fault && 'device' in fault ? weakWays(fault.device, cause, road, grips) : [plain];
    case 'one-way clutch slips': {
      if (!fault || !('device' in fault)) return [plain];
      const rolls = weakWays(fault.device, cause, road, grips);
      const partly = rolls.map((way) => ({ ...way, share: way.share * ROLLS }));
      return [{ ...plain, share: 1 - ROLLS }, ...partly];
    }
    case 'low line pressure':
      return lineWays();
    case 'stator slips':
    case 'engine weak':
      return stallWays(cause, stall);
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

// From nearly nothing to nearly all of it, close enough that two gears which ask for different
// torques are parted; what hardly holds is as good as dead, and counted there.
const STRENGTHS = Array.from({ length: 26 }, (_, k) => 0.98 * 0.87 ** k);

// A car is brought while it still drives: what has lost little is as frequent as what has lost
// much, so that on steps of equal proportion a strength weighs as much as it is.
function weightOf(strength: number, among: readonly number[]): number {
  return strength / among.reduce((sum, its) => sum + its, 0);
}

// Wrong fluid and lining hold more cold; a shrunken seal less.
const COLD = [
  { cold: 0.7, share: 0.75 },
  { cold: 1.4, share: 0.25 },
];
const BACK = [1, 1.5];
// A leak takes little of what the pump gives, and now and then so much that the others want it.
const ENOUGH = [{ share: 1, starves: undefined }];
const STARVING = [
  { share: 0.8, starves: undefined },
  { share: 0.2, starves: 0.45 },
];
// A band holds two to four times better with its wrap than against it.
const WRAPS = [2, 3, 4];

function weakWays(device: string, cause: Cause, road: Road, grips: readonly Grip[]): Bare[] {
  const leaks = cause.cause === 'device leaks';
  const starving = leaks ? STARVING : ENOUGH;
  const strengths = leaks ? STRENGTHS.filter((_, k) => k % 2 === 0) : STRENGTHS;
  const backs = worksBothWays(device, road) ? BACK : [1];
  const ways = gripsOf(device, road, grips).flatMap(({ share: gripped, ...grip }) =>
    backs.flatMap((back) => {
      const most = mostAsked(device, grip, back, road);
      const scaled = {
        device,
        clockwise: grip.clockwise * most,
        anticlockwise: grip.anticlockwise * most,
      };
      return COLD.flatMap(({ cold, share }) =>
        strengths.flatMap((strength) =>
          starving.map(({ starves, share: starved }): Bare => {
            const weak = { device, strength, cold, grip: scaled, back };
            return {
              share: (gripped * share * starved * weightOf(strength, strengths)) / backs.length,
              faults: SOUND,
              weak: [{ ...weak, ...(starves !== undefined && { starves }) }],
            };
          }),
        ),
      );
    }),
  );
  return ways;
}

// Whether gears of both ways load the device: only then the pressure in reverse makes a difference.
function worksBothWays(device: string, road: Road): boolean {
  const back = gearsOf(road.train).flatMap(({ on }) => {
    const torque = road.torques(SOUND, on, 'under power').get(device)?.most ?? 0;
    return torque === 0 ? [] : [road.goesBack(on)];
  });
  return new Set(back).size > 1;
}

// As the file says; else a band holds one way better, and nobody has said which.
function gripsOf(device: string, { train }: Road, grips: readonly Grip[]) {
  const known = grips.find((grip) => grip.device === device);
  if (known) return [{ ...known, share: 1 }];
  const even = { device, clockwise: 1, anticlockwise: 1 };
  const band = train.devices.some(({ name, kind }) => name === device && kind === 'band');
  if (!band) return [{ ...even, share: 1 }];
  const share = 1 / (2 * WRAPS.length + 1);
  const wrapped = WRAPS.flatMap((wrap) => [
    { ...even, clockwise: wrap, share },
    { ...even, anticlockwise: wrap, share },
  ]);
  return [{ ...even, share }, ...wrapped];
}

// What the gear that asks most of it asks under power, over what it could carry there.
function mostAsked(device: string, grip: Grip, back: number, road: Road): number {
  const asked = gearsOf(road.train).map(({ on }) => {
    const torque = road.torques(SOUND, on, 'under power').get(device);
    return over(torque?.least ?? 0, grip) / (road.goesBack(on) ? back : 1);
  });
  return Math.max(...asked, 0) || 1;
}

/** A torque on the first-named member, over what a device can put there that way. */
export function over(torque: number, { clockwise, anticlockwise }: Grip): number {
  return torque > 0 ? torque / clockwise : -torque / anticlockwise;
}

const NO_GRIP: Grip = { device: '', clockwise: 1, anticlockwise: 1 };

function lineWays(): Bare[] {
  // Hot oil leaks more: a worn pump is good cold.
  const colds = [0.4, 1];
  return colds.flatMap((cold) =>
    STRENGTHS.map((strength): Bare => {
      const share = weightOf(strength, STRENGTHS) / colds.length;
      return { share, faults: SOUND, weak: [{ strength, cold, grip: NO_GRIP, back: 1 }] };
    }),
  );
}

// The lever out by a notch: one of its positions is another's, next to it.
function leverWays({ train }: Road): Bare[] {
  const order = ['P', 'R', 'N', 'D'];
  const ranges = rangesOf(train).toSorted((a, b) => {
    const place = (name: string) => (order.includes(name) ? order.indexOf(name) : order.length);
    return place(a.name) - place(b.name);
  });
  const swaps = ranges.flatMap((range, k) =>
    [ranges[k - 1], ranges[k + 1]].flatMap((other) => {
      if (!other) return [];
      const [first] = other.gears;
      return [
        new Map(
          range.gears.map(({ name }) => {
            const its = other.gears.find((gear) => gear.name === name) ?? first;
            return [gearText(range.name, name), its ? appliedIn(train, its) : []] as const;
          }),
        ),
      ];
    }),
  );
  // Or it is out and nothing of it is felt in a gear.
  const felt = 0.7 / Math.max(1, swaps.length);
  return [
    { share: swaps.length > 0 ? 0.3 : 1, faults: SOUND, weak: [] },
    ...swaps.map((instead) => ({ share: felt, faults: SOUND, weak: [], instead })),
  ];
}

// Stalled in one range or another, an engine and its converter do the same.
function stallWays({ cause, faults }: Cause, stall: Shows): Bare[] {
  const shown = Object.entries(stall[cause] ?? {}) as [OutcomeWord, number][];
  const sum = shown.reduce((total, [, weight]) => total + weight, 0);
  if (sum === 0) return [{ share: 1, faults, weak: [] }];
  return shown
    .filter(([, weight]) => weight > 0)
    .map(([stalls, weight]) => ({ share: weight / sum, faults, weak: [], stalls }));
}

// A control that stays in one gear: every gear of the range that has most of them is that one, and
// of every forward range, where the lever alone brings no other.
function stuckGears(road: Road): Bare[] {
  const { ranges } = road.train;
  const most = Math.max(...ranges.map(({ gears }) => gears.length), 0);
  const range = ranges.find(({ gears }) => gears.length === most);
  if (!range || most < 2) return [{ share: 1, faults: SOUND, weak: [] }];
  const forward = ranges.filter((other) => {
    return gearsOf(road.train, [other]).every(({ on }) => goesForward(road, on));
  });
  const reaches = forward.length > 1 ? [[range], forward] : [[range]];
  return reaches.flatMap((reach) =>
    gearsOf(road.train, [range]).map(({ on }) => ({
      share: 1 / (most * reaches.length),
      faults: SOUND,
      weak: [],
      instead: new Map(
        gearsOf(road.train, reach).map(({ range: its, gear }) => [gearText(its, gear), on]),
      ),
    })),
  );
}

function goesForward(road: Road, on: readonly string[]): boolean {
  return road.run(SOUND, on, 'under power').state === 'driving' && !road.goesBack(on);
}

// Two causes at once, each in its ways; of many, some that stand for all.
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

function thinned(ways: readonly Bare[]): readonly Bare[] {
  const step = Math.ceil(ways.length / MOST_WAYS);
  if (step === 1) return ways;
  const kept = ways.filter((_, k) => k % step === 0);
  const sum = kept.reduce((total, { share }) => total + share, 0);
  return kept.map((way) => ({ ...way, share: way.share / sum }));
}

const MOST_WAYS = 24;
