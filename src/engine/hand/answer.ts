import type { Rational } from '../linear/index.ts';
import type { Branch, DeviceWork, Fact, Quantity } from '../flow/index.ts';
import type { MemberName, Way } from '../train/index.ts';

/** Hold some members, turn one, with some friction devices applied (none is the bench's way). */
export interface HandCheck {
  readonly hold: readonly MemberName[];
  readonly turn: MemberName;
  readonly way: Way;
  readonly on: readonly string[];
}

/** What the hands find. Speeds are per turn of the turned member (so ±1 for it). */
export type HandAnswer = {
  /** What each device does. */
  readonly devices: ReadonlyMap<string, DeviceWork>;
} & (
  | {
      readonly turns: true;
      /** Every member but the case and the held; a range where it is free. */
      readonly moves: ReadonlyMap<MemberName, Quantity>;
      /** One of the motions, of every member, to draw: what is free may turn otherwise. */
      readonly drawn: ReadonlyMap<MemberName, Rational>;
      readonly facts: readonly Fact[];
    }
  | {
      readonly turns: false;
      /** Members that the lock does not reach: how far each is free while the turned one stands. */
      readonly loose: ReadonlyMap<MemberName, Quantity>;
      /**
       * What the turning hand, the holding hands (by member) and each device or mesh's held
       * reaction (by device) put on the train, per unit of the hand's torque.
       */
      readonly torques: ReadonlyMap<string, Quantity>;
      /** What each set or gear pair puts on each of its members, but for planets. */
      readonly branches: readonly Pick<Branch, 'within' | 'member' | 'torque'>[];
      readonly facts: readonly Fact[];
    }
);
