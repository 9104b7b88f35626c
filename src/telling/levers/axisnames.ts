import { LINE, linesOf, SIZE, widthOf } from '../scene/index.ts';

/** The name of an axis in lines, below its foot: a base line, and the x that its anchor means. */
export interface AxisName {
  readonly names: readonly string[];
  readonly nameX: number;
  readonly nameY: number;
  readonly anchor: 'start' | 'middle';
}

const MOST = 96; // a longer name takes another line
const BESIDE = 6; // from a leader to the name that flies from it

/**
 * Names for axes whose feet stand at `xs`, in any order: centred in one row where they fit, else
 * as flags that fly to the right of leaders, so that no name lies on a name or on a leader. Also
 * how far they reach, right and down.
 */
export function nameAxes(called: readonly string[], xs: readonly number[], foot: number) {
  const texts = called.map((name) => linesOf(name, SIZE, MOST));
  const widths = texts.map((lines) => Math.max(...lines.map((line) => widthOf(line, SIZE))));
  const order = xs.map((_, k) => k).toSorted((a, b) => (xs[a] ?? 0) - (xs[b] ?? 0) || a - b);
  const centred = order.every((k, i) => {
    const next = order[i + 1];
    if (next === undefined) return true;
    return (xs[next] ?? 0) - (xs[k] ?? 0) >= ((widths[k] ?? 0) + (widths[next] ?? 0)) / 2 + 10;
  });
  const rows = centred ? xs.map(() => 0) : flagRows(order, xs, widths);
  const tops = topsOf(rows, texts);
  const names = texts.map((lines, k): AxisName => {
    const nameY = foot + 24 + SIZE + (tops[rows[k] ?? 0] ?? 0);
    return centred
      ? { names: lines, nameX: xs[k] ?? 0, nameY, anchor: 'middle' }
      : { names: lines, nameX: (xs[k] ?? 0) + BESIDE, nameY, anchor: 'start' };
  });
  const ends = names.map(({ nameX }, k) => nameX + (widths[k] ?? 0) / (centred ? 2 : 1));
  return { names, right: Math.max(0, ...ends), low: foot + 32 + (tops.at(-1) ?? 0) };
}

// From the right: each goes below all whose leaders its name would meet. So a name has beside it
// only names that end before it, and leaders that have ended above.
function flagRows(order: readonly number[], xs: readonly number[], widths: readonly number[]) {
  const rows = xs.map(() => 0);
  order.toReversed().forEach((k, i, from) => {
    const end = (xs[k] ?? 0) + BESIDE + (widths[k] ?? 0) + 10;
    const met = from.slice(0, i).filter((other) => (xs[other] ?? 0) < end);
    rows[k] = Math.max(0, ...met.map((other) => (rows[other] ?? 0) + 1));
  });
  return rows;
}

// How far down each row begins, and after the last one where they all end.
function topsOf(rows: readonly number[], texts: readonly (readonly string[])[]): number[] {
  const tops = [0];
  for (let row = 0; row <= Math.max(0, ...rows); row++) {
    const most = Math.max(0, ...texts.map((lines, k) => (rows[k] === row ? lines.length : 0)));
    tops.push((tops[row] ?? 0) + most * LINE + 4);
  }
  return tops;
}
