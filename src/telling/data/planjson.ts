import { faultText } from '../../engine/faults/index.ts';
import type { Grip, Mistake, Plan, PlannedCheck, Step, Watched } from '../../engine/plan/index.ts';
import type { Part } from '../../engine/train/index.ts';
import { FIRST_START } from '../../shop/firststart/index.ts';
import { AT_THE_INPUT, type Stand } from '../../asking/request/index.ts';
import { feltFor } from '../narrative/index.ts';
import type { Json } from './json.ts';

/**
 * The build and its checks. A mistake is `fault`, as --fault takes it, or `slip`, which nothing
 * that turns can show. Ways are the reader's words.
 */
export function planJson(
  { steps, mistakes, checks, assumed, proven }: Plan,
  stand: Stand = AT_THE_INPUT,
): Json {
  const byHand = mistakes.filter(({ caught }) => caught.by === 'hand check').length;
  return {
    coverage: { mistakes: mistakes.length, byHand, checks, assumed, proven },
    steps: steps.map((step) => stepJson(step, stand)),
    mistakes: mistakes.map(watchedJson),
    firstStart: FIRST_START.map(({ does, danger = null }, i) => {
      return { start: i + 1, does, danger };
    }),
  };
}

function stepJson(step: Step, stand: Stand): Json {
  const head = { step: step.number, does: step.does, up: step.up ?? null };
  switch (step.does) {
    case 'turn over':
      return head;
    case 'fit': {
      const checks = step.checks.map((check) => checkJson(check, stand));
      const oneWays = (step.oneWays ?? []).map(({ name }) => name);
      return { ...head, part: partJson(step.part), checks, oneWays };
    }
    case 'height':
      return { ...head, part: step.part.name, limit: { ...step.part.height } };
    case 'tighten': {
      const { still } = step;
      const turns = still
        ? { turn: gripJson(still.turn), right: feltFor(still.felt, stand) }
        : null;
      return { ...head, part: step.part.name, bolts: { ...step.bolts }, still: turns };
    }
    case 'clearance':
      return { ...head, of: step.pack.device };
    case 'band':
      return { ...head, of: step.band.device };
    case 'end play':
      return { ...head, of: step.endPlay.shaft };
    case 'preload':
      return { ...head, of: step.preload.bearings };
    case 'air check':
    case 'pawl check':
      return {
        ...head,
        of: step.device.name,
        check: step.check ? checkJson(step.check, stand) : null,
      };
    case 'fill':
      return { ...head, fluid: { ...step.fluid } };
  }
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

function watchedJson({ mistake, part, made, caught, until, open }: Watched): Json {
  return { ...mistakeJson(mistake), part, made, caught, until, open };
}

function mistakeJson(mistake: Mistake): { readonly [key: string]: Json } {
  return mistake.what === 'slip'
    ? { slip: `${mistake.part}: ${mistake.is}` }
    : { fault: faultText(mistake) };
}
