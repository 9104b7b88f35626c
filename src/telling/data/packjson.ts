import { type Draws, type Gap, type Length, digitsIn } from '../../shop/length/index.ts';
import type { Measured, PackJudgement } from '../../shop/packs/index.ts';
import type { Again, Bounds, Chosen } from '../../shop/limits/index.ts';
import { asFineAs, drawnLength, HUNDREDTHS, type Remark } from '../narrative/index.ts';
import { type Json, numberJson } from './json.ts';

/**
 * A length is { mm, in, um }: digits as the tool told them, and the exact micrometres. A length
 * that was reckoned (`plusMinus`, `likely`) is told as finely as the reading that it goes with.
 */
export function packJson(judged: readonly PackJudgement[]): Json {
  return judged.map((its) => {
    const { pack, judged: by, frictions, eachFriction, bounds, thicker, selection, gauge } = its;
    const tool = by?.clearance;
    return {
      device: pack.device,
      frictions,
      clearance: tool ? lengthJson(tool) : null,
      by: by?.way ?? null,
      eachFriction: eachFriction ? lengthJson(eachFriction) : null,
      limits: bounds ? boundsJson(bounds) : null,
      verdict: its.verdict ?? null,
      thicker:
        thicker && tool
          ? {
              from: lengthJson(asFineAs(thicker.leastUm, tool)),
              to: lengthJson(asFineAs(thicker.mostUm, tool)),
            }
          : null,
      byTheFile: its.drawn && tool ? gapJson(its.drawn, tool) : null,
      ...(its.draws && { draws: drawsJson(its.draws, tool ?? HUNDREDTHS) }),
      measured: its.measured.map(measuredJson),
      ...(its.again && { again: againJson(its.again) }),
      gauge: gauge
        ? {
            fits: gauge.fits ? lengthJson(gauge.fits) : null,
            doesNotFit: gauge.doesNotFit ? lengthJson(gauge.doesNotFit) : null,
            verdict: gauge.verdict ?? null,
          }
        : null,
      selection:
        selection && tool
          ? {
              part: pack.shelf?.part ?? null,
              best: chosenJson(selection.best, tool),
              second: selection.second ? chosenJson(selection.second, tool) : null,
            }
          : null,
      wear: its.wear.map(({ what, worst, place, bounds: limits, verdict }) => ({
        what,
        worst: lengthJson(worst),
        place,
        limits: limits ? boundsJson(limits) : null,
        verdict: verdict ?? null,
      })),
      remarks: its.remarks.map(remarkJson),
    };
  });
}

export function againJson({ fitted, measured, verdict, predicted, agrees }: Again): Json {
  return {
    fitted: lengthJson(fitted),
    clearance: lengthJson(measured.clearance),
    verdict: verdict ?? null,
    predicted: predicted ? gapJson(predicted, measured.clearance) : null,
    agrees: agrees ?? null,
  };
}

function measuredJson({
  way,
  clearance,
  places,
  spreadUm,
  worst,
  pressure,
  squash,
}: Measured): Json {
  return {
    way,
    clearance: lengthJson(clearance),
    places: places.map(lengthJson),
    spread: lengthJson(asFineAs(spreadUm, clearance)),
    worstPlace: worst + 1,
    ...(pressure !== undefined && { pressure }),
    ...(squash && { squash: lengthJson(squash) }),
  };
}

export function chosenJson({ size, predicted, verdict, stays, safe }: Chosen, tool: Length): Json {
  return { size: lengthJson(size), ...gapJson(predicted, tool), verdict, stays, safe };
}

export function gapJson(
  { um, worstUm, likelyUm }: Gap,
  tool: Length,
): { readonly [key: string]: Json } {
  return {
    clearance: lengthJson(asFineAs(um, tool)),
    plusMinus: lengthJson(asFineAs(worstUm, tool)),
    likely: lengthJson(asFineAs(likelyUm, tool)),
  };
}

/** Stacks by chance: `ofThousand` of them leave at most `leave`. Shares are from 0 to 1. */
export function drawsJson({ quantiles, outside, ...asked }: Draws, tool: Length): Json {
  return {
    ...asked,
    quantiles: quantiles.map(({ ofThousand, um, giveUm }) => {
      return { ofThousand, leave: lengthJson(drawnLength(um, giveUm, tool)), um, giveUm };
    }),
    outside: outside
      ? { all: { ...outside.all }, below: { ...outside.below }, above: { ...outside.above } }
      : null,
  };
}

export function boundsJson({ least, most, source, by }: Bounds): Json {
  return {
    least: least ? lengthJson(least) : null,
    most: most ? lengthJson(most) : null,
    source: source ?? null,
    by: by ?? null,
  };
}

export function remarkJson({ remark, ...told }: Remark): Json {
  const values = Object.entries(told).map(([key, its]) => {
    return [key, isLength(its) ? lengthJson(its) : (its as Json)];
  });
  return { remark, ...(Object.fromEntries(values) as { readonly [key: string]: Json }) };
}

function isLength(value: unknown): value is Length {
  return typeof value === 'object' && value !== null && 'stepUm' in value;
}

export function lengthJson(length: Length): Json {
  return {
    mm: digitsIn(length, 'mm'),
    in: digitsIn(length, 'in'),
    um: numberJson(length.um),
  };
}
