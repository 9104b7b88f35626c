import type { PlateKind } from '../../engine/train/index.ts';
import type { Length, WrittenUnit } from '../length/index.ts';
import type { GapRemark } from '../limits/index.ts';
import type { ClearanceWay } from './clearance.ts';

/** What a builder must be told of a pack before the numbers are believed, as plain data. */
export type PackRemark =
  | GapRemark
  /** The readings leave no gap at all. */
  | { readonly remark: 'no gap'; readonly way: ClearanceWay }
  /** Off by about a plate of these kinds: count, and select nothing. */
  | {
      readonly remark: 'plate missing' | 'plate doubled';
      readonly kinds: readonly PlateKind[];
    }
  /** A plate's own reading, from 1, or its cone's: the same digits in another unit would be right. */
  | {
      readonly remark: 'other unit of a plate';
      readonly meant: WrittenUnit;
      readonly what: 'friction' | 'steel' | 'cone';
      readonly place: number;
    }
  /** So few places of three. */
  | { readonly remark: 'few places'; readonly way: ClearanceWay; readonly places: number }
  /** There is a cushion plate whose squash nobody wrote down. */
  | { readonly remark: 'squash unknown' }
  /** The squash is given at one pressure, and the reading was taken at another. */
  | { readonly remark: 'other pressure'; readonly given: string; readonly read: string }
  /** Two ways that do not agree to within a quarter of the limits' width. */
  | { readonly remark: 'ways differ'; readonly ways: readonly [ClearanceWay, ClearanceWay] }
  /** A smaller step does not fit where a larger one does. */
  | { readonly remark: 'gauge turned round' }
  /** A steel shows a gap: one is coned on purpose by so much; or nobody wrote whether. */
  | { readonly remark: 'coned on purpose'; readonly by: Length }
  | { readonly remark: 'coned or warped' }
  /** Plates were found burnt, and nothing says that new ones are in. */
  | { readonly remark: 'plates spent' }
  | { readonly remark: 'worn'; readonly what: 'friction' | 'steel' };
