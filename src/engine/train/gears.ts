import type { Gear, Range, Train } from './train.ts';

/** A gear by its two names, with what is applied in it. */
export interface DeclaredGear {
  readonly range: string;
  readonly gear: string;
  readonly on: readonly string[];
}

/**
 * The devices that are applied in a gear, in the file's order. Nobody else reads `on` of a gear
 * but who reads, writes or edits the file: what applies a device may come to stand elsewhere.
 */
export function appliedIn(_train: Train, gear: Gear): readonly string[] {
  return gear.on;
}

/** Every gear of a train, or of some ranges of it, in the file's order. */
export function gearsOf(train: Train, ranges: readonly Range[] = train.ranges): DeclaredGear[] {
  return ranges.flatMap(({ name: range, gears }) => {
    return gears.map((gear) => ({ range, gear: gear.name, on: appliedIn(train, gear) }));
  });
}
