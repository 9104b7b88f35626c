import { faultText } from '../../engine/faults/index.ts';
import type { Grip, Mistake, Plan, PlannedCheck, Watched } from '../../engine/plan/index.ts';
import type { Part } from '../../engine/train/index.ts';
import { AT_THE_INPUT, feltFor, type Stand } from '../narrative/index.ts';
import type { Json } from './json.ts';

/**
 * The build and its checks. A mistake is `fault`, as --fault takes it, or `slip`, which nothing
 * that turns can show. Ways are the reader's words.
 */
export function planJson(
  { steps, mistakes, checks, proven }: Plan,
  stand: Stand = AT_THE_INPUT,
): Json {
  const byHand = mistakes.filter(({ caughtBy }) => 'step' in caughtBy).length;
  return {
    coverage: { mistakes: mistakes.length, byHand, checks, proven },
    steps: steps.map(({ number, part, checks: here }) => {
      return {
        step: number,
        part: partJson(part),
        checks: here.map((check) => checkJson(check, stand)),
      };
    }),
    mistakes: mistakes.map(watchedJson),
  };
}

function partJson({ carries, bolts, height, ...notes }: Part): Json {
  return {
    ...notes,
    ...(height && { height: { ...height } }),
    ...(bolts && { bolts: { ...bolts } }),
    carries,
  };
}

function checkJson({ hold, turn, right, wrong }: PlannedCheck, stand: Stand): Json {
  return {
    hold: hold ? gripJson(hold) : null,
    turn: gripJson(turn),
    right: feltFor(right, stand),
    wrong: wrong.map(({ felt, mistakes }) => {
      return { felt: feltFor(felt, stand), mistakes: mistakes.map(mistakeJson) };
    }),
  };
}

function gripJson({ part, member }: Grip): Json {
  return { part, member };
}

function watchedJson({ mistake, part, made, rightUntil, caughtBy }: Watched): Json {
  return { ...mistakeJson(mistake), part, made, rightUntil, caughtBy };
}

function mistakeJson(mistake: Mistake): { readonly [key: string]: Json } {
  return mistake.what === 'slip'
    ? { slip: `${mistake.part}: ${mistake.is}` }
    : { fault: faultText(mistake) };
}
