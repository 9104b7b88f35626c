import { type Ring, ringAreaMm2 } from './plate.ts';
import type { Rise } from './rise.ts';

/** A band round a drum, pulled at one end by a servo, the other end on its anchor. */
export interface Band {
  readonly drumMm: number;
  readonly wrapDegrees: number;
  readonly friction: number;
  readonly servo: Ring;
  /** The pull on the band's end over the force of the servo's piston. */
  readonly lever: number;
  readonly springsN: number;
}

/** Which way a drum drags its band: towards the anchor helps the servo; away fights it. */
export type Drag = 'towards the anchor' | 'from the anchor';

/** The torque that the pressure at the servo lets a band hold, one way or the other. */
export function bandRise(band: Band, drag: Drag): Rise {
  const areaMm2 = ringAreaMm2(band.servo);
  return {
    perKpaNm: bandTorqueNm(band, (areaMm2 / 1000) * band.lever, drag),
    fromKpa: (band.springsN / areaMm2) * 1000,
  };
}

/**
 * The capstan relation, tight / slack = e^(μθ) (L. Euler, 1769; Shigley, Mechanical Engineering
 * Design, chapter 16), signed. The servo pulls with `pullN`: at the slack end where the drum
 * drags the band towards its anchor (self-energising), T = F r (e^(μθ) − 1); at the tight end
 * the other way, T = F r (1 − e^(−μθ)). To be believed for a limp band that touches all round;
 * at μθ above about 2 a small error of μ is a large one of the torque.
 */
export function bandTorqueNm(
  band: Pick<Band, 'drumMm' | 'wrapDegrees' | 'friction'>,
  pullN: number,
  drag: Drag,
): number {
  const ratio = tensionRatio(band);
  const gain = drag === 'towards the anchor' ? ratio - 1 : 1 - 1 / ratio;
  return (Math.max(0, pullN) * gain * band.drumMm) / 2000;
}

/** The tight end's tension over the slack end's. */
export function tensionRatio({
  wrapDegrees,
  friction,
}: Pick<Band, 'wrapDegrees' | 'friction'>): number {
  return Math.exp((friction * wrapDegrees * Math.PI) / 180);
}

/** The tension at the tight end at which the lining's greatest pressure is reached: p · w · r. */
export function tightestN(drumMm: number, widthMm: number, greatestKpa: number): number {
  return (greatestKpa * widthMm * drumMm) / 2000;
}
