import { round } from './svg.ts';
import type { Places } from './place.ts';
import type { Strokes, Subjects, Upright } from './strokes.ts';

/** The lines of a body, with a bridge where one passes over another body's. */
export interface Line {
  readonly member: string;
  readonly trunk?: Piece;
  /** From the trunk to each station that the body meets. */
  readonly branches: readonly Branch[];
}

export interface Branch {
  /** The station's name: of a set, a device, a gear pair. */
  readonly meets: string;
  /** Where it leaves the trunk. */
  readonly x: number;
  readonly d: string;
  /** Its straight pieces, for whoever must keep clear of them. */
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
export function linesOfBodies({ assembly }: Subjects, strokes: Strokes, places: Places): Line[] {
  const { x, y } = places;
  return assembly.bodies.flatMap(({ label }, body) => {
    const levels = strokes.levels.filter((level) => level.body === body);
    const trunk = levels.find(({ is }) => is === 'trunk');
    const uprights = strokes.uprights.filter((upright) => upright.body === body);
    const branches = uprights.map((upright): Branch => {
      const beside = levels.filter(({ is, meets, from, to }) => {
        const touches = from === upright.column || to === upright.column;
        return is !== 'trunk' && meets === upright.meets && touches;
      });
      const pieces = beside.map(({ strip, height, from, to }) => {
        return { x1: x(from), x2: x(to), y1: y(strip, height), y2: y(strip, height) };
      });
      const bars = pieces.map(({ x1, x2, y1 }) => `M${round(x1)} ${round(y1)}H${round(x2)}`);
      const { column, low, high, strip } = upright;
      const line = { x1: x(column), x2: x(column), y1: y(strip, high), y2: y(strip, low) };
      return {
        meets: upright.meets,
        x: x(column),
        d: bars.join('') + bridged(upright, strokes, places),
        pieces: [line, ...pieces],
      };
    });
    if (!trunk && branches.length === 0) return [];
    const at = trunk && y(trunk.strip, trunk.height);
    const piece = trunk && { x1: x(trunk.from), x2: x(trunk.to), y1: at ?? 0, y2: at ?? 0 };
    return { member: label, branches, ...(piece && { trunk: piece }) };
  });
}

// An upright as path data: over each level of another body that it passes goes a bridge.
function bridged(upright: Upright, { levels }: Strokes, { x, y }: Places): string {
  const { body, strip, column, low, high } = upright;
  const passed = levels
    .filter(
      (level) =>
        level.body !== body &&
        level.strip === strip &&
        level.from < column &&
        level.to > column &&
        level.height > low &&
        level.height < high,
    )
    .map(({ height }) => y(strip, height))
    .toSorted((a, b) => a - b);
  const bridges = passed.map((at) => {
    return `V${round(at - BRIDGE)}a${BRIDGE} ${BRIDGE} 0 0 1 0 ${2 * BRIDGE}`;
  });
  return `M${round(x(column))} ${round(y(strip, high))}${bridges.join('')}V${round(y(strip, low))}`;
}
