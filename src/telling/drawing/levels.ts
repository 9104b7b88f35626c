/**
 * Heights before there are lengths, from the axis outward: shafts and tubes near the axis, sets
 * and clutches in the middle, drums around them, brakes at the case. Within the middle a height
 * is in sheet units already, for a set is drawn the same wherever it stands.
 */
export const BELOW = -1000; // through the axis, to the strip below
export const MIDDLE = 1000;
export const OUTER = 2000;
export const CASE_BAND = 3000;
export const ABOVE = 4000; // beyond the case, to the strip above

/** Sheet units in the middle, up from its foot. A planet is as high as its meshes are apart. */
export const RING_RIM = 176;
export const PLANET_HALF = [30, 24] as const;
export const MIDDLE_HEIGHT = 200;
/** Where the plates of a clutch lie that joins two members. */
export const PLATES = { low: 64, high: 128 } as const;

/** The pin of a planet of a level. */
export function pinOf(level: number): number {
  const first = RING_RIM - halfOf(0);
  let pin = first;
  for (let k = 1; k <= level; k++) pin -= halfOf(k - 1) + halfOf(k);
  return pin;
}

/** Half the height of a planet of a level. */
export function halfOf(level: number): number {
  return level === 0 ? PLANET_HALF[0] : PLANET_HALF[1];
}

/** Where a sun's rim meets a planet of a level. */
export function sunRimOf(level: number): number {
  return pinOf(level) - halfOf(level);
}
