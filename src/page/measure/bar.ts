import type { MeasuredThing } from '../../asking/build/index.ts';
import { toNumber } from '../../engine/linear/index.ts';
import { quantityFrom } from '../../engine/quantity/index.ts';
import { type Bounds, boundsOf } from '../../shop/limits/index.ts';
import type { FileLimit } from '../../engine/train/index.ts';
import type { ReadingWay, Typed } from './ways.ts';
import { standingIn } from './ways.ts';

/** Readings against their limits, as sizes on one scale: micrometres, or newton metres. */
export interface Scale {
  readonly least?: number;
  readonly most?: number;
  readonly readings: readonly number[];
}

/** What a way's readings are judged by, and where they lie; undefined where nothing is drawn. */
export function scaleOf(
  thing: MeasuredThing,
  way: ReadingWay,
  typed: readonly Typed[],
): Scale | undefined {
  const its = limitOf(thing, way.way);
  if (!its) return undefined;
  const row = way.fields.find(({ many }) => many);
  const all = row ? standingIn(typed, row) : [];
  const dimension = row?.of === 'torque' ? 'torque' : 'length';
  const sizes = all.flatMap(({ text }) => {
    const read = quantityFrom(text, dimension);
    return read ? [toNumber(read.size)] : [];
  });
  return { ...its, readings: reckoned(thing, way.way) ?? sizes };
}

// What is not read itself, but reckoned of what was read.
function reckoned({ kind, judgement }: MeasuredThing, way: string): number[] | undefined {
  if (kind === 'wear' && way === 'bore') {
    return [judgement.smallest, judgement.largest].flatMap((its) =>
      its ? [toNumber(its.um)] : [],
    );
  }
  if (kind === 'pack' && (way === 'on air' || way === 'depth gauge')) {
    const places = judgement.measured.find((its) => its.way === way)?.places ?? [];
    return places.map(({ um }) => toNumber(um));
  }
  return undefined;
}

function limitOf(
  { kind, judgement }: MeasuredThing,
  way: string,
): Omit<Scale, 'readings'> | undefined {
  switch (kind) {
    case 'pack':
      if (way === 'step gauge') return undefined;
      if (way === 'friction' || way === 'steel' || way === 'cone')
        return ends(judgement.pack.limits?.[way]);
      return bounded(judgement.bounds);
    case 'preload': {
      const { limit } = judgement;
      if (way !== 'turning' || !limit) return undefined;
      const { least, most } = limit;
      return {
        ...(least && { least: toNumber(least.nm) }),
        ...(most && { most: toNumber(most.nm) }),
      };
    }
    case 'band':
      return way === 'travel' ? bounded(judgement.bounds) : undefined;
    case 'endplay':
    case 'wear':
      return bounded(judgement.bounds);
  }
}

function ends(limit: FileLimit | undefined): Omit<Scale, 'readings'> | undefined {
  return limit && bounded(boundsOf(limit));
}

function bounded(bounds: Bounds | undefined): Omit<Scale, 'readings'> | undefined {
  if (!bounds?.least && !bounds?.most) return undefined;
  return {
    ...(bounds.least && { least: toNumber(bounds.least.um) }),
    ...(bounds.most && { most: toNumber(bounds.most.um) }),
  };
}
