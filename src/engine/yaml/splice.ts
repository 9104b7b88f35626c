import type { Passage } from './place.ts';
import type { EntryNode, List, Node, SectionNode } from './node.ts';
import { flowText, scalarText, quoted, sectionLines, type Value } from './write.ts';

/** A text in place of what stands in a passage. */
export interface Splice extends Passage {
  readonly text: string;
}

export function spliced(text: string, splices: readonly Splice[]): string {
  let result = text;
  for (const { from, to, text: put } of splices.toSorted((a, b) => b.from - a.from)) {
    result = result.slice(0, from) + put + result.slice(to);
  }
  return result;
}

/** The change that puts a value at a path; undefined where the layout does not let it. */
export function spliceForEntry(
  text: string,
  root: Node,
  path: readonly string[],
  value: Value,
): Splice[] | undefined {
  const [found, depth] = descend(root, path);
  const rest = path.slice(depth);
  const json = isJson(root, text);
  const target = found.at(-1) as Node;
  if (rest.length === 0)
    return replacement(text, target, found.at(-2), path.at(-1) ?? '', flowText(value, json));
  const [key = '', ...deeper] = rest;
  const inner = deeper.reduceRight<Value>((its, step) => new Map([[step, its]]), value);
  const entry = `${json ? quoted(key) : scalarText(key)}: ${flowText(inner, json)}`;
  if (target.kind === 'scalar') {
    const parent = found.at(-2);
    if (target === root && target.value === null) return beginning(text, key, inner);
    if (target.value !== null || parent?.kind !== 'section') return undefined;
    if (parent.flow)
      return replacement(text, target, parent, path[depth - 1] ?? '', `{ ${entry} }`);
    // An empty section: its first entry goes on a line below its key.
    const owner = parent.entries.find((e) => e.value === target) as EntryNode;
    const at = lineEnd(text, owner.keyAt.to);
    return [{ from: at, to: at, text: `${newline(text)}${indentOf(text, owner)}  ${entry}` }];
  }
  if (target.kind === 'list') return undefined;
  const last = target.entries.at(-1);
  if (target.flow) {
    if (last) return [{ from: endOf(text, last), to: endOf(text, last), text: `, ${entry}` }];
    return [{ ...target.at, text: `{ ${entry} }` }];
  }
  if (!last) return undefined;
  const at = lineEnd(text, endOf(text, last));
  const isSection = target === root && inner instanceof Map && inner.size > 0;
  const lines = isSection
    ? ['', ...sectionLines(key, inner, json)]
    : [indentOf(text, last) + entry];
  return [{ from: at, to: at, text: lines.map((line) => newline(text) + line).join('') }];
}

// The first entry of a file that says nothing yet, below what comments it has.
function beginning(text: string, key: string, value: Value): Splice[] {
  const lines =
    value instanceof Map && value.size > 0
      ? sectionLines(key, value, false)
      : [`${scalarText(key)}: ${flowText(value, false)}`];
  const start = text === '' || text.endsWith('\n') ? '' : newline(text);
  const at = text.length;
  return [{ from: at, to: at, text: start + lines.map((line) => line + newline(text)).join('') }];
}

/** The change that takes out what is at a path; undefined where the layout does not let it. */
export function spliceForRemoval(
  text: string,
  root: Node,
  path: readonly string[],
): Splice[] | undefined {
  const [found] = descend(root, path);
  const target = found.at(-1) as Node;
  const parent = found.at(-2);
  if (!parent || parent.kind === 'scalar') return undefined;
  const passages = childPassages(text, parent);
  const index =
    parent.kind === 'list'
      ? parent.items.indexOf(target)
      : parent.entries.findIndex(({ value }) => value === target);
  const own = passages[index] as Passage;
  if (!parent.flow) {
    const from = text.lastIndexOf('\n', own.from - 1) + 1;
    if (
      !/^[ ]*(?:- *)?$/.test(text.slice(from, own.from)) ||
      (parent.kind === 'list' && passages.length === 1)
    ) {
      return undefined;
    }
    const to = text.indexOf('\n', lineEnd(text, own.to));
    return [{ from, to: to < 0 ? text.length : to + 1, text: '' }];
  }
  const next = passages[index + 1];
  const before = passages[index - 1];
  if (next) {
    const comma = commaIn(text, own.to, next.from);
    if (comma === undefined) return undefined;
    const blanks = /^[ ]*/.exec(text.slice(comma + 1))?.[0].length ?? 0;
    return [
      { from: own.from, to: own.to, text: '' },
      { from: comma, to: comma + 1 + blanks, text: '' },
    ];
  }
  if (!before) return [{ ...own, text: '' }];
  const comma = commaIn(text, before.to, own.from);
  if (comma === undefined) return undefined;
  // On a line of its own the indent stays, for the bracket that closes.
  const gap = text.slice(comma + 1, own.from);
  const blanks = gap.trim() === '' && !gap.includes('\n') ? gap.length : 0;
  return [
    { from: comma, to: comma + 1, text: '' },
    { from: own.from - blanks, to: own.to, text: '' },
  ];
}

// The nodes along a path from the root, as far as there are any, and how many steps that is.
function descend(root: Node, path: readonly string[]): [found: Node[], depth: number] {
  const found = [root];
  for (const step of path) {
    const node = found.at(-1) as Node;
    const next =
      node.kind === 'section'
        ? node.entries.find(({ key }) => key === step)?.value
        : node.kind === 'list'
          ? node.items[Number(step)]
          : undefined;
    if (!next) break;
    found.push(next);
  }
  return [found, found.length - 1];
}

function replacement(
  text: string,
  target: Node,
  parent: Node | undefined,
  key: string,
  put: string,
): Splice[] | undefined {
  // A block of lines may hold comments.
  if (target.kind !== 'scalar' && !target.flow) return undefined;
  if (target.at.from < target.at.to) {
    const block = text[target.at.to - 1] === '\n';
    return [{ ...target.at, text: block ? put + newline(text) : put }];
  }
  if (parent?.kind !== 'section') return undefined;
  const entry = parent.entries.find((e) => e.key === key) as EntryNode;
  const colon = /^\s*:/.exec(text.slice(entry.keyAt.to))?.[0].length;
  const at = entry.keyAt.to + (colon ?? 0);
  return [{ from: at, to: at, text: `${colon === undefined ? ':' : ''} ${put}` }];
}

function childPassages(text: string, parent: List | SectionNode): Passage[] {
  if (parent.kind === 'section') {
    return parent.entries.map((entry) => ({ from: entry.keyAt.from, to: endOf(text, entry) }));
  }
  return parent.items.map((item) => ({ from: item.at.from, to: lastOf(text, item) }));
}

// Where an entry ends: after its value, or after the colon of none.
function endOf(text: string, { keyAt, value }: EntryNode): number {
  if (value.kind === 'scalar' && value.at.from === value.at.to) {
    return keyAt.to + (/^\s*:/.exec(text.slice(keyAt.to))?.[0].length ?? 0);
  }
  return lastOf(text, value);
}

// A block may end with a key of nothing, and then with its colon.
function lastOf(text: string, node: Node): number {
  if (node.kind === 'scalar' || node.flow) return node.at.to;
  const last = node.kind === 'section' ? node.entries.at(-1) : node.items.at(-1);
  if (!last) return node.at.to;
  return 'key' in last ? endOf(text, last) : lastOf(text, last);
}

// The end of the line that an offset is on, or ends.
function lineEnd(text: string, offset: number): number {
  const from = text[offset - 1] === '\n' ? offset - 1 : offset;
  const end = text.indexOf('\n', from);
  if (end < 0) return text.length;
  return text[end - 1] === '\r' ? end - 1 : end;
}

function indentOf(text: string, { keyAt }: EntryNode): string {
  return ' '.repeat(keyAt.from - (text.lastIndexOf('\n', keyAt.from - 1) + 1));
}

function commaIn(text: string, from: number, to: number): number | undefined {
  for (let i = from; i < to; i++) {
    if (text[i] === '#') i = text.indexOf('\n', i);
    else if (text[i] === ',') return i;
  }
  return undefined;
}

function newline(text: string): string {
  return /\r?\n/.exec(text)?.[0] ?? '\n';
}

function isJson(root: Node, text: string): boolean {
  return root.kind === 'section' && root.flow && text.trimStart().startsWith('{');
}
