import { compare, over, type Rational, ZERO } from '../linear/index.ts';
import type { GearMargin } from './answer.ts';

/** Where the least is to spare, of all gears and both loads. */
export interface FirstToSlip {
  readonly range: string;
  readonly gear: string;
  readonly load: 'drive' | 'coast' | 'inReverse';
  /** Several together where they share a reaction. */
  readonly devices: readonly string[];
  readonly mostNm: Rational;
  readonly askedNm: Rational;
}

/** What slips first as the load grows everywhere alike; undefined where nothing known limits it. */
export function firstToSlip(gears: readonly GearMargin[]): FirstToSlip | undefined {
  const sides = gears.flatMap(({ range, gear, ...loads }) => {
    return (['drive', 'coast', 'inReverse'] as const).flatMap((load): FirstToSlip[] => {
      const { mostNm, askedNm, letsGo: devices } = loads[load] ?? NOTHING;
      return mostNm && askedNm.num !== 0 ? [{ range, gear, load, devices, mostNm, askedNm }] : [];
    });
  });
  const [first, ...others] = sides;
  const spare = ({ mostNm, askedNm }: FirstToSlip) => over(mostNm, askedNm);
  return others.reduce((a, b) => (a && compare(spare(b), spare(a)) < 0 ? b : a), first);
}

const NOTHING = { mostNm: null, askedNm: ZERO, letsGo: [] };
