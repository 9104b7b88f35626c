import type { Pack } from '../../engine/train/index.ts';
import { compare, minus, type Rational, signOf, ZERO } from '../../engine/linear/index.ts';
import { type Length, less, meanOf, sumOf } from '../length/index.ts';
import { clearanceBounds, middleOf, readLength } from './bounds.ts';
import type { PackReadings } from './readings.ts';

/** The ways to get at a clearance; the first that was gone is believed first. */
export type ClearanceWay = 'feeler' | 'lifted' | 'on air' | 'depth gauge';

/** A gap as it was read in one place or several. */
export interface MeanGap {
  /** The mean. */
  readonly clearance: Length;
  /** A place each, in their order, the squash taken off. */
  readonly places: readonly Length[];
  /** The largest less the smallest. */
  readonly spreadUm: Rational;
  /** Which place, from 0, is farthest from the middle of the limits, or else from the mean. */
  readonly worst: number;
}

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

/** Mean, spread and worst place; `wantedUm` is what each place should read, if anybody knows. */
export function meanGap(places: readonly Length[], wantedUm: Rational | undefined): MeanGap {
  const sorted = places.map(({ um }) => um).toSorted(compare);
  const spreadUm = minus(sorted.at(-1) as Rational, sorted[0] as Rational);
  const clearance = meanOf(places);
  const off = places.map(({ um }) => sizeOf(minus(um, wantedUm ?? clearance.um)));
  const most = off.toSorted(compare).at(-1) as Rational;
  const worst = off.findIndex((its) => compare(its, most) === 0);
  return { clearance, places, spreadUm, worst };
}

export function sizeOf(um: Rational): Rational {
  return signOf(um) < 0 ? minus(ZERO, um) : um;
}
