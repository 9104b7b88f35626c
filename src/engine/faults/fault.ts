import type { OilFault } from '../hydraulics/index.ts';
import type { MemberName } from '../train/index.ts';

/** One thing that is wrong with a train; an edit of the train makes it so. */
export type Fault =
  | { readonly what: 'device'; readonly device: string; readonly is: FrictionFault }
  | { readonly what: 'one-way'; readonly device: string; readonly is: OneWayFault }
  /** A join that has stripped: of one of its members (`of`), or of all where none is named. */
  | {
      readonly what: 'join';
      readonly join: MemberName;
      readonly is: 'stripped';
      readonly of?: MemberName;
    }
  /** A member that has come apart from every device that holds or turns it. */
  | { readonly what: 'member'; readonly member: MemberName; readonly is: 'parted' }
  /** A wheel that has lost its teeth, or a gear pair that has. */
  | { readonly what: 'wheel'; readonly member: MemberName; readonly is: 'stripped' }
  | { readonly what: 'pair'; readonly pair: string; readonly is: 'stripped' | 'left out' }
  | { readonly what: 'planet'; readonly member: MemberName; readonly is: 'seized' }
  /** A set not fitted: its members are there, but mesh with nothing. */
  | { readonly what: 'set'; readonly set: string; readonly is: 'left out' }
  /** A part of the teardown not fitted: all that it carries is not there. */
  | { readonly what: 'part'; readonly part: string; readonly is: 'left out' }
  /** Upstream of the devices: a solenoid, a valve, a line, a ball, an orifice. */
  | ({ readonly what: 'oil' } & OilFault);

/**
 * `slips` and `leaks`: it holds with a part of its strength, and lets the load run up above that;
 * as an edit of the train, above that.
 */
export type FrictionFault = 'will not apply' | 'will not release' | 'slips' | 'leaks' | 'left out';
/** What can be wrong with a one-way clutch. */
export type OneWayFault = 'slips' | 'seized' | 'backwards' | 'left out';

/** Whether it only holds less than it should, so that nothing shows below some load. */
export function isSlipping(fault: Fault): boolean {
  return fault.what === 'device' && (fault.is === 'slips' || fault.is === 'leaks');
}
