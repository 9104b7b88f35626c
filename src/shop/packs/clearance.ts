import { fraction, type Rational, times } from '../../engine/linear/index.ts';
import type { Pack } from '../../engine/train/index.ts';
import { type Length, less, sumOf } from '../length/index.ts';
import {
  type Bounds,
  boundsOf,
  meanGap,
  type MeanGap,
  middleOf,
  readLength,
} from '../limits/index.ts';
import type { PackReadings } from './readings.ts';

/** The ways to get at a clearance; the first that was gone is believed first. */
export type ClearanceWay = 'feeler' | 'lifted' | 'on air' | 'depth gauge';

/** The clearance by one way. */
export interface Measured extends MeanGap {
  readonly way: ClearanceWay;
  /** What was taken off each stroke on air. */
  readonly squash?: Length;
  readonly pressure?: string;
  /** There is a cushion plate, and nobody wrote how air squashes it: too large by that. */
  readonly squashUnknown?: true;
}

export function clearancesBy(readings: PackReadings, pack: Pack): Measured[] {
  const { feeler, lifted, onAir, depthGauge } = readings;
  const measured: Measured[] = [];
  const wanted = middleOf(clearanceBounds(pack) ?? {});
  if (feeler) measured.push(of('feeler', feeler, wanted));
  if (lifted) measured.push(of('lifted', lifted, wanted));
  if (onAir) measured.push(strokesOnAir(onAir, pack, wanted));
  if (depthGauge) {
    const { depth, edge, stack } = depthGauge;
    measured.push(of('depth gauge', [less(edge ? less(depth, edge) : depth, stack)], wanted));
  }
  return measured;
}

// The piston's stroke takes up the clearance, and then squashes the cushion plates.
function strokesOnAir(
  { pressure, strokes }: NonNullable<PackReadings['onAir']>,
  { plates }: Pack,
  wanted: Rational | undefined,
): Measured {
  const cushions = plates.filter(({ kind }) => kind === 'cushion');
  const told = cushions.flatMap(({ squash }) => (squash === undefined ? [] : [readLength(squash)]));
  const squash = told.reduce<Length | undefined>((sum, its) => {
    return sum ? sumOf([sum, its]) : its;
  }, undefined);
  const corrected = strokes.map((stroke) => (squash ? less(stroke, squash) : stroke));
  return {
    ...of('on air', corrected, wanted),
    pressure,
    ...(squash && { squash }),
    ...(told.length < cushions.length && { squashUnknown: true }),
  };
}

function of(
  way: ClearanceWay,
  places: readonly Length[],
  wantedUm: Rational | undefined,
): Measured {
  return { way, ...meanGap(places, wantedUm) };
}

/** The limit of a pack's clearance: its own, or that of each friction times their number. */
export function clearanceBounds({ plates, limits }: Pack): Bounds | undefined {
  if (limits?.clearance) return boundsOf(limits.clearance);
  const each = limits?.['each friction'];
  if (!each) return undefined;
  const frictions = plates.filter(({ kind }) => kind === 'friction').length;
  if (frictions === 0) return undefined;
  const count = fraction(frictions);
  const { least, most, ...origin } = boundsOf(each);
  const all = ({ um, stepUm }: Length) => ({ um: times(um, count), stepUm });
  return { ...(least && { least: all(least) }), ...(most && { most: all(most) }), ...origin };
}
