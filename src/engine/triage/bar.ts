import type { Observation } from '../suspects/index.ts';
import type { TestPlace } from './place.ts';

/** What may not be done now. */
export type Stopped = 'road test' | 'pulling hard' | 'stall test' | 'opening';

/** Why, and what was seen that says so. */
export type Bar =
  | {
      readonly why:
        | 'low pressure' // it burns whatever slips
        | 'high pressure'
        | 'bad fluid' // milky, or with metal in it
        | 'burnt fluid'
        | 'ties up' // wheels may lock
        | 'no drive' // nothing to drive with
        | 'drives in neutral'
        | 'end play' // it cuts itself
        | 'growls'
        | 'slips'; // pulling burns it
      readonly because: readonly Observation[];
    }
  /** A stall: nobody has surely read the pressure. */
  | { readonly why: 'pressure unknown' }
  /** A stall: nothing that it shows is in question. */
  | { readonly why: 'shows nothing' }
  /** Opening the unit: the lever may be out of step, which costs ten minutes to know. */
  | { readonly why: 'lever first' }
  /** Opening the unit: nobody has looked at its fluid yet. */
  | { readonly why: 'outside first' }
  /** A test of a device that nothing seen points at. */
  | { readonly why: 'not in question' }
  /** Nobody lets a car roll backwards to see whether it brakes. */
  | { readonly why: 'backwards' }
  /** A test of the car, or of the unit whole. */
  | { readonly why: 'in pieces' }
  | { readonly why: 'made' };

/** A kind of test that stops, and what remains. */
export interface StoppedTest {
  readonly stops: Stopped;
  readonly bars: readonly Bar[];
  /** The kinds of test that are left, place by place. */
  readonly left: ReadonlyMap<TestPlace, readonly string[]>;
}
