import { compare } from '../../engine/linear/index.ts';
import {
  type Departure,
  type FileLimit,
  MEASURED_KINDS,
  type MeasuredKind,
  type Train,
} from '../../engine/train/index.ts';
import type { FileMistake, Problem } from '../../engine/yaml/index.ts';
import { bandTravelBounds } from '../bands/index.ts';
import { type Bounds, boundsOf, departure, inTwoUnits, turnedRound } from '../limits/index.ts';
import { clearanceBounds } from '../packs/index.ts';
import { type FoldedJob, standing } from './fold.ts';
import type { Told } from './job.ts';
import { atEntry } from './line.ts';
import { measuredNames, notMeasured } from './readings.ts';

type ToldLimit = Extract<Told, { readonly kind: 'limit' }>;

/** What makes an entry's limit none: no figure in it, ends reversed, or ends in two units. */
export function limitMistake(limit: FileLimit): FileMistake | undefined {
  const bounds = boundsOf(limit);
  const { least, most } = bounds;
  if (!least && !most) return { problem: 'missing key', keys: ['least', 'most'] };
  if (!least || !most) return undefined;
  const ends = { least: limit.least ?? '', most: limit.most ?? '' };
  if (inTwoUnits(bounds)) return { problem: 'two units', ...ends };
  return compare(least.um, most.um) > 0 ? { problem: 'ends reversed', ...ends } : undefined;
}

/** A limit of the job that is judged by, and that of the file in whose place it stands. */
export interface Replaced {
  readonly of: string;
  readonly file: FileLimit;
  readonly job: FileLimit;
}

/**
 * The train with the limits of the job in the place of its own, end by end, the latest last: what
 * the job does not tell stays the file's. One that departs far from the file's, or from one that was
 * told to be meant, is laid over it too, but doubted: nothing is judged by it. A limit of what the
 * train does not measure is a problem at the line of its entry.
 */
export function withLimitsOf(job: FoldedJob, train: Train): WithLimits {
  const { meant: _, ...its } = laidOver(job, train);
  return its;
}

/** A train with a job's limits laid over the file's, and what of them was told. */
export interface WithLimits {
  readonly train: Train;
  readonly replaced: readonly Replaced[];
  readonly problems: readonly Problem[];
}

// Besides: the limits that were told to be meant.
function laidOver(job: FoldedJob, train: Train): WithLimits & Pick<Against, 'meant'> {
  let changed = train;
  const problems: Problem[] = [];
  const replaced = new Map<string, Replaced>();
  const meant = new Map<string, Bounds | undefined>();
  for (const { told, line } of standing(job, 'limit')) {
    const its = limited(changed, told, { file: train, meant });
    if ('mistake' in its) {
      const place = { line, column: 1, length: 1 };
      problems.push(...atEntry({ line }, [{ ...its.mistake, severity: 'error', place }]));
      continue;
    }
    changed = its.train;
    if (told.sure) meant.set(its.what, its.bounds);
    const before = replaced.get(its.what)?.file ?? its.before;
    if (before) replaced.set(its.what, { of: told.of, file: before, job: its.limit });
  }
  return { train: changed, replaced: [...replaced.values()], problems, meant };
}

/**
 * Why a limit, right in itself, cannot be this train's, or would be doubted; `job` holds those that
 * were told before.
 */
export function limitMisfit(
  told: ToldLimit,
  train: Train,
  job?: FoldedJob,
): FileMistake | undefined {
  const before = job ? laidOver(job, train) : { train, meant: new Map<string, Bounds>() };
  const its = limited(before.train, told, { file: train, meant: before.meant });
  if ('mistake' in its) return its.mistake;
  const { least = '', most = '' } = its.limit;
  if (its.bounds && turnedRound(its.bounds)) return { problem: 'ends reversed', least, most };
  const { doubted, before: file = {} } = its;
  if (!doubted) return undefined;
  return { problem: 'limit doubted', of: told.of, by: doubted, file, job: its.limit };
}

type Limited =
  | { readonly mistake: FileMistake }
  | {
      readonly train: Train;
      /** Whose limit it is, of what. */
      readonly what: string;
      readonly before: FileLimit | undefined;
      readonly limit: FileLimit;
      /** What is judged by it; and how it departs from the file's. */
      readonly bounds: Bounds | undefined;
      readonly doubted: Departure | undefined;
    };

interface Against {
  readonly file: Train;
  /** What was told to be meant, in the place of the file's. */
  readonly meant: ReadonlyMap<string, Bounds | undefined>;
}

// A train with one limit more.
function limited(
  train: Train,
  { of, which, limit, sure }: ToldLimit,
  { file, meant }: Against,
): Limited {
  const holder = holderOf(train, of);
  if (!holder) return { mistake: notMeasured(of, measuredNames(train)) };
  const { limits, kinds, put } = holder;
  if (which !== undefined && !kinds.includes(which)) {
    return { mistake: { problem: 'expected', what: 'limit of', found: which } };
  }
  const kind = which ?? holder.usual;
  if (kind === undefined) return { mistake: { problem: 'missing key', keys: ['of'] } };
  // Two limits of one gap do not stand side by side: the newer is the one that is judged by.
  const rivals = Object.keys(limits).filter((its) => RIVALS[kind]?.includes(its));
  const half = limit.least === undefined ? 'least' : limit.most === undefined ? 'most' : undefined;
  if (half && !limits[kind] && rivals.length > 0) {
    return { mistake: { problem: 'missing key', keys: [half] } };
  }
  const others = Object.entries(limits).filter(([its]) => !rivals.includes(its));
  const { doubted: _, ...overlay } = overlaid(limits[kind], limit);
  const all = { ...Object.fromEntries(others), [kind]: overlay };
  const what = `${of}: ${kind}`;
  const bounds = holder.bounds(all, kind);
  const own = holderOf(file, of);
  const known = meant.get(what) ?? own?.bounds(own.limits, kind);
  const doubted = sure || !bounds ? undefined : departure(bounds, known);
  return {
    train: put({ ...all, [kind]: { ...overlay, ...(doubted && { doubted }) } }),
    what,
    before: limits[kind] ?? limits[rivals[0] ?? ''],
    limit: overlay,
    bounds,
    doubted,
  };
}

const RIVALS: Readonly<Record<string, readonly string[]>> = {
  clearance: ['each friction', 'travel'],
  'each friction': ['clearance'],
  travel: ['clearance'],
};

type Limits = Readonly<Record<string, FileLimit | undefined>>;

interface Holder {
  readonly limits: Limits;
  readonly kinds: readonly string[];
  /** Of which kind a limit is that does not say; absent: it must say. */
  readonly usual?: string;
  readonly put: (limits: Limits) => Train;
  /** What is judged by one of them, whichever way it is told. */
  readonly bounds: (limits: Limits, kind: string) => Bounds | undefined;
}

const plainBounds: Holder['bounds'] = (limits, kind) => {
  const its = limits[kind];
  return its && boundsOf(its);
};

function holderOf(train: Train, name: string): Holder | undefined {
  for (const kind of MEASURED_KINDS) {
    const holder = HOLDERS[kind](train, name);
    if (holder) return holder;
  }
  return undefined;
}

const HOLDERS: Readonly<Record<MeasuredKind, (train: Train, name: string) => Holder | undefined>> =
  {
    pack(train, name) {
      const { packs = [] } = train;
      const pack = packs.find(({ device }) => device === name);
      if (!pack) return undefined;
      const withThem = (limits: Limits) => ({ ...pack, limits: limits as never });
      return {
        limits: { ...pack.limits },
        kinds: ['clearance', 'each friction', 'friction', 'steel', 'cone'],
        usual: 'clearance',
        put: (limits) => ({ ...train, packs: swapped(packs, pack, withThem(limits)) }),
        bounds(limits, kind) {
          return kind === 'clearance' || kind === 'each friction'
            ? clearanceBounds(withThem(limits))
            : plainBounds(limits, kind);
        },
      };
    },
    endplay(train, name) {
      const { endPlays = [] } = train;
      const play = endPlays.find(({ shaft }) => shaft === name);
      if (!play) return undefined;
      return {
        limits: play.limit ? { limit: play.limit } : {},
        kinds: [],
        usual: 'limit',
        put: (limits) => ({ ...train, endPlays: swapped(endPlays, play, { ...play, ...limits }) }),
        bounds: plainBounds,
      };
    },
    band(train, name) {
      const { bands = [] } = train;
      const band = bands.find(({ device }) => device === name);
      if (!band) return undefined;
      const withThem = (limits: Limits) => ({ ...band, limits: limits as never });
      const [usual, ...others] = Object.keys(band.limits ?? {});
      return {
        limits: { ...band.limits },
        kinds: ['clearance', 'travel'],
        ...(usual !== undefined && others.length === 0 && { usual }),
        put: (limits) => ({ ...train, bands: swapped(bands, band, withThem(limits)) }),
        bounds: (limits) => bandTravelBounds(withThem(limits)),
      };
    },
    preload(train, name) {
      const { preloads = [] } = train;
      const preload = preloads.find(({ bearings }) => bearings === name);
      if (!preload) return undefined;
      return {
        limits: preload.squeeze ? { squeeze: preload.squeeze } : {},
        kinds: ['squeeze'],
        usual: 'squeeze',
        put: (limits) => ({
          ...train,
          preloads: swapped(preloads, preload, { ...preload, ...limits }),
        }),
        bounds: plainBounds,
      };
    },
    wear(train, name) {
      const { wear = [] } = train;
      const check = wear.find(({ part }) => part === name);
      if (!check) return undefined;
      return {
        limits: check.limit ? { limit: check.limit } : {},
        kinds: [],
        usual: 'limit',
        put: (limits) => ({ ...train, wear: swapped(wear, check, { ...check, ...limits }) }),
        bounds: plainBounds,
      };
    },
  };

function swapped<Its extends object>(all: readonly Its[], old: Its, its: object): Its[] {
  return all.map((one) => (one === old ? (its as Its) : one));
}

// An end that the newer limit does not tell stays the older's, and so does its source.
function overlaid(older: FileLimit | undefined, newer: FileLimit): FileLimit {
  if (!older || (newer.least !== undefined && newer.most !== undefined)) return newer;
  const kept = newer.least === undefined ? older.least : older.most;
  if (kept === undefined) return newer;
  const both = (a?: string, b?: string) => (a === b || a === undefined ? b : b && `${a}; ${b}`);
  const source = newer.source && older.source && both(older.source, newer.source);
  const by = both(older.by, newer.by);
  return {
    least: newer.least ?? kept,
    most: newer.most ?? kept,
    ...(source !== undefined && { source }),
    ...(by !== undefined && { by }),
  };
}
