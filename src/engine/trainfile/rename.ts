import { isBorne, isMemberName, isName, type Mention } from '../form/index.ts';
import {
  dataOf,
  type Edited,
  proved,
  quoted,
  scalarText,
  type Splice,
  treeOf,
} from '../yaml/index.ts';
import { readFile } from './reading.ts';

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
  if (!dotless || !(what === 'member' ? isMemberName(to) : isName(to)))
    return { refused: 'not a name' };
  // Who else bears the name keeps what is told of it.
  const kept = mentions.filter((mention) => renamedTo(mention, renaming) === undefined);
  const renamed = mentions.flatMap((mention) => {
    const name = renamedTo(mention, renaming);
    const stays = mention.role.names === 'anything' && isBorne(mention.name, kept);
    return name === undefined || stays ? [] : [{ mention, name }];
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
function renamedTo({ role, name, path }: Mention, renaming: Renaming): string | undefined {
  const { names } = role;
  const { what, from, to } = renaming;
  const any = names === 'anything';
  const ofMember = names === 'member' || names === 'carried' || any;
  const within = (thing: string) =>
    name.startsWith(`${thing}.`) ? to + name.slice(thing.length) : undefined;
  if (any && what !== 'wheel' && name === from) return to;
  switch (what) {
    case 'set':
      if (names === 'set') return name === from ? to : undefined;
      return ofMember ? within(from) : undefined;
    case 'device':
      if (names === 'carried' || any) return name === from ? to : within(from);
      return (names === 'device' || names === 'gap') && name === from ? to : undefined;
    case 'member':
      return ofMember && name === from ? to : undefined;
    case 'gear pair':
    case 'range':
    case 'part':
      return names === what && name === from ? to : undefined;
    case 'gear':
      return names === 'gear' && path[1] === renaming.within && name === from ? to : undefined;
    case 'wheel': {
      if (ofMember)
        return name === `${renaming.within}.${from}` ? `${renaming.within}.${to}` : undefined;
      return names === 'wheel' && path[1] === renaming.within && name === from ? to : undefined;
    }
  }
}

// Members, sets, gear pairs and devices keep clear of one another's names.
function clashes({ role, name, path }: Mention, renaming: Renaming): boolean {
  const { what } = renaming;
  if (name !== renaming.to)
    return !['range', 'gear', 'part'].includes(what) && renaming.to === 'case';
  if (role.names === 'member')
    return what !== 'range' && what !== 'gear' && what !== 'wheel' && what !== 'part';
  if (!role.own) return false;
  const own = role.names;
  switch (what) {
    case 'range':
      return own === 'range';
    case 'gear':
    case 'wheel':
      return own === what && path[1] === renaming.within;
    case 'part':
      return own === 'part' || SHARING_NAMES.has(own);
    default:
      // A part may be called after a member.
      return (own === 'part' && what !== 'member') || SHARING_NAMES.has(own);
  }
}

const SHARING_NAMES: ReadonlySet<string> = new Set(['set', 'gear pair', 'device']);
