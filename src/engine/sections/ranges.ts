import * as v from 'valibot';
import { plainName, or } from '../form/index.ts';
import { APPLIED_DEVICE, byName, listOf, section } from '../entries/index.ts';

const RANGE_NAME = plainName('A position of the selector.', {
  as: 'range',
  names: 'range',
  own: true,
});
const GEAR_NAME = plainName('A gear of this range.', { as: 'gear', names: 'gear', own: true });

export const RANGES = section({
  key: 'ranges',
  form: byName(
    RANGE_NAME,
    v.nullish(
      v.record(
        GEAR_NAME,
        v.pipe(
          v.array(APPLIED_DEVICE, or('devices')),
          v.description('The devices that are applied.'),
        ),
        or('section'),
      ),
    ),
    'What is applied in each gear of each position of the selector.',
  ),
  read: (entries) => ({
    ranges: listOf(entries, (range, gears) => ({
      name: range,
      gears: listOf(gears, (gear, on) => ({ name: gear, on })),
    })),
  }),
  write: ({ ranges }) =>
    new Map(
      ranges.map(({ name: range, gears }) => [
        range,
        new Map(gears.map((gear) => [gear.name, gear.on])),
      ]),
    ),
  check: ({ ranges }, at, findings) => {
    for (const { name: range, gears } of ranges) {
      for (const { name: gear, on } of gears) {
        on.forEach((device, i) => {
          if (on.indexOf(device) === i) return;
          findings.error(at('ranges', range, gear, `${i}`), {
            problem: 'listed twice',
            name: device,
          });
        });
      }
    }
  },
});
