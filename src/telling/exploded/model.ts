import type { Path } from '../scene/index.ts';
import { type Spot, SQUASH, type Turned, turned } from './solid.ts';

/** A part's picture about the middle of its axis: marks, and the room that they take. */
export interface Outline {
  readonly marks: readonly Path[];
  /** From the origin to the left, to the right, and up and down. */
  readonly left: number;
  readonly right: number;
  readonly high: number;
}

/** A picture as it is put together: what is behind, or further right, goes in first. */
export class Model implements Outline {
  readonly marks: Path[] = [];
  left = 0;
  right = 0;
  high = 0;

  /** A turned piece whose left face is at `x` on the axis. */
  turn(x: number, its: Turned): this {
    return this.turnAt({ x, y: 0 }, its);
  }

  /** The same beside the axis, as a planet stands. */
  turnAt(at: Spot, its: Turned): this {
    this.marks.push(...turned(at, its));
    const wide = SQUASH * its.outer;
    this.room(at.x - wide, at.x + its.long + wide, Math.abs(at.y) + its.outer);
    return this;
  }

  /** Another mark; nothing that has room of its own beyond what stands there. */
  mark(look: string, d: string): this {
    if (d !== '') this.marks.push({ mark: 'path', look, d });
    return this;
  }

  room(left: number, right: number, high: number): this {
    this.left = Math.min(this.left, left);
    this.right = Math.max(this.right, right);
    this.high = Math.max(this.high, high);
    return this;
  }
}
