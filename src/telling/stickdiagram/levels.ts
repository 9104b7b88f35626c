/**
 * Heights before there are lengths, from the axis outward: shafts and tubes in tracks near the
 * axis, sets and clutches in the middle, drums in tracks around them, brakes at the case. Within
 * the middle a height is in sheet units already, for a set is drawn alike wherever it stands.
 */
export const BELOW = -1000; // through the axis, to the strip below
export const UNDER = -500; // under the axis, to the next wheel on it
export const MIDDLE = 1000;
export const OUTER = 2000;
export const CASE_BAND = 3000;
export const ABOVE = 4000; // beyond the case, to the strip above

/** Sheet units in the middle, up from its foot. */
export const MIDDLE_HEIGHT = 196;
export const RING_RIM = 172;
/** From the case down to the hub of a brake. */
export const HUB_AT_CASE = 58;
/** Where the hub and the drum of a clutch lie that joins two members. */
export const HUB = 52;
export const DRUM = 136;

// Half the heights of planets, those that reach the ring first, by how many stand in a row.
const HALVES = [[46], [33, 26], [25, 20, 20], [20, 16, 16, 16]] as const;

/** Half the height of a planet that stands `level` planets inside the outermost of `levels`. */
export function halfOf(level: number, levels: number): number {
  const halves: readonly number[] = HALVES[Math.min(levels, HALVES.length) - 1] ?? HALVES[0];
  return halves[Math.min(level, halves.length - 1)] ?? 16;
}

/** The pin of such a planet. */
export function pinOf(level: number, levels: number): number {
  let pin = RING_RIM - halfOf(0, levels);
  for (let k = 1; k <= level; k++) pin -= halfOf(k - 1, levels) + halfOf(k, levels);
  return pin;
}
