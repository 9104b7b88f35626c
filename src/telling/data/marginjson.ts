import type { Rational } from '../../engine/linear/index.ts';
import {
  firstToSlip,
  type GearMargin,
  type Load,
  type SideMargin,
} from '../../engine/margin/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { type Json, numberJson, quantityJson } from './json.ts';

/**
 * Whether each gear holds. Pressures in kPa, torques in N m; a device's are on the member that it
 * names first, clockwise positive. null: nothing limits it, no pressure holds, nobody has said.
 */
export function marginJson(train: Train, load: Load, gears: readonly GearMargin[]): Json {
  return {
    pressureKpa: numberJson(load.pressureKpa),
    engineNm: numberJson(load.engineNm),
    stallRatio: numberJson(load.stallRatio),
    gears: gears.map(({ range, gear, on, drive, coast, inReverse }) => {
      const back = inReverse && { inReverse: sideJson(inReverse) };
      return { range, gear, on, drive: sideJson(drive), coast: sideJson(coast), ...back };
    }),
    first: firstJson(gears),
    sources: Object.fromEntries(
      (train.capacities ?? []).map(({ device, source = null, by = null }) => {
        return [device, { source, by }];
      }),
    ),
  };
}

function firstJson(gears: readonly GearMargin[]): Json {
  const first = firstToSlip(gears);
  if (!first) return null;
  const { mostNm, askedNm, ...where } = first;
  return { ...where, mostNm: numberJson(mostNm), askedNm: numberJson(askedNm) };
}

function sideJson({ state, askedNm, mostNm, letsGo, leastKpa, devices }: SideMargin): Json {
  if (state !== 'driving') return { state };
  return {
    state,
    askedNm: numberJson(askedNm),
    mostNm: maybe(mostNm),
    letsGo,
    leastKpa: maybe(leastKpa),
    devices: Object.fromEntries(
      devices.map(({ device, mustNm, canNm }) => {
        return [device, { mustNm: quantityJson(mustNm), canNm: maybe(canNm) }];
      }),
    ),
  };
}

function maybe(value: Rational | null): Json {
  return value && numberJson(value);
}
