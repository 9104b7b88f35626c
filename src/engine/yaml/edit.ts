import { type Data, dataOf, same, withEntry, withoutEntry } from './data.ts';
import { Findings } from './findings.ts';
import type { Node } from './node.ts';
import { Lines } from './place.ts';
import { type Splice, spliced, spliceForEntry, spliceForRemoval } from './splice.ts';
import { parseTree } from './tree.ts';
import type { Value } from './write.ts';

/** The text after an edit, in which all but the edit stands as it stood; or why there is none. */
export type Edited = { readonly text: string } | { readonly refused: Refusal };

export type Refusal =
  /** The text is no YAML that a train file may hold: mend it first. */
  | 'unreadable'
  /** The path leads nowhere, or to something that has no such entry. */
  | 'no such place'
  /** The place is laid out in a way that a splice cannot keep: edit it by hand. */
  | 'laid out by hand'
  | 'not a name'
  | 'name taken';

/**
 * Puts a value at a path of keys, in place of the one there or as a new entry, which comes last
 * in its section; sections that are missing are made.
 */
export function put(text: string, path: readonly string[], value: Value): Edited {
  const root = treeOf(text);
  if (!root) return { refused: 'unreadable' };
  const wanted = withEntry(dataOf(root), path, value);
  if (wanted === undefined) return { refused: 'no such place' };
  return proved(text, spliceForEntry(text, root, path, value), wanted);
}

/** Takes an entry, or an item of a list (by its index), out of the file. */
export function remove(text: string, path: readonly string[]): Edited {
  const root = treeOf(text);
  if (!root) return { refused: 'unreadable' };
  const wanted = withoutEntry(dataOf(root), path);
  if (wanted === undefined) return { refused: 'no such place' };
  return proved(text, spliceForRemoval(text, root, path), wanted);
}

// An edit is only handed out when reading it again gives what was wanted.
export function proved(text: string, splices: readonly Splice[] | undefined, wanted: Data): Edited {
  if (!splices) return { refused: 'laid out by hand' };
  const edited = spliced(text, splices);
  const root = treeOf(edited);
  return root && same(dataOf(root), wanted) ? { text: edited } : { refused: 'laid out by hand' };
}

export function treeOf(text: string): Node | undefined {
  const findings = new Findings(new Lines(text));
  const root = parseTree(text, findings);
  return findings.errorCount === 0 ? root : undefined;
}
