import { type End, type Part, type PartKind, type Train, upOf } from '../../engine/train/index.ts';
import { kindOfPart } from '../../shop/strip/index.ts';
import { linesOf, widthOf } from '../scene/index.ts';
import { type Outline } from './model.ts';
import { outlineOf } from './outline.ts';
import { sizesOf } from './sizes.ts';

/** A part where it stands: the middle of its column, and its number in the order of coming off. */
export interface Placed {
  readonly part: Part;
  readonly kind: PartKind | undefined;
  readonly number: number;
  readonly outline: Outline;
  /** The middle of its column, and how wide that is. */
  readonly x: number;
  readonly wide: number;
  readonly names: readonly string[];
  /** The end of the unit that is up, where this part is the first with it up. */
  readonly turned?: End;
  /** What the words over it need to its right. */
  readonly over: number;
}

/** Parts side by side on one axis. */
export interface Row {
  readonly parts: readonly Placed[];
  /** From the top of the row to its axis, to the numbers, and in all. */
  readonly axis: number;
  readonly numbers: number;
  readonly high: number;
}

export const NAME_SIZE = 15;
export const NAME_LINE = 17;
export const NUMBER = 13;
/** From the edge of the sheet to the first part. */
export const MARGIN = 14;
const GAP = 12;
const TURN_GAP = 60;
const MOST_GAP = 44;
const NAME_WIDE = 92;
const HEAD = 26;

/** What parts are called, and what stands over the first with an end of the unit up. */
export interface RowWords {
  readonly nameOf: (part: Part) => string;
  readonly upOf: (end: End) => string;
}

/** The parts of a teardown in rows of at most a width; Infinity for one row. */
export function rowsOf(train: Train, width: number, words: RowWords): Row[] {
  const { teardown = [] } = train;
  const up = upOf(teardown);
  const sizes = sizesOf(train);
  const columns = teardown.map((part, i): Column => {
    const kind = kindOfPart(train, part);
    const outline = outlineOf(train, part, kind, sizes);
    const pictured = outline.right - outline.left;
    const names = linesOf(words.nameOf(part), NAME_SIZE, Math.max(NAME_WIDE, pictured));
    const wide = Math.max(pictured, 2 * NUMBER, ...names.map((line) => widthOf(line, NAME_SIZE)));
    const end = up(part);
    const before = teardown[i - 1];
    const turned = end && (!before || up(before) !== end) ? end : undefined;
    // The words over the first reach as far as they must.
    const headed = turned ? widthOf(words.upOf(turned), NAME_SIZE) - wide : 0;
    const gap = turned ? TURN_GAP : GAP;
    const column = { part, kind, number: i + 1, outline, names, wide, gap };
    return { ...column, over: Math.max(0, headed), ...(turned && { turned }) };
  });
  const lines = broken(columns, width - 2 * MARGIN);
  return lines.map((line, k) => rowOf(line, width, k === lines.length - 1));
}

type Column = Omit<Placed, 'x'> & {
  /** Before it, where it is not the first of its row. */
  readonly gap: number;
};

function roomOf(columns: readonly Column[]): number {
  const taken = columns.reduce((sum, { wide, gap }, i) => sum + wide + (i > 0 ? gap : 0), 0);
  return taken + (columns.at(-1)?.over ?? 0);
}

// Into as few rows as there may be, each about as full as the others: the squares of what is left
// over are least. A part that is wider than a row has one of its own.
function broken(columns: readonly Column[], room: number): readonly (readonly Column[])[] {
  if (!Number.isFinite(room)) return [columns];
  interface Best {
    readonly rows: number;
    readonly waste: number;
    readonly from: number;
  }
  const best: Best[] = [{ rows: 0, waste: 0, from: 0 }];
  for (let to = 1; to <= columns.length; to++) {
    let found: Best | undefined;
    for (let from = to - 1; from >= 0; from--) {
      const taken = roomOf(columns.slice(from, to));
      if (taken > room && from < to - 1) break;
      const before = best[from] as Best;
      const waste = before.waste + Math.max(0, room - taken) ** 2;
      const rows = before.rows + 1;
      const better = !found || rows < found.rows || (rows === found.rows && waste < found.waste);
      if (better) found = { rows, waste, from };
    }
    best.push(found as Best);
  }
  const lines: (readonly Column[])[] = [];
  for (let to = columns.length; to > 0; to = (best[to] as Best).from) {
    lines.unshift(columns.slice((best[to] as Best).from, to));
  }
  return lines;
}

// What is left of the width goes between the parts; a last row stands closer.
function rowOf(columns: readonly Column[], width: number, last: boolean): Row {
  const spare = Number.isFinite(width) ? width - 2 * MARGIN - roomOf(columns) : 0;
  const even = columns.length > 1 ? Math.max(0, spare / (columns.length - 1)) : 0;
  const more = Math.min(even, last ? MOST_GAP / 2 : MOST_GAP);
  let x = MARGIN;
  const parts = columns.map(({ gap, ...its }, i): Placed => {
    if (i > 0) x += gap + more;
    const middle = x + its.wide / 2;
    x += its.wide;
    return { ...its, x: middle };
  });
  const reach = Math.max(40, ...parts.map(({ outline }) => outline.high));
  const axis = (parts.some(({ turned }) => turned) ? HEAD : 10) + reach;
  const numbers = axis + reach + NUMBER + 10;
  const lines = Math.max(...parts.map(({ names }) => names.length));
  const high = numbers + NUMBER + 6 + lines * NAME_LINE + 12;
  return { parts, axis, numbers, high };
}
