import type { EndPlayJudgement } from '../../shop/endplay/index.ts';
import { asFineAs, HUNDREDTHS } from '../narrative/index.ts';
import type { Json } from './json.ts';
import {
  againJson,
  boundsJson,
  chosenJson,
  drawsJson,
  gapJson,
  lengthJson,
  remarkJson,
} from './packjson.ts';

/** Lengths as in `packJson`. `thicker`: how thick a part to add, below 0 for a thinner one. */
export function endPlayJson(judged: readonly EndPlayJudgement[]): Json {
  return judged.map(
    ({ endPlay, measured, bounds, verdict, thicker, drawn, draws, selection, again, remarks }) => {
      const tool = measured?.clearance ?? HUNDREDTHS;
      return {
        shaft: endPlay.shaft,
        measure: endPlay.measure ?? 'end play',
        endPlay: measured ? lengthJson(measured.clearance) : null,
        readings: measured ? measured.places.map(lengthJson) : [],
        limits: bounds ? boundsJson(bounds) : null,
        verdict: verdict ?? null,
        thicker: thicker
          ? {
              from: lengthJson(asFineAs(thicker.leastUm, tool)),
              to: lengthJson(asFineAs(thicker.mostUm, tool)),
            }
          : null,
        byTheFile: drawn ? gapJson(drawn, tool) : null,
        ...(draws && { draws: drawsJson(draws, tool) }),
        selection: selection
          ? {
              part: endPlay.shelf?.part ?? null,
              best: chosenJson(selection.best, tool),
              second: selection.second ? chosenJson(selection.second, tool) : null,
            }
          : null,
        ...(again && { again: againJson(again) }),
        remarks: remarks.map(remarkJson),
      };
    },
  );
}
