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
import {
  type Again,
  againRemarks,
  isClosed,
  isMisread,
  standingOf,
  type Bounds,
  limitRemarks,
  type Limited,
  measuredAgain,
  middleOf,
  placesOutside,
  readingRemarks,
  readLength,
  select,
  type Selection,
  shelfRemarks,
  sizeOf,
  speakAgainst,
  thickening,
  usableBounds,
  type Verdict,
  verdictOfReading,
} from '../limits/index.ts';
import { likePressure } from './air.ts';
import { clearanceBounds, clearancesBy, type Measured } from './clearance.ts';
import { miscounted } from './count.ts';
import { type Gauge, gaugeOf } from './gauge.ts';
import type { PackReadings } from './readings.ts';
import type { PackRemark } from './remark.ts';
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
  readonly remarks: readonly PackRemark[];
}

/**
 * Judges the readings of a pack: the clearance by each way, the limits, and the part that sets it
 * right; none where it is `spent`: its plates were found burnt, and nothing says that new ones are in.
 */
export function judgePack(
  pack: Pack,
  readings: PackReadings,
  asked?: DrawsAsked,
  spent = false,
): PackJudgement {
  const measured = clearancesBy(readings, pack);
  // A stroke with the squash still in it is judged only where there is nothing better.
  const judged = measured.find((its) => !its.squashUnknown);
  const bounds = clearanceBounds(pack);
  const usable = usableBounds(bounds);
  const stack = stackOf(pack);
  const drawn = stack && stackUp(stack);
  const again = readings.again && measuredAgain(readings.again, judged, pack.shelf, usable);
  const last = standingOf(judged, pack.shelf, again);
  const way = judged?.way ?? 'feeler';
  const suspicious = last.measured
    ? againstReading({ way, ...last.measured }, pack, usable, again ? undefined : drawn)
    : [];
  const verdict =
    last.measured && usable && !isMisread(suspicious)
      ? verdictOfReading(last.measured.clearance, usable)
      : undefined;
  const wear = wearOf(readings, pack);
  const gauge = gaugeOf(readings, usable);
  const frictions = pack.plates.filter(({ kind }) => kind === 'friction').length;
  // New plates change the clearance: nothing is chosen before they are in.
  const replaced = wearRemarks(wear, pack).some(({ remark }) => remark === 'worn');
  const sure = !replaced && !spent && !speakAgainst([...suspicious, ...againRemarks(again)]);
  const sound =
    last.measured && usable && sure && !isClosed(again)
      ? { judged: last.measured, usable }
      : undefined;
  const selection = sound && last.shelf && select(sound.judged, last.shelf, sound.usable);
  const thicker =
    sound && verdict !== 'inside' ? thickening(sound.judged.clearance.um, sound.usable) : undefined;
  const remarks: PackRemark[] = [
    ...suspicious,
    ...limitRemarks(bounds),
    ...measured.flatMap((its) => wayRemarks(its, pack)),
    ...agreement(measured, usable),
    ...(judged && usable ? placesOutside(last.measured ?? judged, usable) : []),
    ...shelfRemarks(last.shelf, selection),
    ...againRemarks(again),
    ...(gauge?.turnedRound ? [{ remark: 'gauge turned round' } as const] : []),
    ...wearRemarks(wear, pack),
    ...(spent && last.measured ? [{ remark: 'plates spent' } as const] : []),
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

// What speaks against a selection: the wrong unit, no gap, the wrong number of plates, a cocked plate.
function againstReading(
  measured: Measured,
  pack: Pack,
  limits: Limited | undefined,
  drawn: Gap | undefined,
): PackRemark[] {
  const { way, clearance } = measured;
  const asRead = way === 'feeler' || way === 'lifted';
  const where = way === 'on air' ? 'again' : 'round';
  const read = readingRemarks(measured, limits, where, asRead);
  if (read.some(({ remark }) => remark === 'other unit')) return read;
  if (limits && verdictOfReading(clearance, limits) === 'inside') return read;
  const counted = drawn?.um ?? (limits && middleOf(limits));
  const count = counted && miscounted(clearance.um, counted, pack);
  const none: PackRemark[] = signOf(clearance.um) <= 0 ? [{ remark: 'no gap', way }] : [];
  return [...none, ...(count ? [count] : []), ...read];
}

function wayRemarks({ way, places, pressure, squashUnknown }: Measured, pack: Pack): PackRemark[] {
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

function agreement(measured: readonly Measured[], bounds: Limited | undefined): PackRemark[] {
  const [first, ...others] = measured.filter((its) => !its.squashUnknown);
  if (!first || !bounds?.least || !bounds.most) return [];
  const allowed = over(minus(bounds.most.um, bounds.least.um), fraction(4));
  return others
    .filter(({ clearance }) => {
      return compare(sizeOf(minus(clearance.um, first.clearance.um)), allowed) > 0;
    })
    .map(({ way }) => ({ remark: 'ways differ', ways: [first.way, way] }));
}
