import { carriedBy, coasting, type State, stateOf, underPower, vehicleOf } from '../flow/index.ts';
import { compare, equal, opposite, type Rational, times, toText } from '../linear/index.ts';
import { type Motion, motionOf, type ConeQuestion } from '../motion/index.ts';
import { isSpan, isZero, judge, type Quantity, stretched } from '../reckon/index.ts';
import { gearsOf, type Train } from '../train/index.ts';
import type { DeviceMargin, GearMargin, Load, SideMargin } from './answer.ts';
import { Balances } from './balances.ts';
import { Carrying } from './carrying.ts';
import { type Limit, Pressure, type Strength } from './limit.ts';
import { inHalves } from './piece.ts';

/** A gear by name, and the friction devices that are applied in it. */
export interface AskedGear {
  readonly range: string;
  readonly gear: string;
  readonly on: readonly string[];
}

/** What gears can pass, made ready once: each load is then answered in no time. */
export interface Margins {
  at(load: Load): GearMargin[];
  /** The same at many pressures, as a slider passes them: an answer for each, in their order. */
  over(pressuresKpa: readonly Rational[], engine: Omit<Load, 'pressureKpa'>): GearMargin[][];
}

/**
 * Makes gears of a train ready to be asked what they can pass. Every answer is proved. Throws where
 * a limit or a gear is of a device that the train does not have.
 */
export function marginsOf(
  train: Train,
  limits: readonly Limit[],
  gears: readonly AskedGear[] = gearsOf(train),
): Margins {
  const known = new Map(limits.map((limit) => [limit.device, limit]));
  for (const name of known.keys()) {
    if (train.devices.some((device) => device.name === name)) continue;
    throw new RangeError(`no device is called ${name}`);
  }
  const motion = motionOf(train);
  const balances = new Balances(motion);
  const vehicle = vehicleOf(train);
  const ready = gears.map((gear) => {
    const [coast, inReverse] = vehicle.ways(gear.on).map((way) => {
      return sideOf(motion, coasting(train, gear.on, way), known, balances);
    }) as [Side, Side?];
    const drive = sideOf(motion, underPower(train, gear.on), known, balances);
    // Rolled back in a gear that drives nothing, there is more to say only where something holds.
    const more = inReverse && (inReverse.carrying || coast.carrying);
    return { gear, drive, coast, ...(more && { inReverse }) };
  });
  const at = ({ engineNm, stallRatio, pressureKpa }: Load): GearMargin[] => {
    const atStallNm = times(engineNm, stallRatio);
    const pressure = new Pressure(pressureKpa);
    return ready.map(({ gear, drive, coast, inReverse }) => ({
      ...gear,
      drive: sideAt(drive, atStallNm, pressure),
      coast: sideAt(coast, engineNm, pressure),
      ...(inReverse && { inReverse: sideAt(inReverse, engineNm, pressure) }),
    }));
  };
  return {
    at,
    over: (pressuresKpa, engine) => {
      const rising = pressuresKpa.map((kpa, k) => [kpa, k] as const);
      rising.sort(([a], [b]) => compare(a, b));
      const answers: GearMargin[][] = [];
      // Between two answers that agree nothing has to be solved.
      for (const place of inHalves(rising.length)) {
        const [pressureKpa, k] = rising[place] as (typeof rising)[number];
        answers[k] = at({ ...engine, pressureKpa });
      }
      return answers;
    },
  };
}

interface Side {
  readonly state: State;
  /** Absent where the train does not drive. */
  readonly carrying?: Carrying;
  /** Of those that carry something. */
  readonly shares: readonly Share[];
  /** What does not change with the pressure, by the torque for which it was asked. */
  readonly asked: Map<string, Asked>;
}

interface Share {
  readonly device: string;
  /** For one newton metre at the input. */
  readonly torque: Quantity;
  /** The way in which it is pushed; absent: nobody has said how strong it is. */
  readonly strength?: Strength;
}

interface Asked {
  readonly leastKpa: Rational | null;
  readonly mustNm: readonly Quantity[];
}

function sideOf(
  motion: Motion,
  question: ConeQuestion,
  limits: ReadonlyMap<string, Limit>,
  balances: Balances,
): Side {
  const ruling = judge(motion, question);
  const state = stateOf(ruling);
  const asked = new Map<string, Asked>();
  if (state !== 'driving') return { state, shares: [], asked };
  const { torques, observed } = carriedBy(ruling, state);
  // At the input it is a torque of size 1.
  const { input } = motion.train;
  const push = torques.given.get(input) ?? torques.reluctant;
  const shares = [...torques.devices].flatMap(([{ name: device }, torque]): Share[] => {
    if (isZero(torque)) return [];
    const limit = limits.get(device);
    const strength = limit && (pushesClockwise(torque) ? limit.clockwise : limit.anticlockwise);
    return [{ device, torque, ...(strength && { strength }) }];
  });
  const carrying = new Carrying(
    ruling,
    observed.slips,
    pushesClockwise(push) ? 1 : -1,
    limits,
    balances,
  );
  return { state, carrying, shares, asked };
}

function sideAt(
  { state, carrying, shares, asked }: Side,
  askedNm: Rational,
  pressure: Pressure,
): SideMargin {
  if (!carrying) {
    return { state, askedNm, mostNm: null, letsGo: [], leastKpa: null, devices: [] };
  }
  const { torqueNm, letsGo } = carrying.most(pressure);
  const key = toText(askedNm);
  let before = asked.get(key);
  if (!before) {
    const mustNm = shares.map(({ torque }) => stretched(torque, askedNm));
    asked.set(key, (before = { leastKpa: carrying.leastPressure(askedNm), mustNm }));
  }
  const { leastKpa, mustNm } = before;
  const devices = shares.map(({ device, strength }, k): DeviceMargin => {
    return {
      device,
      mustNm: mustNm[k] as Quantity,
      canNm: strength ? pressure.of(strength) : null,
    };
  });
  // The certificate names what bars more torque; what stands at its limit beside that, each
  // with a settled share of the same load, slips with it.
  const going = shares.filter(({ device, torque }, k) => {
    if (letsGo.includes(device)) return true;
    const can = devices[k]?.canNm;
    if (carrying.alone || isSpan(torque) || !can || !torqueNm) return false;
    return equal(times(torque.num < 0 ? opposite(torque) : torque, torqueNm), can);
  });
  const all = going.map(({ device }) => device);
  return { state, askedNm, mostNm: torqueNm, letsGo: all, leastKpa, devices };
}

// By its greater end, where a range reaches to both sides.
function pushesClockwise(torque: Quantity): boolean {
  if (!isSpan(torque)) return torque.num > 0;
  const { from, to } = torque;
  if (!from || !to) return from !== null;
  return compare(to, opposite(from)) >= 0;
}
