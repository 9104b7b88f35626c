import type { Gear, Range, Train } from './train.ts';

/** A gear by its two names, with what is applied in it. */
export interface DeclaredGear {
  readonly range: string;
  readonly gear: string;
  readonly on: readonly string[];
  readonly weak?: readonly string[];
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
    return gears.map((gear) => ({
      range,
      gear: gear.name,
      on: appliedIn(train, gear),
      ...(gear.weak && { weak: gear.weak }),
    }));
  });
}

/** The train as it is in one gear: what oil pushes on too weakly there slips, and nowhere else. */
export function trainInGear(train: Train, { weak = [] }: Pick<Gear, 'weak'>): Train {
  if (weak.length === 0) return train;
  const devices = train.devices.map((device) => {
    return weak.includes(device.name) && !device.stuck
      ? { ...device, stuck: 'slipping' as const }
      : device;
  });
  return { ...train, devices };
}
