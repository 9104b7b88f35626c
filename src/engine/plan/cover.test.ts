import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { smallestCover } from './cover.ts';

// Every choice of sets, the smaller first.
function fewest(sets: readonly bigint[]): number {
  const all = sets.reduce((union, set) => union | set, 0n);
  let least = sets.length;
  for (let choice = 0; choice < 1 << sets.length; choice++) {
    const chosen = sets.filter((_, i) => (choice >> i) & 1);
    const union = chosen.reduce((u, set) => u | set, 0n);
    if (union === all) least = Math.min(least, chosen.length);
  }
  return least;
}

describe('the smallest cover', () => {
  it.each<[string, bigint[], number[]]>([
    ['of nothing is nothing', [], []],
    ['takes the earlier of two equal sets', [0b1n, 0b1n], [0]],
    ['leaves out what others do', [0b11n, 0b110n, 0b100n, 0b1000n, 0b1001n], [1, 4]],
    // The largest set first would take three.
    ['is not misled by the largest set', [0b001111n, 0b010101n, 0b101010n], [1, 2]],
  ])('%s', (_, sets, chosen) => {
    expect(smallestCover(sets)).toEqual({ chosen, proven: true });
  });

  it('is no larger than any other choice (seed 20251125)', () => {
    const sets = fc.array(fc.bigInt({ min: 0n, max: 255n }), { maxLength: 10 });
    const law = fc.property(sets, (some) => {
      const { chosen, proven } = smallestCover(some);
      const union = (its: readonly bigint[]) => its.reduce((u, set) => u | set, 0n);
      expect(union(chosen.map((i) => some[i] as bigint))).toBe(union(some));
      expect(chosen.length).toBe(fewest(some));
      expect(proven).toBe(true);
    });
    fc.assert(law, { seed: 20_251_125, numRuns: 300 });
  });

  it('covers all, and does not claim that it is proven, where the search is cut off', () => {
    const { chosen, proven } = smallestCover([0b011n, 0b110n, 0b101n], 1);
    expect(chosen).toHaveLength(2);
    expect(proven).toBe(false);
  });
});
