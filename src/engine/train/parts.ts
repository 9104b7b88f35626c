import type { GearSet } from './gearset.ts';
import { CASE, type MemberName } from './member.ts';
import { outputsOf } from './outputs.ts';
import type { Train } from './train.ts';

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

/** Every name by which a train calls a member, the case first, in the order of the file. */
export function membersOf(train: Train): MemberName[] {
  const names = [
    CASE,
    train.input,
    ...outputsOf(train),
    ...train.sets.flatMap((set) => partsOf(set).map((part) => `${set.name}.${part}`)),
    ...train.pairs.flatMap(({ driver, driven }) => [driver.member, driven.member]),
    ...train.joins.flatMap(({ name, members }) => [name, ...members]),
    ...train.devices.flatMap(({ first, second }) => [first, second]),
  ];
  return [...new Set(names)].filter((name) => name !== '');
}
