import { DRUM, SHAFT } from './arrangement.ts';
import type { Places } from './place.ts';
import type { Drafting, Level, Upright } from './strokes.ts';
import { round } from '../scene/index.ts';

/** The lines of a body, with a bridge where one passes over another body's. */
export interface Line {
  readonly body: number;
  readonly member: string;
  /** Its line near the axis, and the one outside the sets. */
  readonly shaft?: Piece;
  readonly drum?: Piece;
  /** From a trunk to each station that the body meets. */
  readonly branches: readonly LineBranch[];
  /** Between both trunks. */
  readonly disc?: LineBranch;
}

export interface LineBranch {
  /** The station's name: of a set, a device, a gear pair. */
  readonly meets: string;
  readonly on: 'shaft' | 'drum' | 'nothing';
  /** Where it leaves the trunk. */
  readonly x: number;
  readonly d: string;
  /** Its straight pieces, for whoever must keep clear of them. */
  readonly pieces: readonly Piece[];
}

/** A straight line along the axis or across it. */
export interface Piece {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** Every straight piece of a body's lines. */
export function piecesOf({ shaft, drum, branches, disc }: Line): Piece[] {
  const trunks = [shaft, drum].filter((piece): piece is Piece => piece !== undefined);
  return [...trunks, ...branches.flatMap(({ pieces }) => pieces), ...(disc?.pieces ?? [])];
}

const BRIDGE = 6;

/** The lines of every body that has any; the case's are pins that stand still. */
export function linesOfBodies(drafting: Drafting, places: Places): Line[] {
  const { x, y } = places;
  const { assembly, stations } = drafting.subjects;
  const pieceOf = ({ strip, height, from, to }: Level): Piece => {
    return { x1: x(from), x2: x(to), y1: y(strip, height), y2: y(strip, height) };
  };
  return assembly.bodies.flatMap(({ label }, body): Line[] => {
    const levels = drafting.levels.list().filter((level) => level.body === body);
    const bars = new Set(levels.filter(({ trunk }) => trunk === 0));
    const uprights = drafting.uprights.list().filter((upright) => upright.body === body);
    const all = uprights.map((upright): LineBranch & { disc: boolean } => {
      const { column, low, high, strip, station, on } = upright;
      const beside = [...bars].filter((bar) => {
        return bar.station === station && (bar.from === column || bar.to === column);
      });
      for (const bar of beside) bars.delete(bar);
      const line = { x1: x(column), x2: x(column), y1: y(strip, high), y2: y(strip, low) };
      const pieces = beside.map(pieceOf);
      return {
        meets: stations[station]?.name ?? '',
        on: on === SHAFT ? 'shaft' : on === DRUM ? 'drum' : 'nothing',
        x: x(column),
        d: pieces.map(barPath).join('') + bridged(upright, drafting, places),
        pieces: [line, ...pieces],
        disc: stations[station]?.kind === 'disc',
      };
    });
    const branches: LineBranch[] = all.filter(({ disc }) => !disc);
    for (const bar of bars) {
      const piece = pieceOf(bar);
      const meets = stations[bar.station]?.name ?? '';
      branches.push({ meets, on: 'nothing', x: piece.x1, d: barPath(piece), pieces: [piece] });
    }
    const trunk = (which: number) => {
      const level = levels.find((one) => one.trunk === which);
      return level && pieceOf(level);
    };
    const [shaft, drum, disc] = [trunk(SHAFT), trunk(DRUM), all.find((one) => one.disc)];
    if (!shaft && !drum && branches.length === 0) return [];
    const trunks = { ...(shaft && { shaft }), ...(drum && { drum }), ...(disc && { disc }) };
    return [{ body, member: label, branches, ...trunks }];
  });
}

function barPath({ x1, x2, y1 }: Piece): string {
  return `M${round(x1)} ${round(y1)}H${round(x2)}`;
}

// An upright as path data: over each level of another body that it passes goes a bridge.
function bridged(upright: Upright, drafting: Drafting, { x, y }: Places): string {
  const { body, strip, column, low, high } = upright;
  const bridges = drafting.levels
    .list()
    .filter((level) => {
      const passes = level.from < column && level.to > column;
      const within = level.height > low && level.height < high;
      return level.body !== body && level.strip === strip && passes && within;
    })
    .map(({ height }) => y(strip, height))
    .toSorted((a, b) => a - b)
    .map((at) => `V${round(at - BRIDGE)}a${BRIDGE} ${BRIDGE} 0 0 1 0 ${2 * BRIDGE}`);
  return `M${round(x(column))} ${round(y(strip, high))}${bridges.join('')}V${round(y(strip, low))}`;
}
