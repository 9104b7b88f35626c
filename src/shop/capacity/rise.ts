/**
 * How a torque that a device can carry rises with the pressure at its piston: none up to where
 * the springs give way, then so much for each kilopascal.
 */
export interface Rise {
  readonly perKpaNm: number;
  readonly fromKpa: number;
}

/** The torque at a pressure, never negative. */
export function torqueAtNm({ perKpaNm, fromKpa }: Rise, pressureKpa: number): number {
  return perKpaNm * Math.max(0, pressureKpa - fromKpa);
}
