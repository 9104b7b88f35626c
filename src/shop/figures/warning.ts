import type { Located } from '../../engine/yaml/index.ts';

/** What a train file's limits, shelves and sizes may have against them, with the place. */
export type FigureWarning = Located<FigureOddity>;

/** `of`: the device, shaft or part. */
export type FigureOddity =
  /** The least is more than the most: nothing can be judged by it. */
  | { readonly problem: 'limits turned round'; readonly of: string }
  /** One end in millimetres and the other in inches. */
  | { readonly problem: 'limit in two units'; readonly of: string }
  /** Neither a least nor a most: nothing can be judged by it. */
  | { readonly problem: 'limit without figures'; readonly of: string }
  /** By the file's own sizes no part of the shelf brings the gap inside its limits. */
  | { readonly problem: 'shelf out of reach'; readonly of: string }
  /** Between two neighbouring sizes of the shelf lies more than between the limits. */
  | { readonly problem: 'shelf too coarse'; readonly of: string }
  /** The part that is in is of no size of its shelf. */
  | { readonly problem: 'fitted not on the shelf'; readonly of: string }
  /** A shelf without both limits: nothing can be selected from it. */
  | { readonly problem: 'shelf without limits'; readonly of: string }
  /** Limits for each friction, and there is none. */
  | { readonly problem: 'no friction to share'; readonly of: string }
  /**
   * Friction plates as three sections count them: of a capacity's faces two make a plate. Those
   * that tell none are left out.
   */
  | {
      readonly problem: 'counts differ';
      readonly of: string;
      readonly counts: readonly { readonly in: CountedIn; readonly frictions: number }[];
    }
  /** A squash of a plate that is no cushion plate, or one without the pressure of its air. */
  | { readonly problem: 'squash of no cushion'; readonly of: string }
  | { readonly problem: 'squash without air'; readonly of: string };

/** A section of the file that counts friction plates. */
export type CountedIn = 'teardown' | 'packs' | 'capacities';
