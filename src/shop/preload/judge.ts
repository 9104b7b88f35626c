import {
  compare,
  fraction,
  minus,
  type Rational,
  signOf,
  times,
  ZERO,
} from '../../engine/linear/index.ts';
import type { Preload } from '../../engine/train/index.ts';
import type { Length } from '../length/index.ts';
import {
  type Bounds,
  boundsOf,
  type GapRemark,
  limitRemarks,
  meanGap,
  type MeanGap,
  select,
  type Selection,
  shelfRemarks,
  sizeOf,
  slippedFrom,
  speakAgainst,
  thickening,
  unevenness,
  usableBounds,
  type Verdict,
} from '../limits/index.ts';
import type { PreloadReadings } from './readings.ts';
import {
  meanTorque,
  type Torque,
  type TorqueBounds,
  torqueBounds,
  torqueUnitMeant,
  torqueVerdict,
} from './torque.ts';

/** What must be told of a preload before its numbers are believed. */
export type PreloadRemark =
  | GapRemark
  /** No play with the fitted part: nobody can tell how far the bearings are squeezed already. */
  | { readonly remark: 'gap hidden' }
  /** The same number in another unit would be inside its limit. */
  | { readonly remark: 'other torque unit'; readonly meant: string }
  /**
   * Some readings are outside while their mean is inside, or they differ by more than the limits do:
   * nothing is proved.
   */
  | { readonly remark: 'uneven torque'; readonly least: Torque; readonly most: Torque }
  /** A point that slipped: what was meant is inside. */
  | { readonly remark: 'torque slipped'; readonly read: Torque; readonly meant: Torque }
  /** The wrench and the spring balance do not agree to within a quarter of the limits' width. */
  | { readonly remark: 'wrench and pull differ' };

/** What the readings of a preload say. */
export interface PreloadJudgement {
  readonly preload: Preload;
  readonly state: 'new' | 'used';
  readonly by?: 'turning' | 'pull';
  readonly torque?: Torque;
  /** Of the torque: its limit for such bearings. */
  readonly limit?: TorqueBounds;
  /** Too small is too loose. */
  readonly verdict?: Verdict;
  readonly gap?: MeanGap;
  readonly squeeze?: Bounds;
  /** How much thicker a shim must become, or how much thinner a spacer; below 0 the other way. */
  readonly tighter?: { readonly leastUm: Rational; readonly mostUm: Rational };
  /** A gap below 0 is a squeeze. */
  readonly selection?: Selection;
  readonly remarks: readonly PreloadRemark[];
}

/**
 * A preload is proved by the torque that keeps the bearings turning (force × radius by a spring
 * balance); the part that sets it squeezes away the play that is there and the squeeze besides.
 */
export function judgePreload(
  preload: Preload,
  { turning, pull, gap: read, state = 'new' }: Omit<PreloadReadings, 'bearings'>,
): PreloadJudgement {
  const its = state === 'used' ? preload.used : preload.turning;
  const limit = its && torqueBounds(its);
  const torques = turning ?? pull;
  const torque = torques && meanTorque(torques).mean;
  const rough = limit && torques ? roughness(torques, limit) : [];
  const meant = limit && torques?.map((one) => torqueUnitMeant(one, limit)).find(Boolean);
  const slipped = torques && limit && !meant ? slippedTorque(torques, limit) : [];
  const asked = slipped.length > 0 || rough.length > 0;
  const verdict = torque && limit && !asked ? torqueVerdict(torque.nm, limit) : undefined;
  const squeeze = preload.squeeze && boundsOf(preload.squeeze);
  // A squeeze is a gap below nothing.
  const wanted = usableBounds(squeeze && turnedOver(squeeze));
  const gap = read && meanGap(read, undefined);
  const hidden = gap !== undefined && signOf(gap.clearance.um) <= 0;
  const uneven = gap && wanted ? unevenness(gap, wanted, 'again') : [];
  const sound = gap && wanted && !hidden && !speakAgainst(uneven) ? { gap, wanted } : undefined;
  const shelf = preload.shelf && { ...preload.shelf, opens: preload.shelf.part === 'spacer' };
  const tighter = sound && thickening(sound.gap.clearance.um, sound.wanted);
  const selection = sound && shelf && select(sound.gap, shelf, sound.wanted);
  return {
    preload,
    state,
    ...(torque && { by: turning ? ('turning' as const) : ('pull' as const), torque }),
    ...(limit && { limit }),
    ...(verdict && { verdict }),
    ...(gap && { gap }),
    ...(squeeze && { squeeze }),
    ...(tighter && { tighter }),
    ...(selection && { selection }),
    remarks: [
      ...(torque || gap ? [] : [{ remark: 'nothing read' } as const]),
      ...(meant ? [{ remark: 'other torque unit', meant } as const] : []),
      ...slipped,
      ...rough,
      ...uneven,
      ...(torque && !limit ? [{ remark: 'no limit' } as const] : []),
      ...(hidden ? [{ remark: 'gap hidden' } as const] : []),
      ...(gap ? limitRemarks(squeeze) : []),
      ...(turning && pull && limit ? agreement(turning, pull, limit) : []),
      ...shelfRemarks(shelf, selection),
    ],
  };
}

function roughness(torques: readonly Torque[], limit: TorqueBounds): PreloadRemark[] {
  const { mean, spreadNm } = meanTorque(torques);
  const [least, ...others] = torques.toSorted((a, b) => compare(a.nm, b.nm));
  const most = others.at(-1);
  if (!least || !most) return [];
  const inside = torqueVerdict(mean.nm, limit) === 'inside';
  const stray = torques.some(({ nm }) => torqueVerdict(nm, limit) !== 'inside');
  const width = limit.least && limit.most && minus(limit.most.nm, limit.least.nm);
  const wide = width !== undefined && compare(spreadNm, width) > 0;
  return (inside && stray) || wide ? [{ remark: 'uneven torque', least, most }] : [];
}

// Two that say the same stand by it.
function slippedTorque(torques: readonly Torque[], { least, most }: TorqueBounds): PreloadRemark[] {
  const ends = { least: least?.nm, most: most?.nm };
  const all = torques.map((read) => ({ read, nm: slippedFrom(read.nm, ends) }));
  const slipped = all.filter(({ nm }) => nm);
  if (all.length > 1 && slipped.length === all.length) return [];
  const stepNm = (least ?? most)?.stepNm;
  return slipped.slice(0, 1).flatMap(({ read, nm }): PreloadRemark[] => {
    return nm && stepNm ? [{ remark: 'torque slipped', read, meant: { nm, stepNm } }] : [];
  });
}

function turnedOver({ least, most, ...origin }: Bounds): Bounds {
  const over = (length: Length) => ({ ...length, um: minus(ZERO, length.um) });
  return { ...(most && { least: over(most) }), ...(least && { most: over(least) }), ...origin };
}

function agreement(
  a: readonly Torque[],
  b: readonly Torque[],
  { least, most }: TorqueBounds,
): PreloadRemark[] {
  if (!least || !most) return [];
  const off = sizeOf(minus(meanTorque(a).mean.nm, meanTorque(b).mean.nm));
  const differs = compare(times(off, fraction(4)), minus(most.nm, least.nm)) > 0;
  return differs ? [{ remark: 'wrench and pull differ' }] : [];
}
