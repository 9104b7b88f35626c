import { round } from './svg.ts';
import type { Places } from './place.ts';
import type { Strokes, Subjects } from './strokes.ts';

/** The lines of a body: one path, with a bridge where it passes over another body's line. */
export interface Line {
  readonly member: string;
  readonly d: string;
  /** Straight pieces, for whoever must keep clear of them. */
  readonly pieces: readonly Piece[];
}

export interface Piece {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

const BRIDGE = 6;

/** The lines of every body that has any, the case's stubs to the ground too. */
export function linesOfBodies(
  { assembly }: Subjects,
  { uprights, levels }: Strokes,
  { x, y }: Places,
): Line[] {
  return assembly.bodies.flatMap(({ label }, body) => {
    const pieces: Piece[] = [];
    let d = '';
    for (const { strip, height, from, to } of levels.filter((level) => level.body === body)) {
      const piece = { x1: x(from), x2: x(to), y1: y(strip, height), y2: y(strip, height) };
      pieces.push(piece);
      d += `M${round(piece.x1)} ${round(piece.y1)}H${round(piece.x2)}`;
    }
    for (const upright of uprights.filter((one) => one.body === body)) {
      const { strip, column, low, high } = upright;
      const at = x(column);
      const [top, foot] = [y(strip, high), y(strip, low)];
      pieces.push({ x1: at, x2: at, y1: top, y2: foot });
      const bridges = levels
        .filter(
          (level) =>
            level.body !== body &&
            level.strip === strip &&
            level.from < column &&
            level.to > column &&
            level.height > low &&
            level.height < high,
        )
        .map((level) => y(strip, level.height))
        .toSorted((a, b) => a - b);
      d += `M${round(at)} ${round(top)}`;
      for (const bridge of bridges) {
        d += `V${round(bridge - BRIDGE)}a${BRIDGE} ${BRIDGE} 0 0 1 0 ${2 * BRIDGE}`;
      }
      d += `V${round(foot)}`;
    }
    return d === '' ? [] : [{ member: label, d, pieces }];
  });
}
