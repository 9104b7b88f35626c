import { flow, onTheOverRun, observe, stateOf, underPower, type Working } from '../flow/index.ts';
import { compare, opposite, type Rational, signOf, times } from '../linear/index.ts';
import { motionOf } from '../motion/index.ts';
import { isSpan, isZero, judge, type Quantity, stretched } from '../reckon/index.ts';
import type { Train } from '../train/index.ts';
import type { DeviceMargin, GearMargin, Load, SideMargin } from './answer.ts';
import { Carrying } from './carrying.ts';
import { type Limit, strengthNm } from './limit.ts';

/** A gear by name, and the friction devices that are applied in it. */
export interface AskedGear {
  readonly range: string;
  readonly gear: string;
  readonly on: readonly string[];
}

/** What gears can pass, made ready once: each load is then answered in no time. */
export interface Margins {
  at(load: Load): GearMargin[];
}

/** Makes gears of a train ready to be asked what they can pass. Every answer is proved. */
export function marginsOf(
  train: Train,
  limits: readonly Limit[],
  gears: readonly AskedGear[] = everyGear(train),
): Margins {
  const known = new Map(limits.map((limit) => [limit.device, limit]));
  const ready = gears.map((gear) => ({ gear, sides: sidesOf(train, gear.on, known) }));
  return {
    at: (load) =>
      ready.map(({ gear, sides: [drive, coast] }) => ({
        ...gear,
        drive: sideAt(drive, times(load.engineNm, load.stallRatio), load.pressureKpa, known),
        coast: sideAt(coast, load.engineNm, load.pressureKpa, known),
      })),
  };
}

function everyGear({ ranges }: Train): AskedGear[] {
  return ranges.flatMap(({ name, gears }) => {
    return gears.map((gear) => ({ range: name, gear: gear.name, on: gear.on }));
  });
}

interface Side {
  readonly working: Working;
  readonly carrying: Carrying | undefined;
  /** Least pressures by the torque for which they were asked. */
  readonly least: Map<string, Rational | null>;
}

function sidesOf(
  train: Train,
  on: readonly string[],
  limits: ReadonlyMap<string, Limit>,
): [Side, Side] {
  const motion = motionOf(train);
  const { drive, coast } = flow(train, on);
  const side = (working: Working, question: ReturnType<typeof underPower>): Side => {
    const least = new Map<string, Rational | null>();
    if (working.state !== 'driving') return { working, carrying: undefined, least };
    const verdict = judge(motion, question);
    const torque = working.torques.get('input') as Quantity;
    const way = !isSpan(torque) && signOf(torque) < 0 ? -1 : 1;
    const { slips } = observe(verdict);
    const carrying = new Carrying(stateOf(verdict), verdict, slips, way, limits);
    return { working, carrying, least };
  };
  return [side(drive, underPower(train, on)), side(coast, onTheOverRun(train, on))];
}

function sideAt(
  { working, carrying, least }: Side,
  askedNm: Rational,
  pressureKpa: Rational,
  limits: ReadonlyMap<string, Limit>,
): SideMargin {
  const { state } = working;
  if (!carrying) {
    return { state, askedNm, mostNm: null, letsGo: [], leastKpa: null, devices: [] };
  }
  const { torqueNm, letsGo } = carrying.most(pressureKpa);
  const key = `${askedNm.num}/${askedNm.den}`;
  const known = least.get(key);
  const leastKpa = known === undefined ? carrying.leastPressure(askedNm) : known;
  least.set(key, leastKpa);
  const devices = [...working.devices].flatMap(([device, { torque }]): DeviceMargin[] => {
    if (isZero(torque)) return [];
    const limit = limits.get(device);
    const mustNm = stretched(torque, askedNm);
    return [{ device, mustNm, canNm: limit ? canNm(limit, torque, pressureKpa) : null }];
  });
  return { state, askedNm, mostNm: torqueNm, letsGo, leastKpa, devices };
}

// The way of its greater end, where a range reaches to both sides.
function canNm({ clockwise, anticlockwise }: Limit, torque: Quantity, kpa: Rational): Rational {
  return strengthNm(pushesClockwise(torque) ? clockwise : anticlockwise, kpa);
}

function pushesClockwise(torque: Quantity): boolean {
  if (!isSpan(torque)) return torque.num > 0;
  const { from, to } = torque;
  if (!from || !to) return from !== null;
  return compare(to, opposite(from)) >= 0;
}
