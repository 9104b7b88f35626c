import { SIZE, widthOf } from '../scene/index.ts';

/** A node with the figure of its speed; `rise` tells whether its lever rises to the right. */
export interface Figured {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly rise: number;
}

/** Where a figure stands, from its node. */
export interface FigurePlace {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'end';
}

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
}

export const FIGURE = SIZE - 2;

const ASIDE = 17; // from the middle of a node to its figure
const ROW = 18;
const ROWS = 24; // as many figures as may stand over one another

/**
 * Places for figures so that none lies on another or on `words`, and all are between the edges:
 * beside the node, clear of the lever where that may be; else in the nearest row that has room.
 */
export function placeFigures(
  nodes: readonly Figured[],
  words: readonly Box[],
  sheet: Box,
): FigurePlace[] {
  const taken = [...words];
  return nodes.map((node) => {
    let best: FigurePlace = { x: ASIDE, y: -9, anchor: 'start' };
    if (node.text === '') return best;
    let least = Number.POSITIVE_INFINITY;
    for (const [rank, place] of placesOf(node).entries()) {
      if (rank >= least) break;
      const box = boxOf(node, place);
      const outside = box.left < sheet.left || box.right > sheet.right;
      const beyond = box.top < sheet.top || box.foot > sheet.foot;
      const over = taken.filter((other) => meet(box, other)).length;
      const hidden = nodes.filter((other) => other !== node && meet(box, dotOf(other))).length;
      const cost = rank + 5 * hidden + 1000 * (over + (outside || beyond ? 1 : 0));
      if (cost < least) [best, least] = [place, cost];
    }
    taken.push(boxOf(node, best));
    return best;
  });
}

// The nearest first; on each side the one that is clear of the lever before the other.
function placesOf({ rise }: Figured): FigurePlace[] {
  const [above, below] = [-9, 23];
  const right = rise > 0 ? [below, above] : [above, below];
  const left = rise < 0 ? [below, above] : [above, below];
  const at = (x: number, y: number): FigurePlace => ({ x, y, anchor: x > 0 ? 'start' : 'end' });
  const beside = [0, 1].flatMap((k) => [at(ASIDE, right[k] ?? 0), at(-ASIDE, left[k] ?? 0)]);
  const rows = Array.from({ length: ROWS }, (_, k) => (k + 1) * ROW).flatMap((far) => {
    return [above - far, below + far].flatMap((y) => [at(ASIDE, y), at(-ASIDE, y)]);
  });
  return [...beside, ...rows];
}

// Digits reach up 0.73 of their size.
function boxOf({ x, y, text }: Figured, place: FigurePlace): Box {
  const room = widthOf(text, FIGURE);
  const left = x + place.x - (place.anchor === 'end' ? room : 0);
  const foot = y + place.y + 4;
  return { left: left - 2, right: left + room + 2, top: foot - FIGURE, foot };
}

function dotOf({ x, y }: Figured): Box {
  return { left: x - 11, right: x + 11, top: y - 11, foot: y + 11 };
}

function meet(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.foot && b.top < a.foot;
}
