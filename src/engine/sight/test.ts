import { type HandCheck, handChecks } from '../hand/index.ts';
import { appliedIn, gearsOf, isFriction, type Train } from '../train/index.ts';

/** Something to try on a unit, and look what it does. */
export type Test =
  /** `coast`: the car goes on the way the range would drive it, the foot off. */
  | ({ readonly test: 'under power' | 'coast' } & TestGear & TestLoad & Heat)
  | ({ readonly test: 'noise' } & TestGear & TestLoad & Heat)
  /** From `before`, the lower gear or the higher, into the gear. */
  | ({ readonly test: 'shift'; readonly from: string; readonly before: On } & TestGear &
      TestLoad &
      Heat)
  /** From N into a range, standing; and a stall in it. Both are in its first gear. */
  | ({ readonly test: 'engagement'; readonly range: string; readonly on: On } & Heat)
  | { readonly test: 'stall'; readonly range: string; readonly on: On }
  /** Of the line; in any range and gear where none is named. */
  | ({ readonly test: 'pressure'; readonly speed?: EngineSpeed } & Partial<TestGear> & Heat)
  | { readonly test: UnitTest }
  /** Of the shafts, or of the members of one set as it comes apart. */
  | { readonly test: 'end play'; readonly set?: string }
  | ({ readonly test: 'device pressure'; readonly device: string } & Partial<TestGear> & Heat)
  /** In a gear that does not apply the device. */
  | ({ readonly test: 'stray pressure'; readonly device: string } & TestGear)
  | { readonly test: 'air check' | 'band check' | 'seal rings' | 'seals'; readonly device: string }
  /** Of a one-way clutch out of the unit, in the hands. */
  | { readonly test: 'one-way check'; readonly device: string }
  /** Of a device, or of a set. */
  | { readonly test: 'inspection'; readonly device: string }
  /** At part throttle, by a logger. */
  | ({ readonly test: 'slip log' } & TestGear)
  | { readonly test: 'hand check'; readonly check: HandCheck };

export type UnitTest =
  | 'fluid'
  | 'codes'
  | 'selector'
  | 'filter'
  | 'pan'
  | 'valve body'
  | 'build record'
  | 'engine'
  | 'converter'
  | 'pump'
  | 'manual shift';

export interface TestGear {
  readonly gear: string;
  readonly on: On;
}

/** Left out: driven as people drive. */
export interface TestLoad {
  readonly load?: (typeof LOADS)[number];
}

export interface Heat {
  readonly heat?: (typeof HEATS)[number];
}

export type On = readonly string[];

/** Light: a flat road. Heavy: full throttle, or a steep hill. */
export const LOADS = ['light', 'heavy'] as const;
export const HEATS = ['cold', 'hot'] as const;
export const SPEEDS = ['idle', 'fast idle', 'full throttle'] as const;
export type EngineSpeed = (typeof SPEEDS)[number];

/**
 * Every test of a train, in the order of its file: its gears under power and on coast, whether
 * they growl, its shifts, an engagement and a stall of each range, fluid, codes, selector, end
 * play, line pressure, the pressure, air and band checks of its friction devices, and the checks
 * of two hands with nothing applied, `mostHands` of them at most. N is a gear, in the file or
 * not; nobody coasts, shifts or stalls where nothing drives.
 */
export function testsOf(train: Train, drives: (on: On) => boolean, mostHands: number): Test[] {
  const ranges = rangesOf(train);
  const gears = gearsOf(train, ranges).map(({ range, gear, on }) => {
    return { gear: gearText(range, gear), on };
  });
  const driving = gears.filter(({ on }) => drives(on));
  const firsts = ranges.flatMap(({ name, gears: [first] }) => {
    const on = first && appliedIn(train, first);
    return on && drives(on) ? [{ range: name, on }] : [];
  });
  const friction = train.devices.filter(isFriction);
  return [
    ...gears.map((its) => ({ test: 'under power', ...its }) as const),
    ...driving.map((its) => ({ test: 'coast', ...its }) as const),
    ...driving.map((its) => ({ test: 'noise', ...its }) as const),
    ...driving.map((its) => ({ test: 'slip log', ...its }) as const),
    ...shiftsOf(train),
    ...firsts.map((its) => ({ test: 'engagement', ...its }) as const),
    ...firsts.map((its) => ({ test: 'stall', ...its }) as const),
    ...UNIT_TESTS.map((test) => ({ test })),
    { test: 'pressure' },
    { test: 'end play' },
    ...train.sets.map(({ name }) => ({ test: 'end play', set: name }) as const),
    ...friction.map(({ name }) => ({ test: 'device pressure', device: name }) as const),
    ...friction.flatMap(({ name: device }) =>
      gears
        .filter(({ on }) => !on.includes(device))
        .map((its) => ({ test: 'stray pressure', device, ...its }) as const),
    ),
    ...friction.map(({ name }) => ({ test: 'air check', device: name }) as const),
    ...friction.map(({ name }) => ({ test: 'seal rings', device: name }) as const),
    ...friction.map(({ name }) => ({ test: 'seals', device: name }) as const),
    ...train.devices.flatMap(({ name, kind }) => {
      return kind === 'one-way' ? ({ test: 'one-way check', device: name } as const) : [];
    }),
    ...[...train.devices, ...train.sets].map(({ name }) => {
      return { test: 'inspection', device: name } as const;
    }),
    ...friction
      .filter(({ kind }) => kind === 'band')
      .map(({ name }) => ({ test: 'band check', device: name }) as const),
    ...handChecks(train)
      .slice(0, mostHands)
      .map((check) => ({ test: 'hand check', check }) as const),
  ];
}

const UNIT_TESTS: readonly UnitTest[] = [
  'fluid',
  'codes',
  'selector',
  'manual shift',
  'build record',
  'engine',
  'converter',
  'pump',
  'pan',
  'filter',
  'valve body',
];

/** The ranges of a train, and N where the file has none. */
export function rangesOf({ ranges }: Train): Train['ranges'] {
  const known = ranges.some(({ name, gears }) => name === 'N' || gears.some((g) => g.name === 'N'));
  return known ? ranges : [...ranges, { name: 'N', gears: [{ name: 'N', on: [] }] }];
}

// Up from each gear of a range to the next.
function shiftsOf(train: Train): Test[] {
  return train.ranges.flatMap((range) => {
    const gears = gearsOf(train, [range]).map(({ gear, on }) => {
      return { gear: gearText(range.name, gear), on };
    });
    return gears.slice(1).map((to, k): Test => {
      const { gear: from, on: before } = gears[k] as (typeof gears)[number];
      return { test: 'shift', from, before, ...to };
    });
  });
}

/** A test as a person writes it in a file of what was seen; no two of a train are the same. */
export function testText(test: Test): string {
  const conditions = conditionsOf(test).map((word) => ` ${word}`);
  return baseText(test) + conditions.join('');
}

// How it was driven and how warm it was, as far as that was said.
function conditionsOf(test: Test): string[] {
  const said = [
    'load' in test ? test.load : undefined,
    'speed' in test ? test.speed : undefined,
    'heat' in test ? test.heat : undefined,
  ];
  return said.filter((word) => word !== undefined);
}

/** The same, whatever the load and the heat. */
export function baseText(test: Test): string {
  switch (test.test) {
    case 'under power':
      return test.gear;
    case 'coast':
      return `${test.gear} coast`;
    case 'noise':
      return `noise ${test.gear}`;
    case 'shift':
      return `shift ${shiftText(test)}`;
    case 'engagement':
      return `N to ${test.range}`;
    case 'stall':
      return `stall ${test.range}`;
    case 'pressure':
      return test.gear === undefined ? 'pressure' : `pressure ${test.gear}`;
    case 'fluid':
    case 'codes':
    case 'selector':
    case 'filter':
    case 'pan':
    case 'valve body':
    case 'build record':
    case 'engine':
    case 'converter':
    case 'pump':
    case 'manual shift':
      return test.test;
    case 'slip log':
      return `log ${test.gear}`;
    case 'seal rings':
      return `rings ${test.device}`;
    case 'seals':
      return `seals ${test.device}`;
    case 'one-way check':
      return `one-way ${test.device}`;
    case 'inspection':
      return `inspect ${test.device}`;
    case 'end play':
      return test.set === undefined ? test.test : `${test.test} ${test.set}`;
    case 'device pressure':
      return `pressure at ${test.device}${test.gear === undefined ? '' : ` in ${test.gear}`}`;
    case 'stray pressure':
      return `pressure at ${test.device} in ${test.gear}`;
    case 'band check':
      return `band ${test.device}`;
    case 'air check':
      return `air ${test.device}`;
    case 'hand check': {
      const { hold, turn, way, on } = test.check;
      const held = hold.map((member) => `, hold ${member}`).join('');
      const applied = on.map((device) => `, ${device} on`).join('');
      return `turn ${turn} ${way}${held}${applied}`;
    }
  }
}

/** "D 2-3". */
export function shiftText({ from, gear }: { readonly from: string; readonly gear: string }) {
  const to = gear.split(' ').at(-1) as string;
  return `${from}-${to}`;
}

/** "D 1"; a range whose only gear has its name is said once: "R". */
export function gearText(range: string, gear: string): string {
  return range === gear ? range : `${range} ${gear}`;
}
