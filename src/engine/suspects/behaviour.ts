import type { Outcome } from './outcome.ts';
import { type Road, type Run, sameRun, type Side, SOUND, type Torque } from './road.ts';
import type { Way, Weakness } from './way.ts';
import { over } from './weakness.ts';

/** A gear, and how it is driven. */
export interface Driven {
  readonly gear: string;
  readonly on: readonly string[];
  readonly load?: 'light' | 'heavy';
  readonly heat?: 'cold' | 'hot';
}

/** What may be seen, and the chance of each; together 1. */
export type Shown = readonly (readonly [outcome: Outcome, chance: number])[];

/**
 * What a gear does in one of the ways in which a cause may be so: as its train does, and where
 * something weak carries load, by how far the load is beyond it. Only the verdicts are exact;
 * how much load a driver means is common practice, no source.
 */
export function behaviour(road: Road, way: Way, driven: Driven, side: Side): Shown {
  const on = way.instead?.get(driven.gear) ?? driven.on;
  const run = road.run(way.faults, on, side);
  const { beyond, released } = overload(road, way, driven, on, side, run);
  const goes = chanceToSlip(beyond);
  if (goes === 0 || !released) return firm(run, road.run(SOUND, driven.on, side), side);
  // Far beyond what it holds nobody calls it slipping any more.
  const slips = beyond < 2 ? 0.96 : beyond < 5 ? 0.75 : 0.4;
  const mostly = side === 'coast' ? slips - 0.3 : slips;
  return [
    [{ word: 'slips' }, goes * mostly],
    [plainly(released, side), goes * (1 - mostly)],
    ...(goes < 1 ? [[plainly(run, side), 1 - goes] as const] : []),
  ];
}

// No two people pull alike: near what it holds it slips or not.
function chanceToSlip(beyond: number): number {
  if (beyond <= 0) return 0;
  return Math.min(1, Math.max(0, 0.5 + Math.log(beyond) / (2 * Math.log(NEAR))));
}

const NEAR = 1.05;

/** How far the load is beyond what is weak; above 1 it slips. And what the train does released. */
export function overload(
  road: Road,
  way: Way,
  driven: Driven,
  on: readonly string[],
  side: Side,
  run: Run,
): { readonly beyond: number; readonly released?: Run } {
  let beyond = 0;
  let released: Run | undefined;
  if (run.state !== 'driving') return { beyond };
  const back = road.goesBack(on);
  const load = LOADS[side][driven.load ?? 'ordinary'];
  if (way.weak.length === 0) return { beyond };
  const torques = road.torques(way.faults, on, side);
  for (const weakness of way.weak) {
    const felt = (load * (driven.heat === 'cold' ? weakness.cold : 1)) / (back ? weakness.back : 1);
    for (const { far, without } of felts(road, way, weakness, { on, side, felt, torques })) {
      if (far <= beyond) continue;
      const its = without();
      if (sameRun(its, run)) continue; // something else covers it
      beyond = far;
      released = its;
    }
  }
  return { beyond, ...(released && { released }) };
}

interface Felt {
  readonly on: readonly string[];
  readonly side: Side;
  /** The load, as a part of full load. */
  readonly felt: number;
  readonly torques: ReadonlyMap<string, Torque>;
}

interface Weak {
  /** Above 1 the load is beyond it. */
  readonly far: number;
  /** What the train does released. */
  readonly without: () => Run;
}

// What is weak in a gear: the device; and the others together, where all want pressure.
function felts(
  road: Road,
  { faults }: Way,
  { device: name, strength, grip, starves }: Weakness,
  { on, side, felt, torques }: Felt,
): Weak[] {
  const found: Weak[] = [];
  const device = road.train.devices.find((its) => its.name === name);
  const torque = device && torques.get(device.name)?.least;
  if (device && torque) {
    const far = (felt * over(torque, grip)) / strength;
    found.push({ far, without: () => road.without(device, faults, on, side) });
  }
  const all = name === undefined ? strength : on.includes(name) ? starves : undefined;
  if (all !== undefined) {
    // A one-way clutch needs no pressure.
    const far = (felt * road.share(faults, on, side)) / all;
    found.push({ far, without: () => road.run(faults, NOTHING_ON, side) });
  }
  return found;
}

const NOTHING_ON: readonly string[] = [];

// What nothing weak is in: as the train does. A gear that is lost is now and then called one
// that slips, for the engine runs up.
function firm(run: Run, whole: Run, side: Side): Shown {
  const shown = plainly(run, side);
  if (side === 'coast' || sameRun(run, whole) || run.state === 'tied up') return [[shown, 1]];
  if (whole.state !== 'driving') return [[shown, 1]];
  return [
    [shown, 1 - CALLED_SLIP],
    [{ word: 'slips' }, CALLED_SLIP],
  ];
}

const CALLED_SLIP = 0.08;

export function plainly({ state, ratio }: Run, side: Side): Outcome {
  if (state === 'tied up') return { word: 'ties up' };
  const words =
    side === 'coast' ? (['brakes', 'runs free'] as const) : (['drives', 'no drive'] as const);
  return ratio ? { word: words[0], ratio } : { word: words[1] };
}

// Parts of full load; common practice, no source. The foot off, an engine drags with about a
// fifth of its full torque, whatever it pulled with before.
const LOADS = {
  'under power': { light: 0.3, ordinary: 0.5, heavy: 1 },
  coast: { light: 0.15, ordinary: 0.2, heavy: 0.25 },
};
