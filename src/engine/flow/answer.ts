import type { Rational } from '../linear/index.ts';
import type { Quantity } from '../reckon/index.ts';
import type { MemberName, Way } from '../train/index.ts';
import type { Fact } from './fact.ts';
import type { Course } from './vehicle.ts';

/**
 * How a train works with some devices applied. Speeds are in turns, clockwise positive as
 * seen from the input end; torques are clockwise positive too.
 */
export interface Flow extends Travel {
  readonly on: readonly string[];
  /** The input turned clockwise, the load as reluctant as can be. Speeds per input turn. */
  readonly drive: Working;
  /** How the output turns as the vehicle goes forward. */
  readonly forward: Way;
  /** The ratio under power before the final drive, where the file says which pairs that is. */
  readonly beforeFinal?: Rational;
  /** In reverse, where the gear drives nothing and that is otherwise than forward. */
  readonly inReverse?: Travel;
}

/** A gear as the vehicle travels: the way the healthy gear drives it, else forward. */
export interface Travel {
  readonly travels: Course;
  /** How the output turns then. */
  readonly output: Way;
  /** The output turned once the way the vehicle travels, the engine reluctant. */
  readonly coast: Coast;
  /** The output turned once against that, as on a hill. */
  readonly rollback: Rollback;
}

/** Speeds are for one turn of the output the way the vehicle travels. */
export interface Coast extends Working {
  readonly engineBraking: boolean;
}

export type State = 'driving' | 'neutral' | 'tied up';

/** One end drives, the other resists. Torques are per unit of torque at the input. */
export interface Working {
  readonly state: State;
  /** Input speed / output speed, negative where they turn opposite ways. Only when driving. */
  readonly ratio?: Rational;
  /** By member name, in the order of the file; the case is left out. Empty when tied up. */
  readonly speeds: ReadonlyMap<MemberName, Quantity>;
  /** One of the motions, to draw: what is free may turn otherwise. At rest when tied up. */
  readonly drawn: ReadonlyMap<MemberName, Rational>;
  /** Of every planet whose teeth are known, against its carrier. */
  readonly onPins: ReadonlyMap<MemberName, Quantity>;
  /** What each end puts on the train: `input`, `output`, `case`, or a member that is given. */
  readonly torques: ReadonlyMap<string, Quantity>;
  /** What the load puts on each output; together they are the torque of `output`. */
  readonly outputs: ReadonlyMap<MemberName, Quantity>;
  readonly devices: ReadonlyMap<string, DeviceWork>;
  /** What each mesh puts on its two wheels. */
  readonly meshes: readonly MeshWork[];
  /** What each set or gear pair puts on each of its members, but for planets. */
  readonly branches: readonly Branch[];
  /** Power that goes round in a circle, per unit of input power; 0 if none does. */
  readonly recirculating: Rational;
  /** The sets and gear pairs through which it does. */
  readonly circling: readonly string[];
  /** Output power / input power with mesh losses; absent where torques are not settled. */
  readonly efficiency?: Efficiency;
  /** The reasons, in the order in which the load travels. */
  readonly facts: readonly Fact[];
}

/** 'self-locking': with these losses no torque at the driving end turns the train. */
export type Efficiency =
  | { readonly state: 'runs'; readonly value: Rational }
  | { readonly state: 'self-locking'; readonly value?: Rational };

export type DeviceState = 'applied' | 'released' | 'holding' | 'over-running' | 'free';

export interface DeviceWork {
  /** Friction devices are applied or released; one-way clutches the rest. */
  readonly state: DeviceState;
  /** First member's speed less the second's; a range where it is not settled. */
  readonly slip: Quantity;
  /** What the device puts on its first-named member; a range where a reaction is shared. */
  readonly torque: Quantity;
}

export interface MeshWork {
  readonly within: string;
  readonly a: MemberName;
  readonly b: MemberName;
  readonly onA: Quantity;
  readonly onB: Quantity;
}

export interface Branch {
  readonly within: string;
  readonly member: MemberName;
  /** What the set puts on the member. */
  readonly torque: Quantity;
  /** The power that the member brings into the set, per unit of input power. */
  readonly power: Quantity;
}

/** Does the train roll back? With the input free, and with it held (parked in gear). */
export interface Rollback {
  readonly inputFree: RollbackCase;
  readonly inputHeld: RollbackCase;
}

export interface RollbackCase {
  readonly rolls: boolean;
  /** For the turn of the output that is asked; empty where it does not roll. */
  readonly speeds: ReadonlyMap<MemberName, Quantity>;
  /** One of the motions, to draw; at rest where it does not roll. */
  readonly drawn: ReadonlyMap<MemberName, Rational>;
  /** What each device does; its torque is per unit of what turns the output. */
  readonly devices: ReadonlyMap<string, DeviceWork>;
  /** The devices that hold it, where it does not. */
  readonly heldBy: readonly string[];
  readonly facts: readonly Fact[];
}
