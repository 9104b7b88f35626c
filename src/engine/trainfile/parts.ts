import type { GearSet } from '../train/index.ts';

/** The parts of a set that are members: what may stand behind its name and a dot. */
export function partsOf(set: GearSet): string[] {
  switch (set.kind) {
    case 'plain':
    case 'stepped':
      return ['sun', 'ring', 'carrier', 'planet'];
    case 'pair':
      return ['sun', 'ring', 'carrier', 'inner', 'outer'];
    case 'sharing':
      return [
        ...(set.sun === undefined ? [] : ['sun']),
        ...(set.ring === undefined ? [] : ['ring']),
        'carrier',
        ...(set.pairs === undefined ? ['planet'] : ['inner', 'outer']),
      ];
    case 'wheels':
      return [...set.wheels.keys(), 'carrier'];
    case 'bevel':
      return ['left', 'right', 'carrier', 'pinion'];
  }
}
