import type { Device } from '../train/index.ts';
import type { Outcome } from './outcome.ts';
import { type Road, type Run, sameRun, type Side } from './road.ts';
import { over, type Way, type Weakness } from './way.ts';

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
  if (beyond <= 1 || !released) return firm(run, road.run([], driven.on, side), side);
  // Far beyond what it holds nobody calls it slipping any more.
  const slips = beyond < 2 ? 0.96 : beyond < 5 ? 0.75 : 0.4;
  const mostly = side === 'coast' ? slips - 0.3 : slips;
  return [
    [{ word: 'slips' }, mostly],
    [plainly(released, side), 1 - mostly],
  ];
}

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
  const load = LOADS[driven.load ?? 'ordinary'] * (side === 'coast' ? COASTING : 1);
  if (way.weak.length === 0) return { beyond };
  const torques = road.torques(way.faults, on, side);
  for (const weakness of way.weak) {
    const felt = load * (driven.heat === 'cold' ? weakness.cold : 1);
    for (const { device, strength, asked } of askedBy(road, weakness, on, torques)) {
      const far = (felt * asked) / (back ? weakness.back : 1) / strength;
      if (far <= Math.max(beyond, 0)) continue;
      const without = road.without(device, way.faults, on, side);
      if (sameRun(without, run)) continue; // something else covers it
      beyond = far;
      released = without;
    }
  }
  return { beyond, ...(released && { released }) };
}

interface Asked {
  readonly device: Device;
  readonly strength: number;
  /** Of what the gear that asks most of it asks. */
  readonly asked: number;
}

// The devices that a weakness is about, and what this gear asks of them.
function askedBy(
  road: Road,
  weakness: Weakness,
  on: readonly string[],
  torques: ReadonlyMap<string, number>,
): Asked[] {
  const { device: weak, strength, starves } = weakness;
  return road.train.devices.flatMap((device): Asked[] => {
    const torque = torques.get(device.name) ?? 0;
    if (torque === 0) return [];
    if (device.name === weak) return [{ device, strength, asked: over(torque, weakness.grip) }];
    // A one-way clutch needs no pressure.
    if (device.kind === 'one-way') return [];
    const share = () => Math.abs(torque) / mostCarried(road, device.name);
    if (weak === undefined) return [{ device, strength, asked: share() }];
    const starved = starves !== undefined && on.includes(weak);
    return starved ? [{ device, strength: starves, asked: share() }] : [];
  });
}

function mostCarried(road: Road, device: string): number {
  const torques = road.train.ranges.flatMap(({ gears }) =>
    gears.map(({ on }) => Math.abs(road.torques([], on, 'under power').get(device) ?? 0)),
  );
  return Math.max(...torques) || 1;
}

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

// Parts of full load; common practice, no source. The foot off, the engine drags with less.
const LOADS = { light: 0.3, ordinary: 0.5, heavy: 1 };
const COASTING = 0.3;
