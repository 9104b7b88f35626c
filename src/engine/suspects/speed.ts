import { toNumber } from '../linear/index.ts';
import { ratioByCar, ratioByGear, type RoadReading } from '../road/index.ts';
import type { Inquiry } from '../cause/index.ts';
import type { Observation } from './observation.ts';
import { type Sight, baseText, type Test } from '../sight/index.ts';

/**
 * What an engine speed at a road speed says of a gear: its ratio between two bounds, by the
 * file's tyre and final drive, else by a gear that surely drives and was read in the same way
 * (`others`). Undefined where there is neither.
 */
export function speedSight(
  reading: RoadReading,
  { train, predict }: Inquiry,
  others: readonly Observation[],
): Sight | undefined {
  if (train.car) return sightWithin(reading, ratioByCar(reading, train.car));
  for (const { test, sight } of others) {
    if (sight.saw !== 'ratio' || !sight.read || !drivesSurely(test, others)) continue;
    const { outcomes, own } = predict(test);
    const ratio = own === undefined ? undefined : outcomes[own]?.ratio;
    if (ratio) return sightWithin(reading, ratioByGear(reading, sight.read, toNumber(ratio)));
  }
  return undefined;
}

function sightWithin(
  read: RoadReading,
  range: { readonly from: number; readonly to: number },
): Sight {
  return { saw: 'ratio', ratio: (range.from + range.to) / 2, range, read };
}

function drivesSurely(test: Test, others: readonly Observation[]): boolean {
  return others.some(({ test: other, sight, sure }) => {
    const good = sight.saw === 'drives' || sight.saw === 'as it should';
    return good && sure === 'sure' && baseText(other) === baseText(test);
  });
}
