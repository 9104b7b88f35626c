import { compare, signOf } from '../../engine/linear/index.ts';
import type { Pack } from '../../engine/train/index.ts';
import type { Length } from '../length/index.ts';
import { type Bounds, boundsOf, readLength, type Verdict, verdictOf } from './bounds.ts';
import { usableBounds } from './gap.ts';
import type { PackReadings } from './readings.ts';
import type { Remark } from './remark.ts';

/** The worst reading of the plates of one kind, or of their cones. */
export interface Wear {
  readonly what: 'friction' | 'steel' | 'cone';
  readonly worst: Length;
  /** Which reading, from 1. */
  readonly place: number;
  /** Absent: there is no limit, and nothing is judged. */
  readonly bounds?: Bounds;
  readonly verdict?: Verdict;
}

export function wearOf(readings: PackReadings, { limits }: Pack): Wear[] {
  return (['friction', 'steel', 'cone'] as const).flatMap((what): Wear[] => {
    const all = readings[what];
    if (!all) return [];
    const way = what === 'cone' ? 1 : -1;
    const worst = all.reduce((a, b) => (compare(b.um, a.um) * way > 0 ? b : a));
    const limit = limits?.[what];
    const bounds = limit && boundsOf(limit);
    const usable = usableBounds(bounds);
    return [
      {
        what,
        worst,
        place: all.indexOf(worst) + 1,
        ...(bounds && { bounds }),
        ...(usable && { verdict: verdictOf(worst.um, usable) }),
      },
    ];
  });
}

/** What follows: a set is replaced whole, and a cone is asked about before it is called warped. */
export function wearRemarks(wear: readonly Wear[], { plates }: Pack): Remark[] {
  return wear.flatMap(({ what, worst, verdict }): Remark[] => {
    if (what !== 'cone') return verdict === 'too small' ? [{ remark: 'worn', what }] : [];
    if (verdict === 'inside' || signOf(worst.um) === 0) return [];
    const coned = plates.find((plate) => plate.coned !== undefined)?.coned;
    return coned === undefined
      ? [{ remark: 'coned or warped' }]
      : [{ remark: 'coned on purpose', by: readLength(coned) }];
  });
}
