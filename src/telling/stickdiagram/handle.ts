import { LINE, linesOf, round, SIZE, widthOf } from '../scene/index.ts';
import { BELOW } from './levels.ts';
import { type Line, type Piece, piecesOf } from './line.ts';
import type { Places } from './place.ts';
import type { Drafting } from './strokes.ts';

/** The dial of a body: a target of 44 units with a stop mark, its name, and a leader to it. */
export interface Handle {
  readonly member: string;
  readonly x: number;
  readonly y: number;
  readonly names: readonly string[];
  /** The base line of the first line of the name, centred under the dial. */
  readonly nameY: number;
  readonly leader: string;
}

/** Where a leader leaves its body, and the row of dials to which it goes. */
export interface Leader {
  readonly body: number;
  readonly strip: number;
  readonly x: number;
  readonly y: number;
  /** Where it leaves the body's line, if it first goes aside. */
  readonly from: number;
  readonly above: boolean;
}

export const DIAL = 22;
const NAME = 128; // a longer name takes another line
const SLANT = 16; // in which leaders spread to their dials

/** The room that a row of dials takes with so many lines of names, and one for a torque. */
export function rowRoom(lines: number): number {
  return lines === 0 ? 0 : SLANT + 2 * DIAL + (lines + 1) * LINE + 6;
}

/** The name of a body in lines. */
export function nameLines(drafting: Drafting, body: number): string[] {
  const { assembly, nameOf } = drafting.subjects;
  return linesOf(nameOf(assembly.bodies[body]?.label ?? ''), SIZE, NAME);
}

/** A leader for each body that has lines, by the way that passes the fewest others. */
export function leadersOf(
  drafting: Drafting,
  places: Places,
  lines: readonly Line[],
  symbols: readonly Box[],
): Leader[] {
  const { strips } = drafting.subjects;
  const boxes = [...symbols, ...places.names.flatMap((box) => (box ? [boxOf(box)] : []))];
  const pieces = lines.flatMap((line) => piecesOf(line).map((piece) => ({ ...piece, line })));
  const chosen: Leader[] = [];
  for (const line of lines) {
    const { body } = line;
    if (body === 0) continue;
    const strip = strips[body] ?? 0;
    let best: Leader | undefined;
    let least = Number.POSITIVE_INFINITY;
    for (const { x, y, from } of startsOn(line)) {
      for (const above of strip === 0 ? [false, true] : [false]) {
        const leader = { body, strip, x, y, from, above };
        let cost = crowd(leader, chosen) + wander(leader, line) + (above ? 6 : 0);
        if (cost < least) cost += covered(leader, boxes, places);
        if (cost < least) cost += passed(leader, pieces, places);
        if (cost < least) [best, least] = [leader, cost];
      }
    }
    if (best) chosen.push(best);
  }
  return chosen;
}

/** The dials in their rows, in the order of their leaders. */
export function handlesOf(
  drafting: Drafting,
  places: Places,
  leaders: readonly Leader[],
): { readonly handles: readonly Handle[]; readonly width: number } {
  const rowOf = ({ strip, above }: Leader) => `${strip} ${above ? 'above' : 'below'}`;
  const handles: Handle[] = [];
  let { width } = places;
  for (const name of new Set(leaders.map(rowOf))) {
    const row = leaders.filter((leader) => rowOf(leader) === name).toSorted((a, b) => a.x - b.x);
    const [{ strip, above }] = row as [Leader];
    const names = row.map(({ body }) => nameLines(drafting, body));
    const most = Math.max(...names.map((lines) => lines.length));
    const rooms = names.map((lines) => {
      return Math.max(2 * DIAL + 10, ...lines.map((line) => widthOf(line, SIZE) + 18)) / 2;
    });
    const passing = above ? [] : passingBelow(strip, drafting, places);
    const xs = spread(
      row.map(({ x }) => x),
      rooms,
      places.width,
      passing,
    );
    const { foot = 0, caseY = 0, top = 0 } = places.strips[strip] ?? {};
    row.forEach((leader, k) => {
      const x = xs[k] ?? leader.x;
      const y = above ? top + (most + 1) * LINE + DIAL + 6 : foot + SLANT + DIAL;
      const lines = names[k] ?? [];
      width = Math.max(width, x + (rooms[k] ?? 0) + 6);
      handles.push({
        member: drafting.subjects.assembly.bodies[leader.body]?.label ?? '',
        x,
        y,
        names: lines,
        nameY: above ? y - DIAL - 9 - (lines.length - 1) * LINE : y + DIAL + SIZE + 1,
        leader: pathOf(leader, above ? caseY - 12 : foot + 2, x, above ? y + DIAL : y - DIAL),
      });
    });
  }
  return { handles, width };
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
}

function boxOf({ lines, x, y }: { lines: readonly string[]; x: number; y: number }): Box {
  const room = Math.max(...lines.map((line) => widthOf(line, SIZE)));
  return { left: x - room, right: x, top: y - SIZE, foot: y + lines.length * LINE };
}

interface Start {
  readonly x: number;
  readonly y: number;
  readonly from: number;
}

// Points of a body's trunks, and beside its lines across the axis if it has no trunk to speak of.
function startsOn(line: Line): Start[] {
  const along = [line.shaft, line.drum].filter((piece): piece is Piece => piece !== undefined);
  const starts = along.flatMap(({ x1, x2, y1 }) => {
    const points: Start[] = [];
    for (let x = Math.min(x1, x2); x <= Math.max(x1, x2); x += 4)
      points.push({ x, y: y1, from: x });
    return points;
  });
  if (starts.length > 8) return starts;
  for (const { x1, x2, y1, y2 } of piecesOf(line)) {
    if (x1 !== x2) continue;
    if (along.length === 0) starts.push({ x: x1, y: y1, from: x1 }, { x: x1, y: y2, from: x1 });
    for (const part of [0.25, 0.5, 0.75]) {
      for (const aside of [-34, -24, -14, 14, 24, 34]) {
        starts.push({ x: x1 + aside, y: y1 + (y2 - y1) * part, from: x1 });
      }
    }
  }
  return starts;
}

// A leader that goes aside first, or over names and symbols.
function covered(
  { x, y, from, above, strip }: Leader,
  boxes: readonly Box[],
  { strips }: Places,
): number {
  const { caseY = 0, foot = 0 } = strips[strip] ?? {};
  const [top, low] = above ? [caseY, y] : [y, foot];
  const [left, right] = [Math.min(from, x), Math.max(from, x)];
  let cost = from === x ? 0 : 30 + (right - left) / 4;
  for (const box of boxes) {
    if (box.left < x + 4 && box.right > x - 4 && box.top < low && box.foot > top) cost += 400;
    const beside = from !== x && box.left < right && box.right > left;
    if (beside && box.top < y && box.foot > y) cost += 400;
  }
  return cost;
}

// The lines that a leader passes, or runs along; not the one that it leaves.
function passed(
  { body, x, y, from, above, strip }: Leader,
  pieces: readonly (Piece & { readonly line: Line })[],
  { strips }: Places,
): number {
  const { caseY = 0, foot = 0 } = strips[strip] ?? {};
  const [top, low] = above ? [caseY, y] : [y, foot];
  const [left, right] = [Math.min(from, x), Math.max(from, x)];
  let cost = 0;
  for (const { x1, x2, y1, y2, line } of pieces) {
    if (line.body === body && (y1 === y || x1 === from)) continue;
    const [start, end] = [Math.min(x1, x2), Math.max(x1, x2)];
    const [high, deep] = [Math.min(y1, y2), Math.max(y1, y2)];
    if (y1 === y2) {
      if (start < x + 3 && end > x - 3 && y1 > top + 1 && y1 < low - 1) cost += 100;
      if (from !== x && start < right && end > left && Math.abs(y1 - y) < 8) cost += 200;
      continue;
    }
    const apart = Math.abs(x1 - x);
    if (apart < 10 && high < low - 2 && deep > top + 2) cost += apart < 7 ? 1200 : 260;
    else if (from !== x && x1 > left + 1 && x1 < right - 1 && high < y && deep > y) cost += 200;
  }
  return cost;
}

function crowd(leader: Leader, chosen: readonly Leader[]): number {
  let cost = 0;
  for (const { x, above, strip } of chosen) {
    if (above !== leader.above || strip !== leader.strip) continue;
    const apart = Math.abs(x - leader.x);
    if (apart < 12) cost += 1200;
    else if (apart < 110) cost += (110 - apart) / 4;
  }
  return cost;
}

// The middle of a line is where one looks for its name.
function wander({ x, y }: Leader, { shaft, drum }: Line): number {
  const trunk = shaft?.y1 === y ? shaft : drum;
  return trunk ? Math.abs(x - (trunk.x1 + trunk.x2) / 2) / 40 : 0;
}

// The wheels of pairs that pass the row of dials on their way down.
function passingBelow(strip: number, drafting: Drafting, { x }: Places): number[] {
  return drafting.uprights
    .list()
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
    const before = k === 0 ? 6 + room(0) : (xs[k - 1] ?? 0) + room(k - 1) + room(k);
    let x = Math.max(xs[k] ?? 0, before);
    for (const line of passing) {
      if (Math.abs(line - x) >= room(k) + 18) continue;
      const left = line - room(k) - 18;
      x = x <= line && left >= before ? left : line + room(k) + 18;
    }
    xs[k] = x;
  }
  if (passing.length > 0) return xs;
  for (let k = xs.length - 1; k >= 0; k--) {
    const after =
      k === xs.length - 1 ? width - 6 - room(k) : (xs[k + 1] ?? 0) - room(k + 1) - room(k);
    xs[k] = Math.min(xs[k] ?? 0, after);
  }
  // Back again, if the sheet is too narrow for them.
  for (let k = 0; k < xs.length; k++) {
    const before = k === 0 ? 6 + room(0) : (xs[k - 1] ?? 0) + room(k - 1) + room(k);
    xs[k] = Math.max(xs[k] ?? 0, before);
  }
  return xs;
}

function pathOf({ x, y, from }: Leader, end: number, dialX: number, dialY: number): string {
  return `M${round(from)} ${round(y)}H${round(x)}V${round(end)}L${round(dialX)} ${round(dialY)}`;
}
