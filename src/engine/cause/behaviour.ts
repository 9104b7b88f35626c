import type { Fault } from '../faults/index.ts';
import type { TestOutcome } from '../sight/index.ts';
import { type Road, type Run, sameRun, type Side, SOUND, type Torque } from './road.ts';
import { faultsIn, type Manner, type Weakness } from './manner.ts';
import { over } from './weakness.ts';

/** A gear, and how it is driven. */
export interface Driven {
  readonly gear: string;
  readonly on: readonly string[];
  readonly load?: 'light' | 'heavy';
  readonly heat?: 'cold' | 'hot';
}

/** What may be seen, and the chance of each; together 1. */
export type Shown = readonly (readonly [outcome: TestOutcome, chance: number])[];

/** A gear as it is driven, in one of the manners after another in which a cause may be so. */
export class Behaviour {
  private readonly road: Road;
  private readonly driven: Driven;
  private readonly side: Side;
  private readonly load: number;
  private readonly gears = new Map<readonly string[], Map<readonly Fault[], FaultyGear>>();
  // Ways that follow one another mostly differ in strength alone, and what carries nothing needs none.
  private before:
    | { readonly manner: Manner; readonly gear: FaultyGear; readonly idle: boolean }
    | undefined;

  constructor(road: Road, driven: Driven, side: Side) {
    this.road = road;
    this.driven = driven;
    this.side = side;
    this.load = LOADS[side][driven.load ?? 'ordinary'];
  }

  /**
   * What it does: as its train does, and where something weak carries load, by how far the load is
   * beyond it. Only the answers are exact; how much load a driver means is common practice, no
   * source. What is shown in another manner too is the same list.
   */
  shown(manner: Manner): Shown {
    const { gear, idle } = this.standing(manner);
    if (idle) return gear.firm;
    const { beyond, released } = this.overload(manner, gear);
    const goes = chanceToSlip(beyond);
    return released && goes > 0 ? gear.slipping(released, beyond, goes) : gear.firm;
  }

  /** Whether the load is beyond something weak. */
  slips(manner: Manner): boolean {
    const { gear, idle } = this.standing(manner);
    return !idle && this.overload(manner, gear).beyond > 1;
  }

  /** Whether what is weak carries something that nothing else would. */
  needs(manner: Manner): boolean {
    const gear = this.gearOf(manner);
    return manner.weak.some(({ device }) => {
      const load = device === undefined ? undefined : gear.loadOf(device);
      return load && load.torque.most !== 0 && load.released() !== undefined;
    });
  }

  private standing(manner: Manner): { readonly gear: FaultyGear; readonly idle: boolean } {
    if (this.before && sameButForStrength(this.before.manner, manner)) return this.before;
    const gear = this.gearOf(manner);
    const idle = gear.run.state !== 'driving' || manner.weak.every((its) => gear.spares(its));
    this.before = { manner, gear, idle };
    return this.before;
  }

  // How far the load is beyond what is weak: the device, and the others together where all want
  // pressure. What something else covers never slips. And what the train does released.
  private overload({ weak }: Manner, gear: FaultyGear): Overload {
    let beyond = 0;
    let released: Run | undefined;
    for (const { device, strength, cold, grip, back, starves } of weak) {
      const felt =
        (this.load * (this.driven.heat === 'cold' ? cold : 1)) / (gear.goesBack ? back : 1);
      const load = device === undefined ? undefined : gear.loadOf(device);
      if (load && load.torque.least !== 0) {
        const far = (felt * over(load.torque.least, grip)) / strength;
        const its = far > beyond ? load.released() : undefined;
        if (its) [beyond, released] = [far, its];
      }
      const all = device === undefined ? strength : gear.on.includes(device) ? starves : undefined;
      if (all !== undefined) {
        // A one-way clutch needs no pressure.
        const far = (felt * gear.share()) / all;
        const its = far > beyond ? gear.unpressed() : undefined;
        if (its) [beyond, released] = [far, its];
      }
    }
    return released ? { beyond, released } : NO_LOAD;
  }

  private gearOf(manner: Manner): FaultyGear {
    const on = manner.instead?.get(this.driven.gear) ?? this.driven.on;
    const faults = faultsIn(manner, this.driven.gear);
    let gears = this.gears.get(on);
    if (!gears) this.gears.set(on, (gears = new Map()));
    let gear = gears.get(faults);
    if (!gear) {
      const whole = this.road.run(SOUND, this.driven.on, this.side);
      gears.set(faults, (gear = new FaultyGear(this.road, faults, on, this.side, whole)));
    }
    return gear;
  }
}

interface Overload {
  readonly beyond: number;
  readonly released?: Run;
}

function sameButForStrength(a: Manner, b: Manner): boolean {
  if (a.faults !== b.faults || a.instead || b.instead) return false;
  const [one, other] = [a.weak[0], b.weak[0]];
  if (!one || !other || a.weak.length > 1 || b.weak.length > 1) return false;
  return (
    one.device === other.device && (one.starves === undefined) === (other.starves === undefined)
  );
}

const NO_LOAD: Overload = { beyond: 0 };

interface Load {
  readonly torque: Torque;
  /** What the train does with the device released; undefined where it does the same. */
  readonly released: () => Run | undefined;
}

// What is applied, with this or that wrong: what it does, and what each device has to do with it.
class FaultyGear {
  readonly on: readonly string[];
  readonly run: Run;
  readonly goesBack: boolean;
  readonly firm: Shown;
  private readonly road: Road;
  private readonly faults: readonly Fault[];
  private readonly side: Side;
  private readonly loads = new Map<string, Load | undefined>();
  private readonly slips = new Map<Run, Map<number, Shown>>();

  constructor(road: Road, faults: readonly Fault[], on: readonly string[], side: Side, whole: Run) {
    this.road = road;
    this.faults = faults;
    this.on = on;
    this.side = side;
    this.run = road.run(faults, on, side);
    this.goesBack = this.run.state === 'driving' && road.goesBack(on);
    this.firm = firm(this.run, whole, side);
  }

  /** Whether what is weak carries nothing, and takes nothing from others. */
  spares({ device, starves }: Weakness): boolean {
    if (device === undefined || (starves !== undefined && this.on.includes(device))) return false;
    return !this.loadOf(device)?.torque.least;
  }

  /** Of a device that carries something. */
  loadOf(name: string): Load | undefined {
    if (this.loads.has(name)) return this.loads.get(name);
    const { road, faults, on, side } = this;
    const device = road.train.devices.find((its) => its.name === name);
    const torque = device && road.torques(faults, on, side).get(name);
    const released = device && this.unlessCovered(() => road.without(device, faults, on, side));
    const load = torque && released && { torque, released };
    this.loads.set(name, load);
    return load;
  }

  share(): number {
    return this.road.share(this.faults, this.on, this.side);
  }

  /** What the train does where nothing has pressure; undefined where it does the same. */
  readonly unpressed = this.unlessCovered(() => {
    return this.road.run(this.faults, NOTHING_ON, this.side);
  });

  slipping(released: Run, beyond: number, goes: number): Shown {
    // Far beyond what it holds nobody calls it slipping any more.
    const slips = beyond < 2 ? 0.96 : beyond < 5 ? 0.75 : 0.4;
    const mostly = this.side === 'coast' ? slips - 0.3 : slips;
    let byChance = this.slips.get(released);
    if (!byChance) this.slips.set(released, (byChance = new Map()));
    const known = goes === 1 ? byChance.get(mostly) : undefined;
    if (known) return known;
    const shown: Shown = [
      [{ word: 'slips' }, goes * mostly],
      [plainly(released, this.side), goes * (1 - mostly)],
      ...(goes < 1 ? [[plainly(this.run, this.side), 1 - goes] as const] : []),
    ];
    if (goes === 1) byChance.set(mostly, shown);
    return shown;
  }

  private unlessCovered(run: () => Run): () => Run | undefined {
    let known: { readonly run: Run | undefined } | undefined;
    return () => {
      if (!known) {
        const its = run();
        known = { run: sameRun(its, this.run) ? undefined : its };
      }
      return known.run;
    };
  }
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

export function plainly({ state, ratio }: Run, side: Side): TestOutcome {
  if (state === 'tied up') return { word: 'ties up' };
  const words =
    side === 'coast' ? (['brakes', 'runs free'] as const) : (['drives', 'no drive'] as const);
  return ratio ? { word: words[0], ratio } : { word: words[1] };
}

// No two people pull alike: near what it holds it slips or not.
function chanceToSlip(beyond: number): number {
  if (beyond <= 0) return 0;
  return Math.min(1, Math.max(0, 0.5 + Math.log(beyond) / (2 * Math.log(NEAR))));
}

const NEAR = 1.05;

// Parts of full load; common practice, no source. The foot off, an engine drags with about a
// fifth of its full torque, whatever it pulled with before.
const LOADS = {
  'under power': { light: 0.3, ordinary: 0.5, heavy: 1 },
  coast: { light: 0.15, ordinary: 0.2, heavy: 0.25 },
};
