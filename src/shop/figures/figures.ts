import { compare, minus, plus, type Rational } from '../../engine/linear/index.ts';
import type { Limit, Pack, Shelf, Train } from '../../engine/train/index.ts';
import type { Reading } from '../../engine/trainfile/index.ts';
import { bandTravelBounds } from '../bands/index.ts';
import { judgeEndPlay } from '../endplay/index.ts';
import { judgePack } from '../packs/index.ts';
import {
  type Bounds,
  boundsOf,
  inTwoUnits,
  readLength,
  usableBounds,
  verdictOf,
} from '../limits/index.ts';
import { countDoubts } from './counts.ts';
import type { FigureDoubt, FigureWarning } from './warning.ts';

/**
 * Warnings about the limits, shelves and sizes of a train that was read: what can never be, or
 * never help. None where reading found errors.
 */
export function doubtFigures({ train, place }: Reading): FigureWarning[] {
  if (!train) return [];
  return [...doubtsOf(train), ...countDoubts(train)].map(({ doubt, path }): FigureWarning => {
    return { ...doubt, severity: 'warning', place: place(...path) };
  });
}

interface Pointed {
  readonly doubt: FigureDoubt;
  readonly path: readonly string[];
}

function doubtsOf({
  packs = [],
  endPlays = [],
  bands = [],
  preloads = [],
  wear = [],
}: Train): Pointed[] {
  return [
    ...endPlays.flatMap((endPlay): Pointed[] => {
      const { shaft: of, limit, shelf } = endPlay;
      const path = ['endplay', of];
      const { drawn, bounds } = judgeEndPlay(endPlay, {});
      return [
        ...limits(of, { limit }, path),
        ...shelves(shelf, { of, bounds, drawnUm: drawn?.um }, path),
      ];
    }),
    ...bands.flatMap((band): Pointed[] => {
      const { device: of, shelf } = band;
      const path = ['bands', of];
      return [
        ...limits(of, { ...band.limits }, [...path, 'limits']),
        ...shelves(shelf, { of, bounds: bandTravelBounds(band) }, path),
      ];
    }),
    ...preloads.flatMap(({ bearings: of, squeeze, shelf }): Pointed[] => {
      const path = ['preload', of];
      const bounds = squeeze && boundsOf(squeeze);
      return [...limits(of, { squeeze }, path), ...shelves(shelf, { of, bounds }, path)];
    }),
    ...wear.flatMap(({ part, limit }) => limits(part, { limit }, ['wear', part])),
    ...packs.flatMap((pack): Pointed[] => {
      const { device: of, shelf } = pack;
      const path = ['packs', of];
      const { drawn, bounds } = judgePack(pack, { device: of });
      return [
        ...plates(pack, path),
        ...limits(of, { ...pack.limits }, [...path, 'limits']),
        ...shelves(shelf, { of, bounds, drawnUm: drawn?.um }, path),
      ];
    }),
  ];
}

function limits(
  of: string,
  all: Readonly<Record<string, Limit | undefined>>,
  path: readonly string[],
): Pointed[] {
  return Object.entries(all).flatMap(([key, limit]): Pointed[] => {
    const bounds = limit && boundsOf(limit);
    if (!bounds) return [];
    if (inTwoUnits(bounds)) {
      return [{ doubt: { problem: 'limit in two units', of }, path: [...path, key] }];
    }
    if (usableBounds(bounds)) return [];
    const problem = bounds.least || bounds.most ? 'limits turned round' : 'limit without figures';
    return [{ doubt: { problem, of }, path: [...path, key] }];
  });
}

type ShelfDoubt = Exclude<FigureDoubt['problem'], 'counts differ'>;

interface Gap {
  readonly of: string;
  readonly bounds: Bounds | undefined;
  /** What the file's own sizes leave with the fitted part. */
  readonly drawnUm?: Rational | undefined;
}

function shelves(
  shelf: Omit<Shelf, 'part'> | undefined,
  { of, bounds, drawnUm }: Gap,
  path: readonly string[],
): Pointed[] {
  if (!shelf) return [];
  const doubt = (problem: ShelfDoubt): Pointed => {
    return { doubt: { problem, of }, path: [...path, 'shelf'] };
  };
  const fitted = readLength(shelf.fitted).um;
  const sizes = shelf.sizes.map((size) => readLength(size).um).toSorted(compare);
  const known = sizes.some((size) => compare(size, fitted) === 0);
  const doubts = known ? [] : [doubt('fitted not on the shelf')];
  const { least, most } = bounds ?? {};
  if (!least || !most) return [...doubts, doubt('shelf without limits')];
  const usable = usableBounds(bounds);
  if (!usable) return doubts;
  const width = minus(most.um, least.um);
  const coarse = sizes.some((size, k) => {
    const before = sizes[k - 1];
    return before !== undefined && compare(minus(size, before), width) > 0;
  });
  const reached =
    drawnUm === undefined ||
    sizes.some((size) => verdictOf(minus(plus(drawnUm, fitted), size), usable) === 'inside');
  return [
    ...doubts,
    ...(coarse ? [doubt('shelf too coarse')] : []),
    ...(reached ? [] : [doubt('shelf out of reach')]),
  ];
}

function plates(
  { device: of, plates: all, limits: its }: Pack,
  path: readonly string[],
): Pointed[] {
  const frictions = all.some(({ kind }) => kind === 'friction');
  return [
    ...(its?.['each friction'] && !frictions
      ? [
          {
            doubt: { problem: 'no friction to share', of } as const,
            path: [...path, 'limits', 'each friction'],
          },
        ]
      : []),
    ...all.flatMap(({ kind, squash, at }, k): Pointed[] => {
      if (squash === undefined) return [];
      const there = [...path, 'plates', `${k}`];
      if (kind !== 'cushion') {
        return [{ doubt: { problem: 'squash of no cushion', of }, path: there }];
      }
      return at === undefined
        ? [{ doubt: { problem: 'squash without air', of }, path: there }]
        : [];
    }),
  ];
}
