/**
 * Why a set cannot be put together as counted. Distances and gaps are in half modules, so that
 * a wheel's pitch radius is its teeth; all wheels of a set are taken to have one module.
 */
export type GeometryFinding =
  /**
   * The ring's teeth do not close the chain from the sun over the planets. Profile shift lets a
   * ring differ from `fits` by `allowance` teeth, which is already granted.
   */
  | {
      readonly problem: 'ring does not fit';
      readonly set: string;
      readonly ring: number;
      /** The teeth that would fit: one number but for meshed pairs; null is no limit. */
      readonly fits: { readonly from: number; readonly to: number | null };
      readonly allowance: 1;
    }
  /**
   * `sum` must divide by the number of planets (pairs; pinions of a bevel set); `counts` are
   * some that do.
   */
  | {
      readonly problem: 'planets not evenly spaced';
      readonly set: string;
      readonly planets: number;
      readonly sum: number;
      readonly by: SpacingRule;
      readonly counts: readonly number[];
    }
  /** The tips of neighbouring planets meet: they overlap by `overlap`; at most `most` clear. */
  | {
      readonly problem: 'planets touch';
      readonly set: string;
      readonly planets: number;
      readonly teeth: number;
      readonly overlap: number;
      readonly most: number;
    }
  /** A planet's meshes ask for distances from the main axis that differ by over 2 · allowance. */
  | {
      readonly problem: 'centre distances differ';
      readonly set: string;
      readonly wheel: string;
      readonly distances: readonly { readonly with: string; readonly distance: number }[];
      readonly allowance: 1;
    }
  /** An internal mesh needs a ring gear with more teeth than the wheel inside it. */
  | {
      readonly problem: 'no room inside';
      readonly within: string;
      readonly teeth: readonly [number, number];
    };

/** What the sum that must divide is made of. */
export type SpacingRule =
  | 'sun + ring'
  | 'ring - sun'
  | 'sun · second step + ring · first step'
  | 'sides';

/** Profile shift can take up about one tooth. */
export const ALLOWANCE = 1;

/** The ring against the teeth that fit, from and to; null is no limit. */
export function ringFit(
  set: string,
  ring: number,
  from: number,
  to: number | null = from,
): GeometryFinding[] {
  if (ring >= from - ALLOWANCE && ring <= (to ?? ring) + ALLOWANCE) return [];
  return [{ problem: 'ring does not fit', set, ring, fits: { from, to }, allowance: ALLOWANCE }];
}

/** Whether `sum` divides by so many planets into whole multiples of `unit`. */
export function spacing(
  set: string,
  planets: number | undefined,
  sum: number,
  unit: number,
  by: SpacingRule,
): GeometryFinding[] {
  const even = (count: number) => sum % (count * unit) === 0;
  if (planets === undefined || even(planets)) return [];
  const counts = [2, 3, 4, 5, 6, 7, 8].filter(even);
  return [{ problem: 'planets not evenly spaced', set, planets, sum, by, counts }];
}

/**
 * The gap between so many planets on pins at `radius`: their centres are 2·radius·sin(180°/N)
 * apart, and each reaches teeth + 2 (a full addendum).
 */
export function beside(teeth: number, radius: number): (count: number) => number {
  return (count) => 2 * radius * Math.sin(Math.PI / count) - 2 * (teeth + 2);
}

/** A sine is never trusted to the last digit: a gap under a millionth is none. */
export function touching(
  set: string,
  planets: number | undefined,
  teeth: number,
  gap: (count: number) => number,
): GeometryFinding[] {
  const touch = (count: number) => count > 1 && gap(count) < 1e-6;
  if (planets === undefined || !touch(planets)) return [];
  let most = planets - 1;
  while (touch(most)) most -= 1;
  return [{ problem: 'planets touch', set, planets, teeth, overlap: -gap(planets), most }];
}

/** The greatest common divisor. */
export function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}
