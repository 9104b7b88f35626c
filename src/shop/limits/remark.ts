import type { Departure } from '../../engine/train/index.ts';
import type { Length, WrittenUnit } from '../length/index.ts';

/** What must be told of any gap before its numbers are believed, as plain data. */
export type GapRemark =
  /** The same digits in the other unit would lie inside the limits; of one place, from 1, or of all. */
  | { readonly remark: 'other unit'; readonly meant: WrittenUnit; readonly place?: number }
  /**
   * Readings differ by more than a quarter of the limits' width; `beyond`: by more than all of it.
   * `where`: in places round a pack, at one place again and again, or from tooth to tooth.
   */
  | {
      readonly remark: 'uneven';
      readonly where: 'round' | 'again' | 'teeth';
      readonly spread: Length;
      readonly width: Length;
      readonly beyond: boolean;
    }
  /** A point that slipped by so many digits that what was `meant` is inside; of one place, from 1. */
  | {
      readonly remark: 'point slipped';
      readonly read: Length;
      readonly meant: Length;
      readonly place: number;
    }
  /** Of one place, from 1: with two digits exchanged it would be as the others are. */
  | {
      readonly remark: 'digits swapped';
      readonly read: Length;
      readonly meant: Length;
      readonly place: number;
    }
  /** A bore and what runs in it that cannot belong together: more than a tenth apart. */
  | { readonly remark: 'sizes apart'; readonly bore: Length; readonly shaft: Length }
  /** There are no limits to judge the gap by, or not both. */
  | { readonly remark: 'no limit' }
  | { readonly remark: 'one limit' }
  | { readonly remark: 'limits turned round' }
  /** A job's limit that departs from the train file's so far that it must be told to be meant. */
  | { readonly remark: 'limit doubted'; readonly by: Departure }
  /** The fitted part's thickness is none of the shelf's sizes. */
  | { readonly remark: 'not on the shelf'; readonly size: Length }
  /** A place, from 1, that is outside though the mean is inside. */
  | { readonly remark: 'place outside'; readonly place: number }
  /** Nothing was read that says how much there is. */
  | { readonly remark: 'nothing read' }
  /** No play at all: a band that drags, a shaft that is larger than its bore. */
  | { readonly remark: 'no slack' }
  /**
   * Measured again, it lies beyond what was predicted at worst, or where another part of the shelf
   * would have it, which may be in.
   */
  | { readonly remark: 'not as predicted'; readonly like?: Length }
  /** A reading, of a place from 1, that nothing with these limits can have. */
  | {
      readonly remark: 'not possible';
      readonly read: Length;
      readonly limit: Length;
      readonly place: number;
    }
  /** None of the shelf's sizes brings it inside. */
  | { readonly remark: 'shelf too short' };
