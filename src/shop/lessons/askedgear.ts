import type { GearName } from '../../engine/chart/index.ts';
import { type Flow, flow } from '../../engine/flow/index.ts';
import { gearsOf, type Train } from '../../engine/train/index.ts';
import type { Setting } from './question.ts';

/** A gear with what the engine says of it, worked out once, when it is first asked. */
export interface AskedGear {
  readonly train: Train;
  /** Under power. */
  readonly setting: Setting & { readonly gear: GearName };
  readonly worked: Flow;
}

/** The gears of the ranges; of those that apply the same devices only the first. */
export function askedGears(train: Train, only?: GearName): AskedGear[] {
  const seen = new Set<string>();
  return gearsOf(train).flatMap(({ range, gear, on }): AskedGear[] => {
    const key = JSON.stringify(on.toSorted());
    if (only ? only.range !== range || only.gear !== gear : seen.has(key)) return [];
    seen.add(key);
    const setting = { on, gear: { range, gear }, end: 'drive', hold: [] } as const;
    let worked: Flow | undefined;
    return [
      {
        train,
        setting,
        get worked() {
          return (worked ??= flow(train, on));
        },
      },
    ];
  });
}
