import * as v from 'valibot';
import { plainName } from '../form/index.ts';
import type { Bolts, Part } from '../train/index.ts';
import type { Value } from '../yaml/index.ts';
import { PART } from './part.ts';
import { byName, type Entry, listOf, plainValue, section } from '../entries/index.ts';
import { checkTeardown, lookAtTeardown } from './teardowncheck.ts';

const PART_NAME = plainName('The name of a part as it comes off.', {
  as: 'part',
  names: 'part',
  own: true,
});

export const TEARDOWN = section({
  key: 'teardown',
  form: byName(
    PART_NAME,
    v.nullish(PART),
    'The parts, by name, in the order in which they come off.',
  ),
  read: (entries): { teardown?: Part[] } => (entries ? { teardown: listOf(entries, partOf) } : {}),
  write: ({ teardown = [] }) => new Map(teardown.map((its) => [its.name, partValue(its)])),
  checkSound: checkTeardown,
  lookAgain: lookAtTeardown,
});

type PartEntry = Entry<typeof PART>;

function partOf(name: string, { carries = [], selective, bolts, ...notes }: PartEntry): Part {
  return {
    name,
    carries,
    ...notes,
    ...(selective && { selective: selective === 'yes' }),
    ...(bolts && { bolts: boltsOf(bolts) }),
  };
}

function boltsOf({ once, ...its }: NonNullable<PartEntry['bolts']>): Bolts {
  return { ...its, ...(once && { once: once === 'yes' }) };
}

/** What stands behind a part's name, in the order of the file form. */
export function partValue(part: Part): Value {
  const { carries, selective, bolts } = part;
  const said = (yes: boolean | undefined) => (yes === undefined ? undefined : yes ? 'yes' : 'no');
  const its = {
    ...part,
    carries: carries.length > 0 ? carries : undefined,
    selective: said(selective),
    bolts: bolts && { ...bolts, once: said(bolts.once) },
  };
  const keys = Object.keys(PART.entries) as (keyof typeof its)[];
  return plainValue(Object.fromEntries(keys.map((key) => [key, its[key]]))) as Value;
}
