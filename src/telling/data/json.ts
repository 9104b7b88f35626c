import type { Chart } from '../../engine/chart/index.ts';
import {
  type Flow,
  isSpan,
  type Quantity,
  type RollbackCase,
  type Travel,
  type Working,
} from '../../engine/flow/index.ts';
import type { HandAnswer } from '../../engine/hand/index.ts';
import { type Rational, toNumber, toText } from '../../engine/linear/index.ts';
import type { Stand } from '../../asking/request/index.ts';
import { sentences, type Voice } from '../narrative/index.ts';

/**
 * What `--json` prints. An exact number is { exact: "p/q" or "p", value: its float }; one that
 * nothing settles is { from, to } as floats, null for "no limit", with `fromExact` and
 * `toExact` where there is a limit.
 */
export type Json =
  | null
  | boolean
  | number
  | string
  | readonly Json[]
  | { readonly [key: string]: Json };

/**
 * A gear under power, on coast and rolled back: as it travels, and `inReverse` where it drives
 * nothing and that is otherwise. Speeds on coast are for one turn of the output the way it travels.
 * `forward` is the way of the output as the vehicle goes forward. `why` is in `language` and for the
 * reader's `stand`; numbers are plus clockwise, seen from the input end, for everyone.
 */
export function flowJson(
  flow: Flow,
  voice: Voice,
  stand?: Stand,
): { readonly [key: string]: Json } {
  return {
    on: flow.on,
    forward: flow.forward,
    ...(flow.beforeFinal && { beforeFinalDrive: numberJson(flow.beforeFinal) }),
    drive: workingJson(flow.drive, voice, stand),
    ...travelJson(flow, voice, stand),
    ...(flow.inReverse && { inReverse: travelJson(flow.inReverse, voice, stand) }),
  };
}

function travelJson(
  { travels, coast, rollback: { inputFree, inputHeld } }: Travel,
  voice: Voice,
  stand?: Stand,
): { readonly [key: string]: Json } {
  return {
    travels,
    coast: { ...workingJson(coast, voice, stand), engineBraking: coast.engineBraking },
    rollback: {
      inputFree: rollbackJson(inputFree, voice, stand),
      inputHeld: rollbackJson(inputHeld, voice, stand),
    },
  };
}

/** Every gear that the ranges name, each in the form of one gear with its names. */
export function gearsJson(
  gears: readonly { readonly range: string; readonly gear: string; readonly flow: Flow }[],
  voice: Voice,
  stand?: Stand,
): Json {
  return {
    gears: gears.map(({ range, gear, flow }) => ({
      range,
      gear,
      ...flowJson(flow, voice, stand),
    })),
  };
}

/** A train at speeds that are given, per the unit in which they are given. */
export function flowAtJson(
  on: readonly string[],
  given: ReadonlyMap<string, Rational>,
  working: Working,
  voice: Voice,
  stand?: Stand,
): Json {
  return { on, given: mapJson(given, numberJson), drive: workingJson(working, voice, stand) };
}

/**
 * Every combination, in the chart's order; a shift's `from`, `to`, `bothAt` and `neitherAt` are places
 * in `gears`.
 */
export function chartJson(chart: Chart): Json {
  return {
    devices: chart.devices,
    forward: chart.forward,
    gears: chart.gears.map((gear) => ({
      on: gear.on,
      drive: gear.drive,
      ...(gear.ratio && { ratio: numberJson(gear.ratio) }),
      ...(gear.beforeFinal && { beforeFinalDrive: numberJson(gear.beforeFinal) }),
      coast: gear.coast,
      ...(gear.inReverse && { inReverse: gear.inReverse }),
      named: gear.named.map(({ range, gear: name }) => `${range} ${name}`),
    })),
    steps: chart.shifts.map(({ both, neither, ...shift }) => ({
      ...shift,
      ...(both !== undefined && { both: chart.gears[both]?.drive ?? null, bothAt: both }),
      ...(neither !== undefined && {
        neither: chart.gears[neither]?.drive ?? null,
        neitherAt: neither,
      }),
    })),
  };
}

export function handJson(answer: HandAnswer, voice: Voice, stand?: Stand): Json {
  const why = sentences(answer.facts, voice, stand).join(' ');
  return answer.turns
    ? { turns: true, moves: mapJson(answer.moves, quantityJson), why }
    : { turns: false, because: { torques: mapJson(answer.torques, quantityJson) }, why };
}

function workingJson(
  working: Working,
  voice: Voice,
  stand?: Stand,
): { readonly [key: string]: Json } {
  const { ratio, efficiency } = working;
  return {
    state: working.state,
    ...(ratio && { ratio: numberJson(ratio) }),
    speeds: mapJson(working.speeds, quantityJson),
    onPins: mapJson(working.onPins, quantityJson),
    torques: mapJson(working.torques, quantityJson),
    ...(working.outputs.size > 1 && { outputs: mapJson(working.outputs, quantityJson) }),
    devices: mapJson(working.devices, ({ state, slip, torque }) => {
      return { state, slip: quantityJson(slip), torque: quantityJson(torque) };
    }),
    meshes: working.meshes.map(({ within, a, b, onA, onB }) => {
      return { within, a, b, onA: quantityJson(onA), onB: quantityJson(onB) };
    }),
    branches: working.branches.map(({ within, member, torque, power }) => {
      return { within, member, torque: quantityJson(torque), power: quantityJson(power) };
    }),
    recirculating: numberJson(working.recirculating),
    ...(efficiency && {
      efficiency: {
        state: efficiency.state,
        ...(efficiency.value && numberJson(efficiency.value)),
      },
    }),
    why: sentences(working.facts, voice, stand).join(' '),
  };
}

function rollbackJson(rollback: RollbackCase, voice: Voice, stand?: Stand): Json {
  return {
    rolls: rollback.rolls,
    speeds: mapJson(rollback.speeds, quantityJson),
    heldBy: rollback.heldBy,
    why: sentences(rollback.facts, voice, stand).join(' '),
  };
}

export function quantityJson(quantity: Quantity): { readonly [key: string]: Json } {
  if (!isSpan(quantity)) return numberJson(quantity);
  const { from, to } = quantity;
  return {
    from: from && toNumber(from),
    to: to && toNumber(to),
    ...(from && { fromExact: toText(from) }),
    ...(to && { toExact: toText(to) }),
  };
}

export function numberJson(value: Rational): { readonly exact: string; readonly value: number } {
  return { exact: toText(value), value: toNumber(value) };
}

export function mapJson<T>(
  map: ReadonlyMap<string, T>,
  json: (value: T) => Json,
): { readonly [key: string]: Json } {
  return Object.fromEntries([...map].map(([name, value]) => [name, json(value)]));
}
