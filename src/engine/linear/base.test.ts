import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dot, programmes, small, sparse } from '../../../test/programmes.ts';
import { Base } from './base.ts';
import type { Int } from './integer.ts';
import { entry, type Row } from './programme.ts';
import { toText } from './rational.ts';
import { Tally } from '../../../test/tally.ts';

test('a base leaves free just what its rows leave free', () => {
  const tally = new Tally({ 'all tied': 80, 'some free': 450, 'rows in vain': 120 });
  fc.assert(
    fc.property(programmes(6, sparse, small), ({ meshes, width }) => {
      const base = new Base(width, meshes);
      base.free.forEach((_, j) => {
        const unit = base.free.map((__, k) => (k === j ? 1 : 0));
        const point = base.expand(unit, 1);
        for (const row of meshes) expect(dot(row, point.nums)).toBe(0n);
        expect(toText(entry(point, base.free[j] as number))).toBe('1');
      });
      expect(base.free.length).toBe(width - rank(meshes, width));
      tally.met(base.free.length === 0 ? 'all tied' : 'some free');
      if (width - base.free.length < meshes.length) tally.met('rows in vain');
    }),
    { numRuns: 1000 },
  );
  tally.enough();
});

// By plain elimination over BigInt, cross-multiplied.
function rank(rows: readonly Row[], width: number): number {
  const matrix = rows.map((row) => {
    const cells = Array.from({ length: width }, () => 0n);
    row.at.forEach((column, k) => (cells[column] = BigInt(row.coef[k] as Int)));
    return cells;
  });
  let found = 0;
  for (let column = 0; column < width; column++) {
    const at = matrix.findIndex((cells, i) => i >= found && cells[column] !== 0n);
    if (at < 0) continue;
    const [pivot] = matrix.splice(at, 1) as [bigint[]];
    matrix.splice(found++, 0, pivot);
    for (const cells of matrix.slice(found)) {
      const factor = cells[column] as bigint;
      cells.forEach(
        (cell, c) => (cells[c] = cell * (pivot[column] as bigint) - factor * (pivot[c] as bigint)),
      );
    }
  }
  return found;
}
