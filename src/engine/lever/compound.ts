import { equal, minus, over, plus, type Rational, times } from '../linear/index.ts';
import { fromEndToEnd, type Lever, type LeverNode } from './lever.ts';

/**
 * The levers with those made one that share two members or more: what two members settle, both
 * levers settle, so they are one straight line with all the nodes of both. A body that two sets
 * know by different names is one node of it, under the first name.
 */
export function compoundLevers(levers: readonly Lever[]): Lever[] {
  const all = [...levers];
  for (let i = 0; i < all.length; i++) {
    for (let j = i + 1; j < all.length; j++) {
      const one = compounded(all[i] as Lever, all[j] as Lever);
      if (!one) continue;
      all[i] = one;
      all.splice(j, 1);
      j = i; // what has grown may now share two members with one that it passed
    }
  }
  return all;
}

function compounded(a: Lever, b: Lever): Lever | undefined {
  if (hasTwins(a) || hasTwins(b)) return undefined;
  const matches = a.nodes.flatMap((node) => {
    const other = b.nodes.find(({ body }) => body === node.body);
    return other ? [{ here: node.at, there: other.at }] : [];
  });
  const [first] = matches;
  const second = matches.find(({ here, there }) => {
    return first && !equal(here, first.here) && !equal(there, first.there);
  });
  if (!first || !second) return undefined;
  const scale = over(minus(second.here, first.here), minus(second.there, first.there));
  const moved = (there: Rational) => plus(first.here, times(scale, minus(there, first.there)));
  // Where more members than two are shared, all must agree, or both levers can only turn as one.
  if (!matches.every(({ here, there }) => equal(here, moved(there)))) return undefined;
  const known = new Set(a.nodes.map(({ body }) => body));
  const added = b.nodes
    .filter(({ body }) => !known.has(body))
    .map((node): LeverNode => ({ ...node, at: moved(node.at) }));
  const nodes = fromEndToEnd([...a.nodes, ...added]);
  return { within: [...a.within, ...b.within], nodes };
}

// Two nodes on one body: the lever cannot tilt.
function hasTwins({ nodes }: Lever): boolean {
  return new Set(nodes.map(({ body }) => body)).size < nodes.length;
}
