/** A choice of sets that covers all that any of them does. */
export interface Cover {
  /** Indices of the sets, ascending. */
  readonly chosen: readonly number[];
  /** Whether no fewer sets do; false where the search was cut off. */
  readonly proven: boolean;
}

// A bench's worth of mistakes takes some hundreds.
const MOST_NODES = 20_000;

/**
 * The fewest sets that cover everything, by branch and bound; past its bound the best found so
 * far, which is at least as good as taking the largest again and again. A set is the bits of a
 * number. Of sets that do equally well, earlier ones are taken.
 */
export function smallestCover(sets: readonly bigint[], mostNodes = MOST_NODES): Cover {
  const all = sets.reduce((union, set) => union | set, 0n);
  const useful = undominated(sets);
  const elements = bitsOf(all);
  const holding = new Map(
    elements.map((e) => [e, useful.filter((i) => ((sets[i] as bigint) >> e) & 1n)]),
  );
  const reach = new Map(
    elements.map((e) => [e, (holding.get(e) ?? []).reduce((u, i) => u | (sets[i] as bigint), 0n)]),
  );
  const rare = elements.toSorted(
    (a, b) => (holding.get(a)?.length ?? 0) - (holding.get(b)?.length ?? 0),
  );
  let best: readonly number[] = greedy(sets, useful, all);
  let nodes = 0;
  const search = (left: bigint, chosen: readonly number[]): void => {
    if (left === 0n) {
      best = chosen;
      return;
    }
    if (++nodes > mostNodes) return;
    // Mistakes of which no set catches two need a set each.
    let apart = 0;
    let first: bigint | undefined;
    let pool = left;
    for (const e of rare) {
      if (!((pool >> e) & 1n)) continue;
      first ??= e;
      apart += 1;
      pool &= ~(reach.get(e) as bigint);
    }
    if (chosen.length + apart >= best.length) return;
    const gains = (holding.get(first as bigint) ?? []).map((i) => {
      return { i, gain: bitsOf((sets[i] as bigint) & left).length };
    });
    for (const { i } of gains.toSorted((a, b) => b.gain - a.gain)) {
      search(left & ~(sets[i] as bigint), [...chosen, i]);
    }
  };
  search(all, []);
  return { chosen: settled(sets, best), proven: nodes <= mostNodes };
}

// Sets that no other contains; of equal ones the first.
function undominated(sets: readonly bigint[]): number[] {
  const firsts = new Map<bigint, number>();
  sets.forEach((set, i) => {
    if (set !== 0n && !firsts.has(set)) firsts.set(set, i);
  });
  const distinct = [...firsts.keys()];
  return distinct
    .filter((set) => !distinct.some((other) => other !== set && (set & ~other) === 0n))
    .map((set) => firsts.get(set) as number);
}

function greedy(sets: readonly bigint[], useful: readonly number[], all: bigint): number[] {
  const chosen: number[] = [];
  for (let left = all; left !== 0n;) {
    const gain = (i: number) => bitsOf((sets[i] as bigint) & left).length;
    const next = useful.reduce((a, b) => (gain(b) > gain(a) ? b : a));
    chosen.push(next);
    left &= ~(sets[next] as bigint);
  }
  return chosen;
}

// Each in turn gives way to the earliest set that does what only it does.
function settled(sets: readonly bigint[], chosen: readonly number[]): number[] {
  const kept = [...chosen];
  kept.forEach((_, k) => {
    const others = kept.reduce((u, i, j) => (j === k ? u : u | (sets[i] as bigint)), 0n);
    const own = (sets[kept[k] as number] as bigint) & ~others;
    kept[k] = sets.findIndex((set) => (own & ~set) === 0n);
  });
  return kept.toSorted((a, b) => a - b);
}

function bitsOf(set: bigint): bigint[] {
  const bits: bigint[] = [];
  for (let e = 0n; set >> e !== 0n; e++) if ((set >> e) & 1n) bits.push(e);
  return bits;
}
