import type { OneWayClutch } from '../../engine/train/index.ts';
import { AT_THE_INPUT, type Stand } from '../../asking/request/index.ts';
import { fittings, freeWay, oneWayWords, type Voice } from '../narrative/index.ts';
import type { Json } from './json.ts';

/**
 * A statement for each clutch and each way of fitting it, with the four things that it needs.
 * `found`: it was found so, by what is wrong with the train. `free` is the way in which the race
 * that is turned turns; null: both ways, or neither.
 */
export function oneWayJson(
  clutches: readonly OneWayClutch[],
  voice: Voice,
  stand: Stand = AT_THE_INPUT,
  turned: ReadonlySet<string> = new Set(),
): Json {
  return clutches.flatMap((clutch) =>
    fittings(clutch).map((fitted): Json => {
      const inner = stand.hold === 'inner';
      const here = { ...stand, fitted };
      return {
        device: clutch.name,
        hold: stand.hold,
        held: inner ? clutch.first : clutch.second,
        turned: inner ? clutch.second : clutch.first,
        seenFrom: stand.seenFrom,
        fitted,
        found: turned.has(clutch.name) === (fitted === 'other way up'),
        free: clutch.stuck ? null : freeWay(clutch, here),
        text: oneWayWords(clutch, here, voice),
      };
    }),
  );
}
