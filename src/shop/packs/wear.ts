import { compare, signOf } from '../../engine/linear/index.ts';
import type { Pack } from '../../engine/train/index.ts';
import type { Length, WrittenUnit } from '../length/index.ts';
import {
  type Bounds,
  boundsOf,
  limitRemarks,
  readLength,
  unitMeant,
  usableBounds,
  type Verdict,
  verdictOfReading,
} from '../limits/index.ts';
import type { PackReadings } from './readings.ts';
import type { PackRemark } from './remark.ts';

/** The worst reading of the plates of one kind, or of their cones. */
export interface Wear {
  readonly what: 'friction' | 'steel' | 'cone';
  readonly worst: Length;
  /** Which reading, from 1. */
  readonly place: number;
  /** Absent: there is no limit, and nothing is judged. */
  readonly bounds?: Bounds;
  /** Absent too where its unit is in doubt. */
  readonly verdict?: Verdict;
  /** The unit in which its digits would be right. */
  readonly meant?: WrittenUnit;
}

export function wearOf(readings: PackReadings, { limits }: Pack): Wear[] {
  return (['friction', 'steel', 'cone'] as const).flatMap((what): Wear[] => {
    const all = readings[what];
    if (!all) return [];
    const limit = limits?.[what];
    const bounds = limit && boundsOf(limit);
    const usable = usableBounds(bounds);
    // A reading in the wrong unit is the worst of all, whichever way it is off.
    const meant = usable ? all.map((its) => unitMeant(its, usable)) : [];
    const doubted = meant.findIndex((its) => its !== undefined);
    const way = what === 'cone' ? 1 : -1;
    const worst = all[doubted] ?? all.reduce((a, b) => (compare(b.um, a.um) * way > 0 ? b : a));
    const unit = meant[doubted];
    return [
      {
        what,
        worst,
        place: all.indexOf(worst) + 1,
        ...(bounds && { bounds }),
        ...(usable && !unit && { verdict: verdictOfReading(worst, usable) }),
        ...(unit && { meant: unit }),
      },
    ];
  });
}

/** What follows: a set is replaced whole, and a cone is asked about before it is called warped. */
export function wearRemarks(wear: readonly Wear[], { plates }: Pack): PackRemark[] {
  return wear.flatMap(({ what, worst, place, bounds, verdict, meant }): PackRemark[] => {
    if (bounds?.doubted) return limitRemarks(bounds);
    if (meant) return [{ remark: 'other unit of a plate', meant, what, place }];
    if (what !== 'cone') return verdict === 'too small' ? [{ remark: 'worn', what }] : [];
    if (verdict === 'inside' || signOf(worst.um) === 0) return [];
    const coned = plates.find((plate) => plate.coned !== undefined)?.coned;
    return coned === undefined
      ? [{ remark: 'coned or warped' }]
      : [{ remark: 'coned on purpose', by: readLength(coned) }];
  });
}
