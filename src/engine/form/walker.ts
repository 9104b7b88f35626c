import { newWord, ourWord, wordMeant } from '../words/index.ts';
import {
  type Expected,
  type Findings,
  type List,
  nearest,
  type Node,
  type Scalar,
  type SectionNode,
  type Passage,
} from '../yaml/index.ts';
import { type Entries, fits, type Form, type Leaf, mayBeAbsent, type Union } from './form.ts';
import type { Mention, NamedKind } from './role.ts';

// A name longer than this is near to nothing.
const LONGEST = 80;

// Walks tree and definitions side by side. Only scalars are handed to valibot, so that every
// place is at hand, and so that a key like `__proto__` is a name like any other.
export class Walker {
  readonly mentions: Mention[] = [];
  private readonly text: string;
  private readonly findings: Findings;

  private readonly ownMember: (name: string) => string;

  /** `ownMember` puts a member's part into the train file's words. */
  constructor(text: string, findings: Findings, ownMember: (name: string) => string) {
    this.text = text;
    this.findings = findings;
    this.ownMember = ownMember;
  }

  /** `owner` is pointed at where the value is missing. Sections of names become maps. */
  value(node: Node, form: Form, path: readonly string[], owner: Passage): unknown {
    switch (form.type) {
      case 'exact_optional':
        return this.value(node, form.wrapped, path, owner);
      case 'nullish':
        if (node.kind === 'scalar' && node.value === null) return new Map();
        return this.value(node, form.wrapped, path, owner);
      case 'union':
        if (node.kind === 'section') {
          const [only, ...others] = form.options.filter((o) => o.type === 'strict_object');
          if (only && others.length === 0) return this.value(node, only, path, owner);
          return this.oneOf(node, form, path, owner);
        }
        if (node.kind === 'list') {
          const array = form.options.find((o) => o.type === 'array');
          if (array) return this.value(node, array, path, owner);
          const size = node.items.length;
          const option = form.options.find(
            (o) => o.type === 'strict_tuple' && o.items.length === size,
          );
          const list = option ?? form.options.find((o) => o.type === 'array');
          if (list) return this.value(node, list, path, owner);
        }
        if (node.kind === 'scalar') {
          const leaf = form.options.find((o) => o.type === 'string');
          if (leaf) return this.value(node, leaf, path, owner);
        }
        return this.unexpected(node, form.message, owner);
      case 'record':
        if (node.kind !== 'section') return this.unexpected(node, form.message, owner);
        return this.record(node, form.key, form.value, path);
      case 'strict_object':
        if (node.kind !== 'section') {
          // A form without a word of its own is told by its keys; a whole file would be too many.
          const keys = form.message === 'section' && path.length > 0;
          return this.unexpected(node, keys ? Object.keys(form.entries) : form.message, owner);
        }
        return this.object(node, form.entries, [], path, owner);
      case 'array':
        if (node.kind !== 'list') return this.unexpected(node, form.message, owner);
        if (node.items.length === 0 && !fits(form, []))
          return this.unexpected(node, form.message, owner);
        return this.items(node, () => form.item, path);
      case 'strict_tuple':
        if (node.kind !== 'list' || node.items.length !== form.items.length) {
          return this.unexpected(node, form.message, owner);
        }
        return this.items(node, (i) => form.items[i] as Form, path);
      default:
        return this.scalar(node, form, path, owner);
    }
  }

  private scalar(node: Node, form: Leaf, path: readonly string[], owner: Passage): unknown {
    const found = node.kind === 'scalar' ? this.wordOf(node.value, form, node.at) : undefined;
    if (found === undefined || !fits(form, found)) {
      const { literal: newest } = form;
      if (path[0] !== 'holdturn' || typeof newest !== 'number' || !isAbove(found, newest)) {
        return this.unexpected(node, form.message, owner);
      }
      this.findings.error(node.at, { problem: 'newer version', version: found, newest });
      return undefined;
    }
    const named = this.mention(form, `${found}`, path, node.at);
    return typeof found === 'string' ? named : found;
  }

  // A word to choose, where another of the trade stands for it, or the name that it had.
  private wordOf(found: Scalar['value'], form: Leaf, at: Passage): Scalar['value'] {
    if (form.type !== 'picklist' || fits(form, found)) return found;
    const [ours, renamed] = [ourWord(`${found}`), newWord(`${found}`)];
    if (fits(form, ours)) return ours;
    if (renamed === undefined || !fits(form, renamed)) return found;
    this.findings.renamed(at, `${found}`, renamed);
    return renamed;
  }

  private items(node: List, formOf: (i: number) => Form, path: readonly string[]): unknown[] {
    return node.items.map((item, i) => this.value(item, formOf(i), [...path, `${i}`], node.at));
  }

  // Entries that have a mistake in them are left out.
  private record(
    node: SectionNode,
    keyForm: Leaf,
    form: Form,
    path: readonly string[],
  ): Map<string, unknown> {
    const values = new Map<string, unknown>();
    for (const { key, keyAt, value } of node.entries) {
      const before = this.findings.errorCount;
      let name = key;
      if (fits(keyForm, key)) name = this.mention(keyForm, key, [...path, key], keyAt);
      else
        this.findings.error(keyAt, { problem: 'expected', what: keyForm.message, found: cut(key) });
      const read = this.value(value, form, [...path, key], keyAt);
      if (this.findings.errorCount === before) values.set(name, read);
    }
    return values;
  }

  // A set or a device: its keys tell which kind of one. A set that nothing tells is plain.
  private oneOf(
    node: SectionNode,
    { options, telling = [] }: Union,
    path: readonly string[],
    owner: Passage,
  ): unknown {
    const family = telling.map(([key]) => key);
    const keys = new Set(node.entries.map(({ key }) => ourWord(key)));
    const meant = new Set(node.entries.map(({ key }) => wordMeant(key, new Set(family))));
    const told = telling.find(([key]) => keys.has(key) || meant.has(key))?.[1];
    if (told?.type === 'strict_object') {
      return this.object(node, told.entries, family, path, owner);
    }
    const before = this.findings.errorCount;
    for (const { key, keyAt } of node.entries) this.strange(key, keyAt, {}, family, keys);
    if (this.findings.errorCount === before) {
      const first = options.map((option) => telling.find(([, its]) => its === option)?.[0] ?? '');
      this.findings.error(owner, { problem: 'missing key', keys: first });
    }
    return undefined;
  }

  // `family`: the keys of the kinds that it might have been.
  private object(
    node: SectionNode,
    entries: Entries,
    family: readonly string[],
    path: readonly string[],
    owner: Passage,
  ): object {
    const values: Record<string, unknown> = Object.create(null);
    const keys = new Set(node.entries.map(({ key }) => keyIn(entries, key)));
    const offered = new Set<string | undefined>();
    for (const { key: word, keyAt, value } of node.entries) {
      const key = keyIn(entries, word);
      if (key === newWord(word)) this.findings.renamed(keyAt, word, key);
      const form = Object.hasOwn(entries, key) ? entries[key] : undefined;
      if (key in values) this.findings.error(keyAt, { problem: 'duplicate key', key: word });
      else if (form) values[key] = this.value(value, form, [...path, key], keyAt);
      else offered.add(this.strange(word, keyAt, entries, family, keys));
    }
    for (const [key, form] of Object.entries(entries)) {
      // A key that is offered in place of a misspelt one is not missed as well.
      if (mayBeAbsent(form) || keys.has(key) || offered.has(key)) continue;
      this.findings.error(owner, { problem: 'missing key', keys: [key] });
    }
    return values;
  }

  // A key that does not belong here; returns what is offered in its place.
  private strange(
    key: string,
    at: Passage,
    entries: Entries,
    family: readonly string[],
    keys: ReadonlySet<string>,
  ): string | undefined {
    if (family.includes(key)) {
      const beside = family.find((word) => keys.has(word) && Object.hasOwn(entries, word));
      this.findings.error(at, { problem: 'misplaced key', key, beside: beside ?? '' });
      return undefined;
    }
    const candidates = new Set(
      [...Object.keys(entries), ...family].filter((word) => !keys.has(word)),
    );
    const near =
      key.length > LONGEST ? undefined : (wordMeant(key, candidates) ?? nearest(key, candidates));
    this.findings.error(at, {
      problem: 'unknown key',
      key: cut(key),
      ...(near !== undefined && { near }),
    });
    return near;
  }

  // Notes a name; returns it in the train file's own words.
  private mention(form: Form, found: string, path: readonly string[], at: Passage): string {
    const { role } = form;
    if (role === undefined) return found;
    const name = MAY_BE_MEMBER.has(role.names) ? this.ownMember(found) : found;
    this.mentions.push({ role, name, path, at });
    return name;
  }

  private unexpected(node: Node, what: Expected | readonly string[], owner: Passage): undefined {
    const at = node.at.from < node.at.to ? node.at : owner;
    const found = cut(this.text.slice(node.at.from, node.at.to));
    if (typeof what === 'string') this.findings.error(at, { problem: 'expected', what, found });
    else this.findings.error(at, { problem: 'expected keys', keys: what, found });
  }
}

const MAY_BE_MEMBER: ReadonlySet<NamedKind> = new Set(['member', 'carried', 'anything']);

function isAbove(found: Scalar['value'] | undefined, newest: number): found is number {
  return typeof found === 'number' && found > newest;
}

// The key that a word stands for: itself, its new name, or our word for it.
function keyIn(entries: Entries, word: string): string {
  if (Object.hasOwn(entries, word)) return word;
  const renamed = newWord(word);
  return renamed !== undefined && Object.hasOwn(entries, renamed) ? renamed : ourWord(word);
}

// What a person wrote, short enough for a sentence.
function cut(found: string): string {
  const line = found.replace(/\s+/gu, ' ');
  return line.length > 40 ? `${line.slice(0, 39).replace(/\p{Cs}$/u, '')}…` : line;
}
