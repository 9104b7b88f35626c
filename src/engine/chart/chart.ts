import {
  beforeFinal,
  coasting,
  ratioOf,
  type State,
  stateOf,
  underPower,
  vehicleOf,
} from '../flow/index.ts';
import type { Rational } from '../linear/index.ts';
import { type Motion, motionOf } from '../motion/index.ts';
import { judge, speedAt } from '../reckon/index.ts';
import { gearsOf, isApplied, type Train } from '../train/index.ts';
import { maskOf, namesOf } from './mask.ts';
import type { Chart, ChartGear, GearName, Shift } from './answer.ts';

/** More friction devices than this make too many combinations to list. */
export const MOST_DEVICES = 10;

/**
 * What every combination of the train's friction devices does, each answer with its
 * certificate checked. Throws a RangeError beyond MOST_DEVICES friction devices.
 */
export function chart(train: Train): Chart {
  const motion = motionOf(train);
  const devices = train.devices.filter(isApplied).map(({ name }) => name);
  if (devices.length > MOST_DEVICES) {
    throw new RangeError(
      `${devices.length} friction devices make more than 2^${MOST_DEVICES} rows`,
    );
  }
  const names = declaredNames(train, devices);
  const gears: ChartGear[] = [];
  for (let mask = 0; mask < 2 ** devices.length; mask++) {
    gears.push(chartGear(motion, namesOf(mask, devices), names.get(mask) ?? []));
  }
  return { devices, forward: vehicleOf(train).forward, gears, shifts: shiftsOf(gears, devices) };
}

function chartGear(motion: Motion, on: readonly string[], named: readonly GearName[]): ChartGear {
  const drive = judge(motion, underPower(motion.train, on));
  const state = stateOf(drive);
  const ratio = state === 'driving' ? (ratioOf(drive, 'input') as Rational) : undefined;
  const own = ratio && beforeFinal(motion.train, (member) => speedAt(drive, member));
  const ways = vehicleOf(motion.train).ways(on, drive);
  const [coast, back] = ways.map((way) => stateOf(judge(motion, coasting(motion.train, on, way))));
  const inReverse = back && back !== coast && { inReverse: back };
  return {
    on,
    drive: state,
    ...(ratio && { ratio }),
    ...(own && { beforeFinal: own }),
    coast: coast as State,
    ...inReverse,
    named,
  };
}

// Combination (a bit a device) -> the gears that apply it.
function declaredNames(train: Train, devices: readonly string[]): Map<number, GearName[]> {
  const names = new Map<number, GearName[]>();
  for (const { range, gear, on } of gearsOf(train)) {
    const mask = maskOf(on, devices);
    names.set(mask, [...(names.get(mask) ?? []), { range, gear }]);
  }
  return names;
}

// Pairs of named driving gears that differ by one device, or by one off-going and one on-coming.
function shiftsOf(gears: readonly ChartGear[], devices: readonly string[]): Shift[] {
  const named = gears.flatMap((gear, mask) => {
    return gear.named.length > 0 && gear.drive === 'driving' ? [mask] : [];
  });
  const shifts: Shift[] = [];
  for (const from of named) {
    for (const to of named) {
      const [release, apply] = [from & ~to, to & ~from].map((mask) => namesOf(mask, devices));
      if (from >= to || !release || !apply || release.length > 1 || apply.length > 1) continue;
      const [offGoing, onComing] = [release[0], apply[0]];
      const change = {
        from,
        to,
        ...(offGoing && { release: offGoing }),
        ...(onComing && { apply: onComing }),
      };
      if (offGoing && onComing) {
        shifts.push({ ...change, both: from | to, neither: from & to });
      } else {
        shifts.push(change);
      }
    }
  }
  return shifts;
}
