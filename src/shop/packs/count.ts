import type { Pack, PlateKind } from '../../engine/train/index.ts';
import {
  compare,
  fraction,
  minus,
  type Rational,
  signOf,
  times,
} from '../../engine/linear/index.ts';
import { readLength, sizeOf } from '../limits/index.ts';
import type { PackRemark } from './remark.ts';

/**
 * A clearance that is off by about a plate, to a quarter of its thickness, is no matter of
 * selection: a plate is missing, or one is doubled. (The quarter is ours: it tells a plate from
 * what a shelf can cure.) Undefined where no plate is as thick.
 */
export function miscounted(
  gapUm: Rational,
  wantedUm: Rational,
  pack: Pack,
): PackRemark | undefined {
  const off = minus(gapUm, wantedUm);
  const kinds = pack.plates
    .filter(({ thickness }) => {
      const { um } = readLength(thickness);
      const apart = sizeOf(minus(sizeOf(off), um));
      return compare(times(apart, fraction(4)), um) <= 0;
    })
    .map(({ kind }): PlateKind => kind);
  if (kinds.length === 0) return undefined;
  const remark = signOf(off) > 0 ? 'plate missing' : 'plate doubled';
  return { remark, kinds: [...new Set(kinds)] };
}
