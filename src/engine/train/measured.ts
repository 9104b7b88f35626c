import type { Train } from './train.ts';

/**
 * The kinds of readings: by the word of each, which is the verb of the command, the names that a
 * train's own bear. Whatever else a kind needs is asked for by the compiler.
 */
export const MEASURED = {
  pack: ({ packs = [] }) => packs.map(({ device }) => device),
  endplay: ({ endPlays = [] }) => endPlays.map(({ shaft }) => shaft),
  preload: ({ preloads = [] }) => preloads.map(({ bearings }) => bearings),
  band: ({ bands = [] }) => bands.map(({ device }) => device),
  wear: ({ wear = [] }) => wear.map(({ part }) => part),
} as const satisfies Record<string, (train: Train) => readonly string[]>;

/** What is measured of a unit: the word of each kind of reading, which is its verb. */
export type MeasuredKind = keyof typeof MEASURED;

export const MEASURED_KINDS = Object.keys(MEASURED) as readonly MeasuredKind[];
