import {
  compare,
  fraction,
  minus,
  over,
  type Rational,
  signOf,
} from '../../engine/linear/index.ts';
import type { Pack } from '../../engine/train/index.ts';
import {
  type Draws,
  type DrawsAsked,
  drawStacks,
  type Gap,
  type Length,
  type StackTerm,
  stackUp,
} from '../length/index.ts';
import { type Again, againRemarks, measuredAgain } from './again.ts';
import { likePressure } from './air.ts';
import {
  type Bounds,
  type Limited,
  clearanceBounds,
  middleOf,
  readLength,
  thickening,
  type Verdict,
  verdictOf,
} from './bounds.ts';
import { clearancesBy, type Measured, sizeOf } from './clearance.ts';
import { miscounted } from './count.ts';
import { type Gauge, gaugeOf } from './gauge.ts';
import { limitRemarks, shelfRemarks, unitMeant, usableBounds } from './gap.ts';
import type { PackReadings } from './readings.ts';
import type { Remark } from './remark.ts';
import { select, type Selection } from './selection.ts';
import { type Wear, wearOf, wearRemarks } from './wear.ts';

/** What the readings of a pack say. */
export interface PackJudgement {
  readonly pack: Pack;
  /** By each way that was gone. */
  readonly measured: readonly Measured[];
  /** The one that is judged: the first that needs no guess. */
  readonly judged?: Measured;
  readonly frictions: number;
  /** The judged clearance, shared among the friction plates. */
  readonly eachFriction?: Length;
  /** What the file's own thicknesses leave of its depth. */
  readonly drawn?: Gap;
  /** What they leave by chance, where it was asked. */
  readonly draws?: Draws;
  readonly bounds?: Bounds;
  readonly verdict?: Verdict;
  /** How much thicker the pack must become, where it is outside. */
  readonly thicker?: { readonly leastUm: Rational; readonly mostUm: Rational };
  /** Absent where nothing may be selected: the remarks say why. */
  readonly selection?: Selection;
  /** With another part in: what closes it. */
  readonly again?: Again;
  readonly gauge?: Gauge;
  readonly wear: readonly Wear[];
  readonly remarks: readonly Remark[];
}

export function judgePack(pack: Pack, readings: PackReadings, asked?: DrawsAsked): PackJudgement {
  const measured = clearancesBy(readings, pack);
  // A stroke with the squash still in it is judged only where there is nothing better.
  const judged = measured.find((its) => !its.squashUnknown);
  const bounds = clearanceBounds(pack);
  const usable = usableBounds(bounds);
  const verdict = judged && usable && verdictOf(judged.clearance.um, usable);
  const stack = stackOf(pack);
  const drawn = stack && stackUp(stack);
  const suspicious = judged ? doubts(judged, pack, usable, drawn) : [];
  const wear = wearOf(readings, pack);
  const again = readings.again && measuredAgain(readings.again, judged, pack.shelf, usable);
  const gauge = gaugeOf(readings, usable);
  const frictions = pack.plates.filter(({ kind }) => kind === 'friction').length;
  const selection =
    judged && pack.shelf && usable && suspicious.length === 0
      ? select(judged, pack.shelf, usable)
      : undefined;
  const thicker =
    judged && usable && verdict !== 'inside' && suspicious.length === 0
      ? thickening(judged.clearance.um, usable)
      : undefined;
  const remarks: Remark[] = [
    ...suspicious,
    ...limitRemarks(bounds),
    ...measured.flatMap((its) => wayRemarks(its, pack)),
    ...agreement(measured, usable),
    ...(judged && verdict === 'inside' && usable ? placesOutside(judged, usable) : []),
    ...shelfRemarks(pack.shelf, selection),
    ...againRemarks(again),
    ...(gauge?.turnedRound ? [{ remark: 'gauge turned round' } as const] : []),
    ...wearRemarks(wear, pack),
  ];
  return {
    pack,
    measured,
    ...(judged && { judged }),
    frictions,
    ...(judged && frictions > 0 && { eachFriction: shared(judged.clearance, frictions) }),
    ...(drawn && { drawn }),
    ...(stack && asked && { draws: drawStacks(stack, asked, usable) }),
    ...(bounds && { bounds }),
    ...(verdict && { verdict }),
    ...(thicker && { thicker }),
    ...(selection && { selection }),
    ...(again && { again }),
    ...(gauge && { gauge }),
    wear,
    remarks,
  };
}

function shared({ um, stepUm }: Length, count: number): Length {
  return { um: over(um, fraction(count)), stepUm };
}

// The depth, and all plates that lie in it; undefined without a depth.
function stackOf({ depth, plates }: Pack): StackTerm[] | undefined {
  if (!depth) return undefined;
  const term = (adds: 1 | -1, size: string, tolerance: string | undefined): StackTerm => ({
    adds,
    um: readLength(size).um,
    ...(tolerance !== undefined && { tolUm: readLength(tolerance).um }),
  });
  return [
    term(1, depth.size, depth.tolerance),
    ...plates.map(({ thickness, tolerance }) => term(-1, thickness, tolerance)),
  ];
}

// What makes a selection senseless: no gap, the wrong unit, the wrong number of plates.
function doubts(
  { way, clearance }: Measured,
  pack: Pack,
  bounds: Limited | undefined,
  drawn: Gap | undefined,
): Remark[] {
  const wanted = bounds && middleOf(bounds);
  if (bounds && verdictOf(clearance.um, bounds) === 'inside') return [];
  const meant = wanted && bounds && unitMeant(clearance.um, bounds);
  if (meant) return [{ remark: 'other unit', meant }];
  const counted = drawn?.um ?? wanted;
  const count = counted && miscounted(clearance.um, counted, pack);
  const none: Remark[] = signOf(clearance.um) <= 0 ? [{ remark: 'no gap', way }] : [];
  return count ? [...none, count] : none;
}

function wayRemarks({ way, places, pressure, squashUnknown }: Measured, pack: Pack): Remark[] {
  if (way === 'feeler' && places.length < FEWEST_PLACES) {
    return [{ remark: 'few places', way, places: places.length }];
  }
  if (squashUnknown) return [{ remark: 'squash unknown' }];
  const given = pack.plates.find(({ squash }) => squash !== undefined)?.at;
  return pressure !== undefined && given !== undefined && !likePressure(given, pressure)
    ? [{ remark: 'other pressure', given, read: pressure }]
    : [];
}

const FEWEST_PLACES = 3;

function agreement(measured: readonly Measured[], bounds: Limited | undefined): Remark[] {
  const [first, ...others] = measured.filter((its) => !its.squashUnknown);
  if (!first || !bounds?.least || !bounds.most) return [];
  const allowed = over(minus(bounds.most.um, bounds.least.um), fraction(4));
  return others
    .filter(({ clearance }) => {
      return compare(sizeOf(minus(clearance.um, first.clearance.um)), allowed) > 0;
    })
    .map(({ way }) => ({ remark: 'ways differ', ways: [first.way, way] }));
}

function placesOutside({ places }: Measured, bounds: Limited): Remark[] {
  return places.flatMap(({ um }, i): Remark[] => {
    return verdictOf(um, bounds) === 'inside' ? [] : [{ remark: 'place outside', place: i + 1 }];
  });
}
