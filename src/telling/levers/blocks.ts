/** Axes that stand together: those of a lever, or one alone. Members go by labels of bodies. */
export type Block = readonly { readonly member: string; readonly at: number }[];

/**
 * Puts blocks side by side, turned round where that helps, so that what is tied stands near: the
 * order from which moving one block, turned or not, leads to no shorter links. `at` runs from 0
 * to 1. `ties` are members that devices join; they pull less than a member that stands twice.
 */
export function arranged(
  blocks: readonly Block[],
  ties: readonly (readonly [string, string])[],
): readonly Block[] {
  let best = blocks;
  let least = lengthOf(best, ties);
  for (let better = true; better;) {
    better = false;
    for (const next of changesOf(best)) {
      const length = lengthOf(next, ties);
      if (length >= least - 1e-9) continue;
      [best, least, better] = [next, length, true];
    }
  }
  return best;
}

function* changesOf(blocks: readonly Block[]): Generator<Block[]> {
  for (const [i, block] of blocks.entries()) {
    const turned = block.map(({ member, at }) => ({ member, at: 1 - at })).toReversed();
    for (let j = 0; j < blocks.length; j++) {
      const rest = blocks.toSpliced(i, 1);
      yield rest.toSpliced(j, 0, block);
      if (block.length > 1) yield rest.toSpliced(j, 0, turned);
    }
  }
}

// Counted in axes that a link passes. The case needs no link: it is the line of no speed.
function lengthOf(blocks: readonly Block[], ties: readonly (readonly [string, string])[]): number {
  const places = new Map<string, number[]>();
  let place = 0;
  for (const block of blocks) {
    for (const { member } of block) places.set(member, [...(places.get(member) ?? []), place++]);
    place++;
  }
  places.delete('case');
  let length = 0;
  for (const at of places.values()) length += (at.at(-1) ?? 0) - (at[0] ?? 0);
  for (const [a, b] of ties) {
    const gaps = (places.get(a) ?? []).flatMap((x) => {
      return (places.get(b) ?? []).map((y) => Math.abs(x - y));
    });
    if (gaps.length > 0) length += Math.min(...gaps) / 4;
  }
  return length;
}
