import { type Mention, Walker } from '../form/index.ts';
import { FILE } from '../sections/index.ts';
import { ourWord } from '../words/index.ts';
import type { Findings, Node } from '../yaml/index.ts';

/** A file whose entries have the right form, whatever their names mean. */
export interface Outline {
  /** By section, what was well formed; the rest is left out, and is an error already. */
  readonly entries: Readonly<Record<string, unknown>>;
  readonly mentions: readonly Mention[];
}

/** Reads a tree by the definitions; what does not fit them is an error in `findings`. */
export function outlineOf(root: Node, text: string, findings: Findings): Outline {
  const walker = new Walker(text, findings, partNamer(root));
  const start = { from: root.at.from, to: root.at.from };
  const entries = walker.value(root, FILE as never, [], start);
  return { entries: (entries ?? {}) as Outline['entries'], mentions: walker.mentions };
}

// Another word for a set's part is turned into ours, unless the set has a wheel of that name;
// a bevel set has pinions.
function partNamer(root: Node): (member: string) => string {
  const under = (node: Node | undefined, key: string) =>
    node?.kind === 'section' ? node.entries.find((entry) => entry.key === key)?.value : undefined;
  return (member) => {
    const [set = '', part] = member.split('.');
    if (part === undefined || ourWord(part) === part) return member;
    const its = under(under(root, 'sets'), set);
    const own = under(under(its, 'wheels'), part) ?? under(its, 'sides');
    return own ? member : `${set}.${ourWord(part)}`;
  };
}
