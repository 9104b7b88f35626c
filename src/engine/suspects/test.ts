import type { Course } from '../flow/index.ts';
import { type HandCheck, handChecks } from '../hand/index.ts';
import { isFriction, type Train } from '../train/index.ts';

/** Something to try on a unit, and look what it does. */
export type Test =
  | { readonly test: 'under power' | 'coast'; readonly gear: string; readonly on: On }
  /** In a range, which starts in its first gear. */
  | { readonly test: 'stall'; readonly range: string; readonly on: On }
  | { readonly test: 'fluid' | 'pressure' }
  | { readonly test: 'air check'; readonly device: string }
  | { readonly test: 'hand check'; readonly check: HandCheck };

type On = readonly string[];

/** Where a gear takes the vehicle. */
export type Goes = Course | 'nowhere';

/**
 * Every test of a train, in the order of its file: its gears under power and on coast, a
 * stall of each range, fluid, pressure, the air check of each friction device, and the checks
 * of two hands with nothing applied, `mostHands` of them at most. Nobody coasts in
 * a gear that drives nothing.
 */
export function testsOf(train: Train, goes: (on: On) => Goes, mostHands: number): Test[] {
  const gears = train.ranges.flatMap((range) =>
    range.gears.map(({ name, on }) => ({ gear: gearText(range.name, name), on })),
  );
  return [
    ...gears.map((its) => ({ test: 'under power', ...its }) as const),
    ...gears
      .filter(({ on }) => goes(on) !== 'nowhere')
      .map((its) => ({ test: 'coast', ...its }) as const),
    ...train.ranges.flatMap(({ name, gears: [first] }) => {
      if (!first || goes(first.on) === 'nowhere') return [];
      return [{ test: 'stall', range: name, on: first.on } as const];
    }),
    { test: 'fluid' },
    { test: 'pressure' },
    ...train.devices
      .filter(isFriction)
      .map(({ name }) => ({ test: 'air check', device: name }) as const),
    ...handChecks(train)
      .slice(0, mostHands)
      .map((check) => ({ test: 'hand check', check }) as const),
  ];
}

/** A test as a person writes it in a file of what was seen; no two of a train are the same. */
export function testText(test: Test): string {
  switch (test.test) {
    case 'under power':
      return test.gear;
    case 'coast':
      return `${test.gear} coast`;
    case 'stall':
      return `stall ${test.range}`;
    case 'fluid':
    case 'pressure':
      return test.test;
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

// "D 1"; a range whose only gear has its name is said once: "R".
function gearText(range: string, gear: string): string {
  return range === gear ? range : `${range} ${gear}`;
}
