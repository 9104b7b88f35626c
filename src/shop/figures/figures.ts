import { compare, minus, plus, type Rational } from '../../engine/linear/index.ts';
import type { FileLimit, MeasuredKind, Pack, Shelf, Train } from '../../engine/train/index.ts';
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
import { oddCounts } from './counts.ts';
import type { FigureOddity, FigureWarning } from './warning.ts';

/**
 * Warnings about the limits, shelves and sizes of a train that was read: what can never be, or
 * never help. None where reading found errors.
 */
export function lookAtFigures({ train, place }: Reading): FigureWarning[] {
  if (!train) return [];
  return [...oddFigures(train), ...oddCounts(train)].map(({ oddity, path }): FigureWarning => {
    return { ...oddity, severity: 'warning', place: place(...path) };
  });
}

interface Pointed {
  readonly oddity: FigureOddity;
  readonly path: readonly string[];
}

function oddFigures(train: Train): Pointed[] {
  return Object.values(ODD_OF).flatMap((odd) => odd(train));
}

// Of each kind of thing that is measured.
const ODD_OF: Readonly<Record<MeasuredKind, (train: Train) => Pointed[]>> = {
  endplay: ({ endPlays = [] }) =>
    endPlays.flatMap((endPlay) => {
      const { shaft: of, limit, shelf } = endPlay;
      const path = ['endplay', of];
      const { drawn, bounds } = judgeEndPlay(endPlay, {});
      return [
        ...limits(of, { limit }, path),
        ...shelves(shelf, { of, bounds, drawnUm: drawn?.um }, path),
      ];
    }),
  band: ({ bands = [] }) =>
    bands.flatMap((band) => {
      const { device: of, shelf } = band;
      const path = ['bands', of];
      return [
        ...limits(of, { ...band.limits }, [...path, 'limits']),
        ...shelves(shelf, { of, bounds: bandTravelBounds(band) }, path),
      ];
    }),
  preload: ({ preloads = [] }) =>
    preloads.flatMap(({ bearings: of, squeeze, shelf }) => {
      const path = ['preload', of];
      const bounds = squeeze && boundsOf(squeeze);
      return [...limits(of, { squeeze }, path), ...shelves(shelf, { of, bounds }, path)];
    }),
  wear: ({ wear = [] }) =>
    wear.flatMap(({ part, limit }) => limits(part, { limit }, ['wear', part])),
  pack: ({ packs = [] }) =>
    packs.flatMap((pack) => {
      const { device: of, shelf } = pack;
      const path = ['packs', of];
      const { drawn, bounds } = judgePack(pack, { device: of });
      return [
        ...plates(pack, path),
        ...limits(of, { ...pack.limits }, [...path, 'limits']),
        ...shelves(shelf, { of, bounds, drawnUm: drawn?.um }, path),
      ];
    }),
};

function limits(
  of: string,
  all: Readonly<Record<string, FileLimit | undefined>>,
  path: readonly string[],
): Pointed[] {
  return Object.entries(all).flatMap(([key, limit]): Pointed[] => {
    const bounds = limit && boundsOf(limit);
    if (!bounds) return [];
    if (inTwoUnits(bounds)) {
      return [{ oddity: { problem: 'limit in two units', of }, path: [...path, key] }];
    }
    if (usableBounds(bounds)) return [];
    const problem = bounds.least || bounds.most ? 'limits turned round' : 'limit without figures';
    return [{ oddity: { problem, of }, path: [...path, key] }];
  });
}

type ShelfOddity = Exclude<FigureOddity['problem'], 'counts differ'>;

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
  const oddity = (problem: ShelfOddity): Pointed => {
    return { oddity: { problem, of }, path: [...path, 'shelf'] };
  };
  const fitted = readLength(shelf.fitted).um;
  const sizes = shelf.sizes.map((size) => readLength(size).um).toSorted(compare);
  const known = sizes.some((size) => compare(size, fitted) === 0);
  const odd = known ? [] : [oddity('fitted not on the shelf')];
  const { least, most } = bounds ?? {};
  if (!least || !most) return [...odd, oddity('shelf without limits')];
  const usable = usableBounds(bounds);
  if (!usable) return odd;
  const width = minus(most.um, least.um);
  const coarse = sizes.some((size, k) => {
    const before = sizes[k - 1];
    return before !== undefined && compare(minus(size, before), width) > 0;
  });
  const reached =
    drawnUm === undefined ||
    sizes.some((size) => verdictOf(minus(plus(drawnUm, fitted), size), usable) === 'inside');
  return [
    ...odd,
    ...(coarse ? [oddity('shelf too coarse')] : []),
    ...(reached ? [] : [oddity('shelf out of reach')]),
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
            oddity: { problem: 'no friction to share', of } as const,
            path: [...path, 'limits', 'each friction'],
          },
        ]
      : []),
    ...all.flatMap(({ kind, squash, at }, k): Pointed[] => {
      if (squash === undefined) return [];
      const there = [...path, 'plates', `${k}`];
      if (kind !== 'cushion') {
        return [{ oddity: { problem: 'squash of no cushion', of }, path: there }];
      }
      return at === undefined
        ? [{ oddity: { problem: 'squash without air', of }, path: there }]
        : [];
    }),
  ];
}
