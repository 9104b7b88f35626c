/** The standard pressure angle, 20°, in radians. */
export const PRESSURE_ANGLE = (20 * Math.PI) / 180;

/** The involute function, inv α = tan α − α; α in radians, from 0 to under π/2. */
export function inv(angle: number): number {
  return Math.tan(angle) - angle;
}

/** The angle whose involute function has a value ≥ 0; in radians. */
export function angleOfInv(value: number): number {
  if (value <= 0) return 0;
  // Both are too large (inv α > α³/3; tan α < inv α + π/2), and inv is convex, so that Newton's
  // steps come down to the root from above.
  let angle = Math.min(Math.cbrt(3 * value), Math.atan(value + Math.PI / 2));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const step = (inv(angle) - value) / Math.tan(angle) ** 2;
    angle -= step;
    if (Math.abs(step) < 1e-15) break;
  }
  return angle;
}

const MOST_ROUNDS = 60;
