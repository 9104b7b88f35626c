import type { Controls, OilFault } from '../hydraulics/index.ts';
import type { BandSetting } from './band.ts';
import type { Car } from './car.ts';
import type { GearSet } from './gearset.ts';
import type { Capacity, Engine } from './capacity.ts';
import type { EndPlay } from './endplay.ts';
import type { Pack } from './pack.ts';
import type { Join, MemberName, Way, Wheel } from './member.ts';
import type { NamesIn } from './namesin.ts';
import type { Fluid, Part } from './part.ts';
import type { Preload } from './preload.ts';
import type { WearCheck } from './wear.ts';

/**
 * A gear train as a person describes it. Everything is named: a member is named by a set and
 * its part ("front.sun"), by a join or a device ("sun shell"), or is `case`, which never turns.
 * Plain read-only data: a fault or an edit makes a new train.
 */
export interface Train {
  readonly name: string;
  /** A paragraph for the reader; may be empty. */
  readonly about: string;
  readonly input: MemberName;
  readonly output: MemberName;
  /** Further outputs: a differential's other half shaft, the other wheels. See `outputsOf`. */
  readonly others?: readonly MemberName[];
  /** The gear pairs behind the gears, by name; absent: nobody said which they are. */
  readonly finalDrive?: readonly string[];
  /** What the ends of the unit are called, the input end first; absent: input and output end. */
  readonly ends?: readonly [input: string, output: string];
  /** How the output turns as the vehicle goes forward; absent: as most gears that drive turn it. */
  readonly forward?: Way;
  readonly sets: readonly GearSet[];
  readonly pairs: readonly GearPair[];
  readonly joins: readonly Join[];
  readonly devices: readonly Device[];
  readonly ranges: readonly Range[];
  /** What tells the devices to apply; absent: not described. */
  readonly controls?: Controls;
  /** The parts in the order in which they come off; absent: not described. */
  readonly teardown?: readonly Part[];
  /** The plates of clutches and brakes; absent: not described. */
  readonly packs?: readonly Pack[];
  /** The end play of each shaft; absent: not described. */
  readonly endPlays?: readonly EndPlay[];
  /** How the clearance of each band is set; absent: not described. */
  readonly bands?: readonly BandSetting[];
  /** Bearings that are squeezed on purpose; absent: not described. */
  readonly preloads?: readonly Preload[];
  /** What wears and is measured; absent: not described. */
  readonly wear?: readonly WearCheck[];
  /** How much devices can carry; absent: not described. */
  readonly capacities?: readonly Capacity[];
  readonly engine?: Engine;
  /** Tyre and final drive; absent: not described. */
  readonly car?: Car;
  readonly fluid?: Fluid;
  /** Set by faults: what is wrong upstream of the devices; `ranges` says what that comes to. */
  readonly oilFaults?: readonly OilFault[];
  /** What things are called in other languages than the file's; absent: in none. */
  readonly languages?: Readonly<Record<string, NamesIn>>;
  /** Set by faults: the train before anything was wrong with it. Absent: it is in order. */
  readonly healthy?: Train;
}

/** Two wheels on fixed axes. External wheels turn opposite ways, internal and chain the same. */
export interface GearPair {
  readonly name: string;
  readonly driver: Wheel;
  readonly driven: Wheel;
  readonly kind: 'external' | 'internal' | 'chain';
  readonly stripped?: boolean;
}

export type Device = FrictionDevice | Pawl | OneWayClutch;

/** A clutch joins two members; a brake or a band holds one (then `second` is the case). */
export interface FrictionDevice extends Connection {
  readonly kind: 'clutch' | 'brake' | 'band';
}

/** A park pawl: a tooth of the case that holds `first`. The selector moves it, no oil. */
export interface Pawl extends Connection {
  readonly kind: 'pawl';
}

/** `first` is the inner member; it may turn `lets`-wise against `second`, the outer. */
export interface OneWayClutch extends Connection {
  readonly kind: 'one-way';
  readonly lets: Way;
}

export interface Connection {
  readonly name: string;
  readonly first: MemberName;
  readonly second: MemberName;
  /**
   * Set by faults: `open` never holds, `locked` always does, `slipping` holds up to some load, and
   * is asked about above it. Absent: sound.
   */
  readonly stuck?: 'open' | 'slipping' | 'locked';
}

/** A position of the selector, and the gears that it goes through. */
export interface Range {
  readonly name: string;
  readonly gears: readonly Gear[];
}

/** The devices that are applied in a gear. */
export interface Gear {
  readonly name: string;
  readonly on: readonly string[];
  /** Set by faults: those of them that oil pushes on with less than it should. */
  readonly weak?: readonly string[];
}

export type DeviceKind = Device['kind'];

const APPLIED_BY = {
  clutch: 'oil',
  brake: 'oil',
  band: 'oil',
  pawl: 'the selector',
  'one-way': 'its load',
} as const satisfies Record<DeviceKind, string>;
export const DEVICE_KINDS = Object.keys(APPLIED_BY) as readonly DeviceKind[];

/** Whether oil applies it, and it could slip. */
export function isFriction(device: Device): device is FrictionDevice {
  return APPLIED_BY[device.kind] === 'oil';
}

/** Whether it is applied and released; a one-way clutch is moved by its load alone. */
export function isApplied(device: Device): device is FrictionDevice | Pawl {
  return APPLIED_BY[device.kind] !== 'its load';
}
