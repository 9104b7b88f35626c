import type { PlateKind } from '../../engine/train/index.ts';
import type { LengthUnit, Length } from '../length/index.ts';
import type { ClearanceWay } from './clearance.ts';

/** What a builder must be told before the numbers are believed, as plain data. */
export type Remark =
  /** The readings leave no gap at all. */
  | { readonly remark: 'no gap'; readonly way: ClearanceWay }
  /** Off by about a plate of these kinds: count, and select nothing. */
  | {
      readonly remark: 'plate missing' | 'plate doubled';
      readonly kinds: readonly PlateKind[];
    }
  /** The same digits in the other unit would lie inside the limits. */
  | { readonly remark: 'other unit'; readonly meant: LengthUnit }
  /** So few places of three. */
  | { readonly remark: 'few places'; readonly way: ClearanceWay; readonly places: number }
  /** There is a cushion plate whose squash nobody wrote down. */
  | { readonly remark: 'squash unknown' }
  /** The squash is given at one pressure, and the reading was taken at another. */
  | { readonly remark: 'other pressure'; readonly given: string; readonly read: string }
  /** Two ways that do not agree to within a quarter of the limits' width. */
  | { readonly remark: 'ways differ'; readonly ways: readonly [ClearanceWay, ClearanceWay] }
  /** There are no limits to judge the clearance by, or not both. */
  | { readonly remark: 'no limit' }
  | { readonly remark: 'one limit' }
  | { readonly remark: 'limits turned round' }
  /** The fitted part's thickness is none of the shelf's sizes. */
  | { readonly remark: 'not on the shelf'; readonly size: Length }
  /** A smaller step does not fit where a larger one does. */
  | { readonly remark: 'gauge turned round' }
  /** A place, from 1, that is outside though the mean is inside. */
  | { readonly remark: 'place outside'; readonly place: number }
  /** A steel shows a gap: one is coned on purpose by so much; or nobody wrote whether. */
  | { readonly remark: 'coned on purpose'; readonly by: Length }
  | { readonly remark: 'coned or warped' }
  | { readonly remark: 'worn'; readonly what: 'friction' | 'steel' }
  /** Nothing was read that says how much there is. */
  | { readonly remark: 'nothing read' }
  /** Turns were read, and nobody wrote how far one turn moves the screw. */
  | { readonly remark: 'no pitch' }
  /** No play at all: a band that drags, a shaft that is larger than its bore. */
  | { readonly remark: 'no slack' }
  /** Turns and travel of one band that do not agree to within a quarter of the limits' width. */
  | { readonly remark: 'turns and travel differ' }
  /** Measured again, it lies beyond what was predicted at worst. */
  | { readonly remark: 'not as predicted' }
  /** None of the shelf's sizes brings it inside. */
  | { readonly remark: 'shelf too short' };
