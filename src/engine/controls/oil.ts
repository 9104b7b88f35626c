import {
  callsOf,
  circuitOf,
  type OilFault,
  type OilInGear,
  oilInRange,
  withOilFault,
  withoutCurrent,
} from '../hydraulics/index.ts';
import { appliedIn, isFriction, type Range, type Train } from '../train/index.ts';

/** The oil of a gear, and what it comes to for the train. */
export interface GearOil extends OilInGear {
  /** Devices that oil applies, in the train's order, those that it applies weakly too. */
  readonly on: readonly string[];
  readonly weak: readonly string[];
}

/** What may be wrong, and whether the controller gives any current at all. */
export interface OilState {
  /** Absent: what faults have set in the train. */
  readonly faults?: readonly OilFault[];
  readonly dead?: boolean;
}

/**
 * The oil in every gear of a train, a list a range, each gear come to from the one before it. Empty
 * where the train does not tell its controls.
 */
export function oilOf(
  train: Train,
  { faults = train.oilFaults ?? [], dead = false }: OilState = {},
): GearOil[][] {
  const { controls, ranges } = train;
  if (!controls) return [];
  return ranges.map(({ name, gears }) => {
    const calls = callsOf(
      controls,
      name,
      gears.map((gear) => gear.name),
    );
    const faulty = faults.reduce(withOilFault, { circuit: circuitOf(controls), calls });
    const asked = dead ? withoutCurrent(faulty) : faulty;
    return oilInRange(asked.circuit, asked.calls).map((gear) => {
      const pushed = (is: readonly string[]) => {
        const its = gear.servos.filter((servo) => is.includes(servo.is));
        const names = new Set(its.map(({ device }) => device));
        return train.devices.map((device) => device.name).filter((device) => names.has(device));
      };
      return { ...gear, on: pushed(['applied', 'weak']), weak: pushed(['weak']) };
    });
  });
}

/**
 * A train's ranges with the devices that oil applies in each gear. What oil does not move, a pawl or
 * a device without a chamber, is as the ranges have it.
 */
export function rangesByOil(train: Train, state?: OilState): readonly Range[] {
  const oil = oilOf(train, state);
  const moved = new Set(train.controls?.oil?.keys());
  return train.ranges.map((range, i) => {
    const gears = range.gears.map((gear, k) => {
      const its = oil[i]?.[k];
      if (!its) return gear;
      const kept = new Set(appliedIn(train, gear).filter((name) => !moved.has(name)));
      const on = train.devices
        .map(({ name }) => name)
        .filter((name) => its.on.includes(name) || kept.has(name));
      return { name: gear.name, on, ...(its.weak.length > 0 && { weak: its.weak }) };
    });
    return { ...range, gears };
  });
}

/** The gears that a file's controls ask for, where it has no ranges: applied by the oil alone. */
export function withRanges(train: Train): Train {
  const { controls, ranges, devices } = train;
  if (!controls || ranges.length > 0) return train;
  const names = new Set([...(controls.selector?.keys() ?? []), ...(controls.asks?.keys() ?? [])]);
  const bare = [...names].map((name) => {
    const gears = [...(controls.asks?.get(name)?.keys() ?? [])];
    return {
      name,
      gears: (gears.length > 0 ? gears : [name]).map((gear) => ({ name: gear, on: [] })),
    };
  });
  const pawls = devices.filter((device) => device.kind === 'pawl').map(({ name }) => name);
  // A pawl is the selector's, in park.
  const withPawls = bare.map((range) => {
    if (range.name !== PARK) return range;
    return { ...range, gears: range.gears.map((gear) => ({ ...gear, on: pawls })) };
  });
  const its = { ...train, ranges: withPawls };
  return { ...its, ranges: rangesByOil(its) };
}

const PARK = 'P';

/** Where the ranges of a file and its oil differ. */
export interface Difference {
  readonly range: string;
  readonly gear: string;
  readonly device: string;
  /** Whether the oil applies it, and the ranges do not; or the other way. */
  readonly byOil: boolean;
}

/** Every device that the ranges apply in a gear and the oil does not, or the other way round. */
export function differencesOf(train: Train): Difference[] {
  const byOil = rangesByOil(train);
  return train.ranges.flatMap(({ name: range, gears }, i) =>
    gears.flatMap((one, k) => {
      const { name: gear } = one;
      const on = appliedIn(train, one);
      const its = byOil[i]?.gears[k]?.on ?? on;
      return train.devices.filter(isFriction).flatMap(({ name: device }) => {
        const [said, does] = [on.includes(device), its.includes(device)];
        return said === does ? [] : [{ range, gear, device, byOil: does }];
      });
    }),
  );
}
