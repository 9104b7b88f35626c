import { digitsOf } from '../../shop/length/index.ts';
import type { PreloadJudgement, Torque, TorqueBounds } from '../../shop/preload/index.ts';
import { asFineAs } from '../narrative/index.ts';
import { type Json, numberJson } from './json.ts';
import { boundsJson, chosenJson, lengthJson, remarkJson } from './packjson.ts';

/**
 * Lengths as in `packJson`; a torque is { Nm, exact }. `tighter`: how much thicker the part must
 * become, below 0 for thinner. What is chosen tells the gap that it should leave: below 0 a squeeze.
 */
export function preloadJson(judged: readonly PreloadJudgement[]): Json {
  return judged.map((its) => {
    const { preload, state, torque, limit, gap, squeeze, tighter, selection } = its;
    const tool = gap?.clearance;
    return {
      bearings: preload.bearings,
      state,
      by: its.by ?? null,
      torque: torque ? torqueJson(torque) : null,
      limits: limit ? torqueBoundsJson(limit) : null,
      verdict: its.verdict ?? null,
      gap: tool ? lengthJson(tool) : null,
      squeeze: squeeze ? boundsJson(squeeze) : null,
      tighter:
        tighter && tool
          ? {
              from: lengthJson(asFineAs(tighter.leastUm, tool)),
              to: lengthJson(asFineAs(tighter.mostUm, tool)),
            }
          : null,
      selection:
        selection && tool
          ? { part: preload.shelf?.part ?? null, best: chosenJson(selection.best, tool) }
          : null,
      remarks: its.remarks.map(remarkJson),
    };
  });
}

function torqueJson({ nm, stepNm }: Torque): Json {
  return { Nm: digitsOf(nm, stepNm), exact: numberJson(nm) };
}

function torqueBoundsJson({ least, most, source, by }: TorqueBounds): Json {
  return {
    least: least ? torqueJson(least) : null,
    most: most ? torqueJson(most) : null,
    source: source ?? null,
    by: by ?? null,
  };
}
