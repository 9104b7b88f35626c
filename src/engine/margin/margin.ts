import { observe, onTheOverRun, type State, stateOf, underPower } from '../flow/index.ts';
import {
  compare,
  equal,
  ONE,
  opposite,
  over,
  type Rational,
  times,
  toText,
} from '../linear/index.ts';
import { type Motion, motionOf, type Question } from '../motion/index.ts';
import {
  isSpan,
  isZero,
  judge,
  loadsOf,
  type Quantity,
  reactionsOf,
  stretched,
} from '../reckon/index.ts';
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
  const motion = motionOf(train);
  const ready = gears.map((gear) => ({
    gear,
    drive: sideOf(motion, underPower(train, gear.on), known),
    coast: sideOf(motion, onTheOverRun(train, gear.on), known),
  }));
  return {
    at: (load) =>
      ready.map(({ gear, drive, coast }) => ({
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
  readonly state: State;
  /** Absent where the train does not drive. */
  readonly carrying?: Carrying;
  /** For one newton metre at the input, by device; those that carry something. */
  readonly shares: ReadonlyMap<string, Quantity>;
  /** What does not change with the pressure, by the torque for which it was asked. */
  readonly asked: Map<string, Asked>;
}

interface Asked {
  readonly leastKpa: Rational | null;
  readonly mustNm: readonly Quantity[];
}

function sideOf(motion: Motion, question: Question, limits: ReadonlyMap<string, Limit>): Side {
  const verdict = judge(motion, question);
  const state = stateOf(verdict);
  const asked = new Map<string, Asked>();
  if (state !== 'driving') return { state, shares: new Map(), asked };
  const { slips } = observe(verdict);
  const { given, reluctant } = loadsOf(verdict);
  const input = question.reluctant === motion.train.input ? reluctant : (given[0] as Rational);
  const unit = over(ONE, input.num < 0 ? opposite(input) : input);
  const torques = reactionsOf(verdict, slips, []).devices;
  const shares = motion.devices.flatMap(({ device }, d): [string, Quantity][] => {
    const torque = torques[d] as Quantity;
    return isZero(torque) ? [] : [[device.name, stretched(torque, unit)]];
  });
  const carrying = new Carrying(verdict, slips, input.num < 0 ? -1 : 1, limits);
  return { state, carrying, shares: new Map(shares), asked };
}

function sideAt(
  { state, carrying, shares, asked }: Side,
  askedNm: Rational,
  pressureKpa: Rational,
  limits: ReadonlyMap<string, Limit>,
): SideMargin {
  if (!carrying) {
    return { state, askedNm, mostNm: null, letsGo: [], leastKpa: null, devices: [] };
  }
  const { torqueNm, letsGo } = carrying.most(pressureKpa);
  const key = toText(askedNm);
  const { leastKpa, mustNm } = asked.get(key) ?? {
    leastKpa: carrying.leastPressure(askedNm),
    mustNm: [...shares.values()].map((share) => stretched(share, askedNm)),
  };
  asked.set(key, { leastKpa, mustNm });
  const devices = [...shares].map(([device, share], k): DeviceMargin => {
    const limit = limits.get(device);
    const can = limit ? canNm(limit, share, pressureKpa) : null;
    return { device, mustNm: mustNm[k] as Quantity, canNm: can };
  });
  // The certificate names what bars more torque; what stands at its limit beside that, each
  // with a settled share of the same load, lets go with it.
  const going = [...shares].flatMap(([device, share], k) => {
    const can = devices[k]?.canNm;
    if (letsGo.includes(device)) return [device];
    if (isSpan(share) || !can || !torqueNm) return [];
    const carried = times(share.num < 0 ? opposite(share) : share, torqueNm);
    return equal(carried, can) ? [device] : [];
  });
  return { state, askedNm, mostNm: torqueNm, letsGo: going, leastKpa, devices };
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
