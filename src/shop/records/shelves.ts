import {
  PRELOAD_PARTS,
  ROD_PARTS,
  type Shelf,
  SHELF_PARTS,
  type Train,
  WASHER_PARTS,
} from '../../engine/train/index.ts';
import type { ShelfSaid } from '../../engine/trainfile/index.ts';
import type { FileMistake, Problem } from '../../engine/yaml/index.ts';
import { type FoldedJob, standing } from './fold.ts';
import { atEntry } from './line.ts';
import { measuredNames, notMeasured } from './readings.ts';

/**
 * The train with the shelves of the job in the place of its own, the latest last. One of what no
 * part sets is a problem at the line of its entry.
 */
export function withShelvesOf(
  job: FoldedJob,
  train: Train,
): {
  readonly train: Train;
  /** Whose shelf it is, and what is on it. */
  readonly shelves: ReadonlyMap<string, ShelfSaid>;
  readonly problems: readonly Problem[];
} {
  let changed = train;
  const shelves = new Map<string, ShelfSaid>();
  const problems: Problem[] = [];
  for (const { told, line } of standing(job, 'shelf')) {
    const mistake = shelfMisfit(told.of, told.shelf, train);
    if (mistake) {
      const place = { line, column: 1, length: 1 };
      problems.push(...atEntry({ line }, [{ ...mistake, severity: 'error', place }]));
      continue;
    }
    changed = withShelf(changed, told.of, told.shelf);
    shelves.set(told.of, told.shelf);
  }
  return { train: changed, shelves, problems };
}

/** Why a shelf, right in itself, cannot be of what bears this name. */
export function shelfMisfit(
  of: string,
  { part }: ShelfSaid,
  train: Train,
): FileMistake | undefined {
  const kinds = KINDS.filter((kind) => kind.names(train).includes(of));
  if (kinds.length === 0) return notMeasured(of, measuredNames(train));
  const known = kinds.some(({ parts }) => parts.includes(part));
  return known ? undefined : { problem: 'expected', what: 'shelf', found: part };
}

function withShelf(train: Train, of: string, said: ShelfSaid): Train {
  const put = <Its extends { readonly shelf?: unknown }>(
    all: readonly Its[] | undefined,
    nameOf: (its: Its) => string,
    parts: readonly string[],
  ) => {
    if (!all?.some((its) => nameOf(its) === of) || !parts.includes(said.part)) return undefined;
    const shelf = said as Shelf as never;
    return all.map((its) => (nameOf(its) === of ? { ...its, shelf } : its));
  };
  const packs = put(train.packs, ({ device }) => device, SHELF_PARTS);
  const endPlays = put(train.endPlays, ({ shaft }) => shaft, WASHER_PARTS);
  const bands = put(train.bands, ({ device }) => device, ROD_PARTS);
  const preloads = put(train.preloads, ({ bearings }) => bearings, PRELOAD_PARTS);
  return {
    ...train,
    ...(packs && { packs }),
    ...(endPlays && { endPlays }),
    ...(bands && { bands }),
    ...(preloads && { preloads }),
  };
}

// Of what a part of a shelf sets the gap, and which parts do.
const KINDS: readonly {
  readonly names: (train: Train) => readonly string[];
  readonly parts: readonly string[];
}[] = [
  { names: ({ packs = [] }) => packs.map(({ device }) => device), parts: SHELF_PARTS },
  { names: ({ endPlays = [] }) => endPlays.map(({ shaft }) => shaft), parts: WASHER_PARTS },
  { names: ({ bands = [] }) => bands.map(({ device }) => device), parts: ROD_PARTS },
  { names: ({ preloads = [] }) => preloads.map(({ bearings }) => bearings), parts: PRELOAD_PARTS },
];
