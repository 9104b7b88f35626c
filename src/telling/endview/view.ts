import type { MemberName } from '../../engine/train/index.ts';
import type { EndWheel } from './endwheel.ts';

/**
 * A set or a gear pair seen along its axis: wheels with involute teeth that mesh at all angles.
 * Plain data, made once; `placeWheels` tells where each wheel is as the members turn.
 */
export interface EndView {
  /** Of the set or pair. */
  readonly name: string;
  readonly kind: 'set' | 'pair' | 'bevel';
  readonly width: number;
  readonly height: number;
  /** The main axis; of a pair, the driver's. */
  readonly axis: { readonly x: number; readonly y: number };
  /** In the order in which they are painted, the furthest first. */
  readonly wheels: readonly EndWheel[];
  /** What planets turn on, and the plate between two radii that stands for it. */
  readonly carrier?: {
    readonly member: MemberName;
    readonly label: MemberName;
    readonly plate: string;
  };
  /** The line of a chain, about the axis. */
  readonly chain?: string;
  /** What is not as the file counts it. */
  readonly notes: readonly EndNote[];
  readonly seenFrom: 'input' | 'output';
}

export type EndNote =
  /** The file does not count these planets' teeth: they have as many as fit. */
  | { readonly note: 'teeth not counted'; readonly members: readonly MemberName[] }
  /** The file does not count the planets: so many go in evenly. */
  | { readonly note: 'planets not counted'; readonly drawn: number }
  /** So many planets only can be put in where their teeth mesh. */
  | { readonly note: 'planets left out'; readonly counted: number; readonly drawn: number }
  /** They stand where teeth mesh, not evenly: at most so many degrees from it. */
  | { readonly note: 'not evenly spaced'; readonly degrees: number }
  /** Numbers of teeth that do not go together: a wheel is drawn with two modules. */
  | { readonly note: 'teeth do not fit' }
  /** Too many to draw: the wheels are discs, and their planets stand evenly. */
  | { readonly note: 'teeth too fine' };

/** The side of the sheet, and what is left free at its edge. */
export const SHEET = 900;
export const MARGIN = 14;
