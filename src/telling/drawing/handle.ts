import { linesOf, widthOf } from './lettering.ts';
import { BELOW } from './levels.ts';
import { type Leader, type Places, SIZE } from './place.ts';
import { round } from './svg.ts';
import type { Strokes, Subjects } from './strokes.ts';

/** The dial of a body: a target of 44 units with a stop mark, its name, and a leader to it. */
export interface Handle {
  readonly member: string;
  readonly x: number;
  readonly y: number;
  readonly names: readonly string[];
  /** The base line of the first line of the name. */
  readonly nameY: number;
  readonly leader: string;
}

export const DIAL = 22;
const NAME = 140; // a longer name takes a second line

/** The dials in rows above the case and below the axis, in the order of their leaders. */
export function handlesOf({ assembly }: Subjects, strokes: Strokes, places: Places): Handle[] {
  const rowOf = ({ strip, row }: Leader) => `${strip} ${row}`;
  const rows = new Set(places.leaders.map(rowOf));
  return [...rows].flatMap((name) => {
    const row = places.leaders.filter((leader) => rowOf(leader) === name);
    const leaders = row.toSorted((a, b) => a.x - b.x);
    const names = leaders.map(({ body }) => {
      return linesOf(assembly.bodies[body]?.label.replace('.', ' ') ?? '', SIZE, NAME);
    });
    const rooms = names.map((lines) => {
      return Math.max(2 * DIAL + 8, ...lines.map((line) => widthOf(line, SIZE) + 16)) / 2;
    });
    const strip = leaders[0]?.strip ?? 0;
    const passing = leaders[0]?.row === 'below' ? passingBelow(strip, strokes, places) : [];
    const wanted = leaders.map(({ x }) => x);
    const xs = spread(wanted, rooms, places.width, passing);
    return leaders.map((leader, k) => {
      const above = leader.row === 'above';
      const y = above ? leader.end - 26 - DIAL : leader.end + 26 + DIAL;
      const lines = names[k] ?? [];
      const x = xs[k] ?? leader.x;
      return {
        member: assembly.bodies[leader.body]?.label ?? '',
        x,
        y,
        names: lines,
        nameY: above ? y - DIAL - 8 - (lines.length - 1) * SIZE * 1.1 : y + DIAL + SIZE + 2,
        leader: leaderPath(leader, x, above ? y + DIAL : y - DIAL),
      };
    });
  });
}

// The wheels of pairs that pass the row of dials on their way down.
function passingBelow(strip: number, { uprights }: Strokes, { x }: Places): number[] {
  return uprights
    .filter((upright) => upright.strip === strip && upright.low === BELOW)
    .map(({ column }) => x(column))
    .toSorted((a, b) => a - b);
}

// As near to where they would be as they can stand without touching one another or what passes,
// in their order.
function spread(
  wanted: readonly number[],
  rooms: readonly number[],
  width: number,
  passing: readonly number[],
): number[] {
  const room = (k: number) => rooms[k] ?? 0;
  const xs = [...wanted];
  for (let k = 0; k < xs.length; k++) {
    const before = k === 0 ? 4 + room(0) : (xs[k - 1] ?? 0) + room(k - 1) + room(k);
    let x = Math.max(xs[k] ?? 0, before);
    for (const line of passing) {
      if (Math.abs(line - x) < room(k) + 18) x = line + room(k) + 18;
    }
    xs[k] = x;
  }
  if (passing.length > 0) return xs;
  for (let k = xs.length - 1; k >= 0; k--) {
    const after =
      k === xs.length - 1 ? width - 4 - room(k) : (xs[k + 1] ?? 0) - room(k + 1) - room(k);
    xs[k] = Math.min(xs[k] ?? 0, after);
  }
  return xs;
}

function leaderPath({ x, from, trunk, end }: Leader, dialX: number, dialY: number): string {
  const start =
    from === x ? `M${round(x)}` : `M${round(from)} ${round(trunk)}H${round(x)}M${round(x)}`;
  return `${start} ${round(trunk)}V${round(end)}L${round(dialX)} ${round(dialY)}`;
}
