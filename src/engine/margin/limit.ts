import { compare, minus, plus, type Rational, times, ZERO } from '../linear/index.ts';

/** What a device can put on its first-named member, each way. A device without one is not limited. */
export interface Limit {
  readonly device: string;
  readonly clockwise: Strength;
  readonly anticlockwise: Strength;
}

/** A torque that holds at any pressure, and what each kilopascal above `fromKpa` adds to it. */
export interface Strength {
  readonly fixedNm: Rational;
  readonly perKpaNm: Rational;
  readonly fromKpa: Rational;
}

export const NO_STRENGTH: Strength = { fixedNm: ZERO, perKpaNm: ZERO, fromKpa: ZERO };

/** One pressure: each strength at it is worked out once, however many gears ask for it. */
export class Pressure {
  readonly kpa: Rational;
  private readonly known = new Map<Strength, Rational>();

  constructor(kpa: Rational) {
    this.kpa = kpa;
  }

  of(strength: Strength): Rational {
    let torqueNm = this.known.get(strength);
    if (!torqueNm) this.known.set(strength, (torqueNm = strengthNm(strength, this.kpa)));
    return torqueNm;
  }
}

/** What it comes to at a pressure. */
export function strengthNm({ fixedNm, perKpaNm, fromKpa }: Strength, kpa: Rational): Rational {
  return compare(kpa, fromKpa) <= 0 ? fixedNm : plus(fixedNm, times(perKpaNm, minus(kpa, fromKpa)));
}
