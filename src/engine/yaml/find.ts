import type { Passage } from './place.ts';
import type { Node } from './node.ts';

/**
 * Where a path of keys leads: to the key, or to the item of a list (by its text or its index),
 * or as far down that way as the file goes.
 */
export function find(root: Node, path: readonly string[]): Passage {
  let at: Passage = { from: 0, to: 0 };
  let node: Node | undefined = root;
  for (const step of path) {
    if (node?.kind === 'section') {
      const entry: Extract<Node, { kind: 'section' }>['entries'][number] | undefined =
        node.entries.find(({ key }) => key === step);
      if (!entry) break;
      [at, node] = [entry.keyAt, entry.value];
    } else if (node?.kind === 'list') {
      const { items }: Extract<Node, { kind: 'list' }> = node;
      node =
        items.find((item) => item.kind === 'scalar' && item.value === step) ?? items[Number(step)];
      if (!node) break;
      at = node.at;
    } else break;
  }
  return at;
}
