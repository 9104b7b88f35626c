import * as v from 'valibot';
import { DEVICE_NAME, MEMBER } from './name.ts';
import { type Data, dataOf, same, withEntry, withoutEntry } from './data.ts';
import { Findings } from './findings.ts';
import type { Mention } from './mention.ts';
import { Lines } from './place.ts';
import { readFile } from './reading.ts';
import { type Splice, spliced, spliceForEntry, spliceForRemoval } from './splice.ts';
import type { Node } from './node.ts';
import { parseTree } from './tree.ts';
import { quoted, scalarText, type Value } from './write.ts';

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

/** What can be renamed. A wheel is one of a set's, a gear one of a range's: `within` names it. */
export type Renaming =
  | {
      readonly what: 'set' | 'gear pair' | 'device' | 'member' | 'range' | 'part';
      readonly from: string;
      readonly to: string;
    }
  | {
      readonly what: 'wheel' | 'gear';
      readonly within: string;
      readonly from: string;
      readonly to: string;
    };

/** Renames a thing wherever the file names it. */
export function rename(text: string, renaming: Renaming): Edited {
  const root = treeOf(text);
  if (!root) return { refused: 'unreadable' };
  const { mentions } = readFile(text);
  const { what, from, to } = renaming;
  const dotless = what !== 'member' || !to.includes('.');
  if (!dotless || !v.is(what === 'member' ? MEMBER : DEVICE_NAME, to))
    return { refused: 'not a name' };
  const renamed = mentions.flatMap((mention) => {
    const name = renamedTo(mention, renaming);
    return name === undefined ? [] : [{ mention, name }];
  });
  if (renamed.length === 0) return { refused: 'no such place' };
  if (from !== to && mentions.some((mention) => clashes(mention, renaming)))
    return { refused: 'name taken' };
  const names = new Map(renamed.map(({ mention, name }) => [mention.at.from, name]));
  const splices = renamed.map(({ mention: { at }, name }): Splice => {
    const mark = text[at.from];
    return { ...at, text: mark === '"' || mark === "'" ? quoted(name) : scalarText(name) };
  });
  return proved(text, splices, dataOf(root, names));
}

// The new name of a mention, or undefined where it is of something else.
function renamedTo({ as, name, path }: Mention, renaming: Renaming): string | undefined {
  const { what, from, to } = renaming;
  const isMember = as === 'member' || as === 'join' || as === 'on a part';
  switch (what) {
    case 'set':
      if ((as === 'set' || as === 'shared') && name === from) return to;
      return isMember && name.startsWith(`${from}.`) ? to + name.slice(from.length) : undefined;
    case 'device':
      if (OF_DEVICES.has(as)) return name === from ? to : undefined;
      if (as !== 'on a part') return undefined;
      if (name === from) return to;
      return name.startsWith(`${from}.`) ? to + name.slice(from.length) : undefined;
    case 'member':
      return isMember && name === from ? to : undefined;
    case 'gear pair':
    case 'range':
      return as === what && name === from ? to : undefined;
    case 'part':
      return (as === 'part' || as === 'cover') && name === from ? to : undefined;
    case 'gear':
      return as === 'gear' && path[1] === renaming.within && name === from ? to : undefined;
    case 'wheel': {
      if (isMember)
        return name === `${renaming.within}.${from}` ? `${renaming.within}.${to}` : undefined;
      const isWheel = as === 'wheel' || as === 'meshed' || as === 'carried';
      return isWheel && path[1] === renaming.within && name === from ? to : undefined;
    }
  }
}

const OF_DEVICES: ReadonlySet<Mention['as']> = new Set([
  'device',
  'applied',
  'packed',
  'set band',
  'sized',
  'fed',
  'closed',
]);

// Members, sets, gear pairs and devices keep clear of one another's names.
function clashes({ as, name, path }: Mention, renaming: Renaming): boolean {
  if (name !== renaming.to)
    return !['range', 'gear', 'part'].includes(renaming.what) && renaming.to === 'case';
  switch (renaming.what) {
    case 'range':
      return as === 'range';
    case 'gear':
      return as === 'gear' && path[1] === renaming.within;
    case 'wheel':
      return as === 'wheel' && path[1] === renaming.within;
    case 'part':
      return as === 'part' || as === 'set' || as === 'gear pair' || as === 'device';
    default:
      // A part may be called after a member.
      if (as === 'part') return renaming.what !== 'member';
      return (
        as === 'set' || as === 'gear pair' || as === 'device' || as === 'member' || as === 'join'
      );
  }
}

// An edit is only handed out when reading it again gives what was wanted.
function proved(text: string, splices: readonly Splice[] | undefined, wanted: Data): Edited {
  if (!splices) return { refused: 'laid out by hand' };
  const edited = spliced(text, splices);
  const root = treeOf(edited);
  return root && same(dataOf(root), wanted) ? { text: edited } : { refused: 'laid out by hand' };
}

function treeOf(text: string): Node | undefined {
  const findings = new Findings(new Lines(text));
  const root = parseTree(text, findings);
  return findings.errorCount === 0 ? root : undefined;
}
