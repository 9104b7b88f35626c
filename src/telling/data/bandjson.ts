import type { BandJudgement } from '../../shop/bands/index.ts';
import { type Json, numberJson } from './json.ts';
import { boundsJson, chosenJson, lengthJson, remarkJson } from './packjson.ts';

/** Lengths as in `packJson`. `limits` are of the travel; turns are from where the drum is held. */
export function bandJson(judged: readonly BandJudgement[]): Json {
  return judged.map((its) => {
    const { band, travel, clearance, allRound, bounds, backOff, selection, turns } = its;
    const tool = travel?.clearance;
    return {
      device: band.device,
      by: its.by ?? null,
      turns: turns ? numberJson(turns) : null,
      travel: tool ? lengthJson(tool) : null,
      clearance: clearance ? lengthJson(clearance) : null,
      allRound: allRound ? lengthJson(allRound) : null,
      limits: bounds ? boundsJson(bounds) : null,
      verdict: its.verdict ?? null,
      backOff: backOff
        ? {
            least: numberJson(backOff.least),
            most: numberJson(backOff.most),
            best: numberJson(backOff.best),
          }
        : null,
      selection:
        selection && tool
          ? {
              part: band.shelf?.part ?? null,
              best: chosenJson(selection.best, tool),
              second: selection.second ? chosenJson(selection.second, tool) : null,
            }
          : null,
      remarks: its.remarks.map(remarkJson),
    };
  });
}
