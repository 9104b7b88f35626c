import { appliedIn, gearsOf } from '../train/index.ts';
import type { Cause } from './cause.ts';
import { type Road, SOUND } from './road.ts';
import { gearText, rangesOf } from '../sight/index.ts';
import type { Bare } from './manner.ts';

/** The lever out by a notch: one of its positions is another's, next to it. */
export function leverWays({ train }: Road): Bare[] {
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

/**
 * A control that stays in one gear: every gear of the range that has most of them is that one, and
 * of every forward range, where the lever alone brings no other.
 */
export function stuckGears(road: Road): Bare[] {
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

/**
 * A device that is fed when it should not be: in every gear in which it is off, or in some that
 * follow one another in a range, as its valves and the lever go.
 */
export function fedWays({ faults }: Cause, { train }: Road): Bare[] {
  const [fault] = faults;
  const device = fault && 'device' in fault ? fault.device : '';
  const off = rangesOf(train).map((range) =>
    gearsOf(train, [range]).map(({ on, gear }) => {
      return on.includes(device) ? undefined : gearText(range.name, gear);
    }),
  );
  const all = off.flat().filter((gear) => gear !== undefined);
  const runs = off.flatMap((gears) =>
    gears.flatMap((_, from) => {
      const on = gears.slice(from).findIndex((gear) => gear === undefined);
      const run = gears.slice(from, on < 0 ? undefined : from + on) as string[];
      return run.map((_gear, k) => run.slice(0, k + 1));
    }),
  );
  const manner = (share: number, gears: readonly string[]): Bare => {
    return { share, faults: SOUND, weak: [], fed: { faults, gears: new Set(gears) } };
  };
  if (runs.length === 0) return [{ share: 1, faults: SOUND, weak: [] }];
  return [
    manner(EVERYWHERE, all),
    ...runs.map((gears) => manner((1 - EVERYWHERE) / runs.length, gears)),
  ];
}

const EVERYWHERE = 0.3;

function goesForward(road: Road, on: readonly string[]): boolean {
  return road.run(SOUND, on, 'under power').state === 'driving' && !road.goesBack(on);
}
