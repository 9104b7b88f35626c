import * as v from 'valibot';
import { plainName, or, teeth } from '../form/index.ts';
import type { GearPair } from '../train/index.ts';
import type { Value } from '../yaml/index.ts';
import { MEMBER, byName, type Entry, listOf, mapOf, section } from '../entries/index.ts';

const PAIR_NAME = plainName('The name of a gear pair.', {
  as: 'gear pair',
  names: 'gear pair',
  own: true,
});
const gearWheel = (description: string) =>
  v.pipe(v.strictTuple([MEMBER, teeth('the wheel')], or('wheel')), v.description(description));
const GEAR_PAIR = v.pipe(
  v.strictObject(
    {
      driver: gearWheel('The member that drives, and its teeth.'),
      driven: gearWheel('The member that is driven, and its teeth.'),
      kind: v.exactOptional(
        v.pipe(
          v.picklist(['external', 'internal', 'chain'], or('pair kind')),
          v.description(
            'External wheels turn opposite ways; internal ones and a chain turn the same way. Absent: external.',
          ),
        ),
      ),
    },
    or('gear pair'),
  ),
  v.description('Two wheels on fixed axes, parallel to the main one.'),
);

export const PAIRS = section({
  key: 'gear pairs',
  form: byName(PAIR_NAME, GEAR_PAIR, 'Pairs of wheels on fixed axes, by name.'),
  read: (entries) => ({ pairs: listOf(entries, gearPair) }),
  write: ({ pairs }) => new Map(pairs.map((pair) => [pair.name, pairValue(pair)])),
  check: ({ pairs }, at, findings) => {
    for (const { name, driver, driven } of pairs) {
      if (driver.member !== driven.member) continue;
      findings.error(at('gear pairs', name, 'driven', '0'), {
        problem: 'joined to itself',
        member: driver.member,
      });
    }
  },
});

function gearPair(name: string, { driver, driven, kind }: Entry<typeof GEAR_PAIR>): GearPair {
  return {
    name,
    driver: { member: driver[0], teeth: driver[1] },
    driven: { member: driven[0], teeth: driven[1] },
    kind: kind ?? 'external',
  };
}

/** As it stands in a file, without its name. */
export function pairValue({ driver, driven, kind }: GearPair): Value {
  return mapOf({
    driver: [driver.member, driver.teeth],
    driven: [driven.member, driven.teeth],
    kind: kind === 'external' ? undefined : kind,
  });
}
