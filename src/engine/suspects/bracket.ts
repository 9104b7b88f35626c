import type { Cause } from './cause.ts';
import type { Prediction } from './prediction.ts';

/**
 * The causes (as places among them) that none of the tests parts, together. A test parts two
 * causes if it would show different things at least half of the time; one that makes them only
 * somewhat more or less likely (a burnt smell) does not.
 */
export function bracketsOf(
  causes: readonly Cause[],
  predictions: readonly Prediction[],
): number[][] {
  const alike = predictions.map(alikeIn);
  const groups = new Map<string, number[]>();
  causes.forEach((_, c) => {
    const key = alike.map((of) => of[c]).join(' ');
    const group = groups.get(key);
    if (group) group.push(c);
    else groups.set(key, [c]);
  });
  return [...groups.values()];
}

// By cause, a number that it has in common with those that the test does not part from it, by
// itself or by way of a third: so that to be alike is the same for all of a bracket.
function alikeIn({ chances }: Prediction): number[] {
  const rows: (readonly number[])[] = [];
  const groups: number[] = [];
  const rowOf = chances.map((row) => {
    const known = rows.findIndex((other) => distance(row, other) === 0);
    if (known >= 0) return known;
    const near = rows.flatMap((other, r) => (distance(row, other) < PARTS ? [groups[r]] : []));
    const [group = rows.length] = near;
    groups.forEach((its, r) => {
      if (near.includes(its)) groups[r] = group;
    });
    groups.push(group);
    return rows.push(row) - 1;
  });
  return rowOf.map((row) => groups[row] as number);
}

const PARTS = 0.5;

// The part of the time in which two rows show different things (their total variation).
function distance(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, chance, o) => sum + Math.abs(chance - (b[o] as number)), 0) / 2;
}
