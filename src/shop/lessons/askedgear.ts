import type { GearName } from '../../engine/chart/index.ts';
import { type Flow, flow } from '../../engine/flow/index.ts';
import { appliedIn, type Gear, type Train } from '../../engine/train/index.ts';
import type { Setting } from './question.ts';

/** A gear with what the engine says of it, worked out once, when it is first asked. */
export interface AskedGear {
  readonly train: Train;
  readonly gear: Gear;
  /** Under power. */
  readonly setting: Setting & { readonly gear: GearName };
  readonly worked: Flow;
}

/** The gears of the ranges; of those that apply the same devices only the first. */
export function askedGears(train: Train, only?: GearName): AskedGear[] {
  const seen = new Set<string>();
  return train.ranges.flatMap((range) =>
    range.gears.flatMap((gear): AskedGear[] => {
      const on = appliedIn(train, gear);
      const key = JSON.stringify(on.toSorted());
      if (only ? only.range !== range.name || only.gear !== gear.name : seen.has(key)) return [];
      seen.add(key);
      const named = { range: range.name, gear: gear.name };
      const setting = { on, gear: named, end: 'drive', hold: [] } as const;
      let worked: Flow | undefined;
      return [
        {
          train,
          gear,
          setting,
          get worked() {
            return (worked ??= flow(train, on));
          },
        },
      ];
    }),
  );
}
