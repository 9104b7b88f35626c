import type { FaultsReport } from '../../asking/faults/index.ts';
import {
  type BenchSign,
  type Changed,
  type FaultCell,
  faultText,
  type Outcome,
  roadSign,
} from '../../engine/faults/index.ts';
import type { Stand } from '../../asking/request/index.ts';
import { benchText, roadText, type Voice } from '../narrative/index.ts';
import { type Json, mapJson, numberJson, quantityJson } from './json.ts';

/**
 * Faults against gears: `gears` is the healthy train; a row of `faults` has a cell for each of
 * them, in their order. A fault is in the words of `--fault`. `is` holds the cell against the
 * healthy train: same, neutral, tied up, another ratio, drives (where the healthy train does not),
 * or slips (then the state beside it is above the load that is still carried). `inReverse` is coast in
 * reverse, of a gear that drives nothing. Ratios are input speed over output speed, both ways.
 * `free` and `fast` name what spins, per turn of the turned end. `bench` and
 * `road` are the first signs, null where there is none; `text` is for the reader's language and
 * stand, all else as seen from the input end. `classes` are places in `faults`: no road test parts
 * the rows of one; `silent`: they change nothing.
 */
export function faultsJson(
  { train, matrix, bench }: FaultsReport,
  voice: Voice,
  stand?: Stand,
): Json {
  return {
    gears: matrix.gears.map(({ range, gear, on, drive, coast, inReverse }) => ({
      range,
      gear,
      on,
      drive: outcomeJson(drive),
      coast: outcomeJson(coast),
      ...(inReverse && { inReverse: outcomeJson(inReverse) }),
    })),
    faults: matrix.rows.map((row, place) => {
      const road = roadSign(matrix, row);
      const text = roadText(matrix, row, voice);
      return {
        faults: row.faults.map(faultText),
        gears: row.cells.map(cellJson),
        road: road ? { range: road.gear.range, gear: road.gear.gear, end: road.end, text } : null,
        ...(bench && {
          bench: benchJson(bench[place], benchText(bench[place], train, voice, stand)),
        }),
      };
    }),
    classes: matrix.classes.map(({ rows, silent }) => ({ rows, silent })),
  };
}

function benchJson(sign: BenchSign | undefined, text: string): Json {
  if (!sign) return null;
  const { hold, turn, way, on } = sign.check;
  return { hold, turn, way, on, turns: sign.turns, text };
}

function cellJson({ drive, coast, inReverse, braking, spins }: FaultCell): Json {
  const end = (of: Changed, spun: NonNullable<typeof spins>['drive'] | undefined): Json => ({
    is: of.is,
    ...outcomeJson(of),
    ...(spun && { free: spun.free, fast: mapJson(spun.fast, quantityJson) }),
  });
  return {
    drive: end(drive, spins?.drive),
    coast: end(coast, spins?.coast),
    ...(inReverse && { inReverse: end(inReverse, undefined) }),
    engineBraking: braking,
  };
}

function outcomeJson({ state, ratio }: Outcome): { readonly [key: string]: Json } {
  return { state, ...(ratio && { ratio: numberJson(ratio) }) };
}
