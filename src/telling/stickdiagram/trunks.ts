import type { Subjects } from './arrangement.ts';

/** The shafts, or the drums, of all bodies: from which column to which, and in which track. */
export class Trunks {
  readonly from: number[];
  readonly to: number[];
  readonly height: number[];
  private readonly strips: readonly number[];
  private readonly first: number;
  private readonly placed: number[] = [];

  constructor({ assembly, strips }: Subjects, first: number) {
    const none = assembly.bodies.map(() => 0);
    [this.from, this.to, this.height] = [[...none], [...none], [...none]];
    [this.strips, this.first] = [strips, first];
  }

  clear(): void {
    this.from.fill(NOWHERE);
    this.to.fill(-1);
  }

  touch(body: number, column: number): void {
    if (column < (this.from[body] ?? 0)) this.from[body] = column;
    if (column > (this.to[body] ?? 0)) this.to[body] = column;
  }

  /** Each in the lowest track that leaves those of lower rank beneath it; how many there are. */
  pack(rank: readonly number[]): number {
    const { from, to, height, strips, first, placed } = this;
    placed.length = 0;
    let tracks = 0;
    for (const body of rank) {
      const [start, end] = [from[body] ?? 0, to[body] ?? 0];
      if (end < start) continue;
      let own = first;
      for (const other of placed) {
        if ((to[other] ?? 0) < start || (from[other] ?? 0) > end) continue;
        if (strips[other] !== strips[body]) continue;
        const above = (height[other] ?? 0) + 1;
        if (above > own) own = above;
      }
      height[body] = own;
      if (own - first >= tracks) tracks = own - first + 1;
      placed.push(body);
    }
    return tracks;
  }
}

const NOWHERE = 1e9;
