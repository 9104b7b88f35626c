import type { Rise } from './rise.ts';

/** How a lining is taken to press: evenly, as when new; or by what has worn in. */
export type Lining = 'uniform pressure' | 'uniform wear';

/** A ring of friction material, or a piston: its two diameters. */
export interface Ring {
  readonly outerMm: number;
  readonly innerMm: number;
}

/** A multi-plate clutch or brake and the piston that closes it. */
export interface PlateClutch {
  /** Rubbing faces: two a friction disc, one a single-sided one. */
  readonly faces: number;
  readonly friction: number;
  readonly lining: Ring;
  readonly piston: Ring;
  /** The force of the return springs with the pack closed. */
  readonly springsN: number;
  readonly presses: Lining;
}

/**
 * The torque that the pressure at the piston lets a pack carry, either way: T = faces · μ · F · r,
 * F = pressure · piston area − springs. To be believed for flat plates that all take the same
 * clamp, with a μ that was measured for this lining in this fluid (paper in fluid: 0.09 to 0.16);
 * splines that drag make the far faces carry less.
 */
export function plateRise(clutch: PlateClutch): Rise {
  const areaMm2 = ringAreaMm2(clutch.piston);
  return {
    perKpaNm: plateTorqueNm(clutch, areaMm2 / 1000),
    fromKpa: (clutch.springsN / areaMm2) * 1000,
  };
}

/** T = faces · μ · F · effective radius; none where nothing presses. */
export function plateTorqueNm(
  { faces, friction, lining, presses }: Omit<PlateClutch, 'piston' | 'springsN'>,
  clampN: number,
): number {
  return (faces * friction * Math.max(0, clampN) * effectiveRadiusMm(lining, presses)) / 1000;
}

/**
 * The radius at which the friction of a face may be thought to act (Shigley, Mechanical
 * Engineering Design, chapter 16). Uniform pressure: ⅔ (ro³ − ri³) / (ro² − ri²), for new
 * linings. Uniform wear: (ro + ri) / 2, for worn-in ones; the smaller, so the safer, of the two.
 */
export function effectiveRadiusMm({ outerMm, innerMm }: Ring, presses: Lining): number {
  const [outer, inner] = [outerMm / 2, innerMm / 2];
  if (presses === 'uniform wear') return (outer + inner) / 2;
  return ((2 / 3) * (outer ** 3 - inner ** 3)) / (outer ** 2 - inner ** 2);
}

/**
 * The pressure on a lining at a radius. Uniform wear: F / (2π (ro − ri) r), greatest at the
 * inner edge; uniform pressure: F over the area. Grooves make it higher: leave their share out.
 */
export function liningPressureKpa(
  lining: Ring,
  presses: Lining,
  clampN: number,
  radiusMm = lining.innerMm / 2,
): number {
  if (presses === 'uniform pressure') return (clampN / ringAreaMm2(lining)) * 1000;
  return (clampN / (Math.PI * (lining.outerMm - lining.innerMm) * radiusMm)) * 1000;
}

/** The clamp at which the lining's greatest pressure is reached: `liningPressureKpa` read back. */
export function clampAtPressureN(lining: Ring, presses: Lining, greatestKpa: number): number {
  return greatestKpa / liningPressureKpa(lining, presses, 1);
}

export function ringAreaMm2({ outerMm, innerMm }: Ring): number {
  return (Math.PI / 4) * (outerMm ** 2 - innerMm ** 2);
}
