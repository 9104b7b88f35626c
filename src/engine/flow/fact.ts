import type { Rational } from '../linear/index.ts';
import type { Quantity } from '../reckon/index.ts';
import type { DeviceKind, End, MemberName, Way } from '../train/index.ts';
import type { Course } from './vehicle.ts';

/**
 * One reason, read off a certificate; a sentence in every language. Torques are sizes (not
 * negative) per unit of torque at the input, or at the turned end where nothing turns; a
 * member is named as its body's label.
 */
export type Fact =
  /** The end that is turned, and which end it is. */
  | { readonly fact: 'turned'; readonly member: MemberName; readonly end: End; readonly way: Way }
  /** One of several speeds that are given. */
  | { readonly fact: 'given'; readonly member: MemberName; readonly speed: Rational }
  /** A friction device or a one-way clutch carries the load from one member to the next. */
  | {
      readonly fact: 'carries';
      readonly device: string;
      readonly kind: DeviceKind;
      readonly from: MemberName;
      readonly to: MemberName;
      readonly pushed: Way; // the way in which `to` is pushed
      readonly torque: Quantity;
    }
  /** What the load does in a planetary set: each loaded member is in one of the lists. */
  | { readonly fact: 'works'; readonly set: string; readonly ports: readonly LoadedPort[] }
  /** A gear pair hands the load from a member to the next. */
  | {
      readonly fact: 'meshes';
      readonly pair: string;
      readonly from: MemberName;
      readonly to: MemberName;
      readonly pushed: Way;
      readonly torque: Quantity;
    }
  /** A set all of whose loaded members turn as one: nothing moves on its pins. */
  | { readonly fact: 'as one'; readonly set: string; readonly ports: readonly LoadedPort[] }
  /** A brake, band or one-way clutch hands the reaction of `member` to the case. */
  | {
      readonly fact: 'holds';
      readonly device: string;
      readonly kind: DeviceKind;
      readonly member: MemberName;
      readonly pushed: Way; // the way in which `member` is pushed onto the device
      readonly torque: Quantity;
    }
  /** A member made one with the case takes a reaction. */
  | {
      readonly fact: 'fixed';
      readonly member: MemberName;
      readonly pushed: Way;
      readonly torque: Quantity;
    }
  /** Several devices share one reaction: each alone may carry any part of the torque. */
  | { readonly fact: 'shares'; readonly devices: readonly string[] }
  /** Sets or gear pairs side by side: nothing settles what each carries, nor which way it pushes. */
  | { readonly fact: 'sets share'; readonly sets: readonly string[] }
  | { readonly fact: 'over-runs'; readonly device: string; readonly slip: Quantity }
  /** On, but carrying nothing; because `overRunning` does not hold its member, if that is why. */
  | { readonly fact: 'idle'; readonly device: string; readonly overRunning?: string }
  /** How the other end turns, for one turn of the turned end. */
  | {
      readonly fact: 'result';
      readonly member: MemberName;
      readonly end: End;
      readonly speed: Rational;
    }
  /** Several outputs turn at one speed, and the load is shared. */
  | {
      readonly fact: 'outputs';
      readonly shares: readonly { readonly member: MemberName; readonly torque: Quantity }[];
    }
  | { readonly fact: 'neutral'; readonly member: MemberName; readonly end: End }
  /** `rolled`: it is the load that would turn it, as on a hill, and so where the vehicle would go. */
  | {
      readonly fact: 'tied up';
      readonly member: MemberName;
      readonly end: End;
      readonly way: Way;
      readonly rolled?: Course;
    }
  /** Speeds that nothing settles. */
  | { readonly fact: 'free'; readonly members: readonly MemberName[] }
  | { readonly fact: 'recirculates'; readonly power: Rational; readonly sets: readonly string[] }
  /** Torque in a circle within what turns as one: no power, yet more than comes in. */
  | {
      readonly fact: 'goes round';
      readonly sets: readonly string[];
      readonly devices: readonly string[];
    }
  | {
      readonly fact: 'engine braking';
      readonly there: boolean;
      readonly overRunning: readonly string[];
    }
  | { readonly fact: 'rolls'; readonly toward: Course; readonly held: MemberName | null }
  /** A hand check: what is held and turned. */
  | {
      readonly fact: 'checked';
      readonly held: readonly MemberName[];
      readonly turned: MemberName;
      readonly way: Way;
      readonly turns: boolean;
    }
  | { readonly fact: 'moves'; readonly member: MemberName; readonly speed: Rational }
  /** The hand that holds a member takes its reaction. */
  | {
      readonly fact: 'held by hand';
      readonly member: MemberName;
      readonly pushed: Way;
      readonly torque: Rational;
    };

/** A member of a set as its load finds it. */
export interface LoadedPort {
  /** The part of the set, and the label of the body that it is on. */
  readonly member: MemberName;
  readonly label: MemberName;
  /** It drives the set, is driven by it, or stands still and takes a reaction. */
  readonly role: 'drives' | 'driven' | 'reacts';
  /** The way in which the set pushes it. */
  readonly pushed: Way;
  readonly torque: Quantity;
}
