import { namedIn } from '../hydraulics/index.ts';
import { CASE } from './member.ts';
import { MEASURED, MEASURED_KINDS } from './measured.ts';
import { membersOf } from './parts.ts';
import type { Train } from './train.ts';

/**
 * Whatever of a train has a name of its own, each once: sets and their members, gear pairs, devices,
 * ranges, gears, parts, what is measured, the ends of the unit, and what stands in its controls. The
 * case has none.
 */
export function namesOf(train: Train): string[] {
  const { sets, pairs, devices, ranges, teardown = [], endPlays = [], ends = [], controls } = train;
  const names = [
    ...[...sets, ...pairs, ...devices, ...ranges, ...teardown].map(({ name }) => name),
    ...membersOf(train),
    ...devices.filter(({ kind }) => kind === 'one-way').flatMap(({ name }) => racesOf(name)),
    ...ranges.flatMap(({ gears }) => gears.map(({ name }) => name)),
    ...MEASURED_KINDS.flatMap((kind) => MEASURED[kind](train)),
    ...endPlays.flatMap(({ stack = [] }) => stack.map(({ part }) => part)),
    ...ends,
    ...(controls ? namedIn(controls) : []),
  ];
  return [...new Set(names)].filter((name) => name !== CASE);
}

function racesOf(clutch: string): string[] {
  return [`${clutch}.inner`, `${clutch}.outer`];
}
