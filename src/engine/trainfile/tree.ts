import { isAlias, isMap, isScalar, isSeq, parseDocument } from 'yaml';
import type { Findings } from './findings.ts';
import type { Span } from './place.ts';
import type { Syntax } from './problem.ts';

/** A file as entries, lists and scalars with their places; all that a train file may hold. */
export type Node = Scalar | List | Section;

export interface Scalar {
  readonly kind: 'scalar';
  /** null where nothing is written; then the span is empty, after the colon. */
  readonly value: string | number | boolean | null;
  readonly at: Span;
}

export interface List {
  readonly kind: 'list';
  readonly items: readonly Node[];
  readonly flow: boolean;
  readonly at: Span;
}

export interface Section {
  readonly kind: 'section';
  readonly entries: readonly Entry[];
  readonly flow: boolean;
  readonly at: Span;
}

export interface Entry {
  readonly key: string;
  readonly keyAt: Span;
  readonly value: Node;
}

/**
 * A text of this many characters is read in a second at worst, and 300 members with every
 * device and range take a third of it.
 */
export const MOST_CHARACTERS = 65_536;

// A train file has five levels.
const MOST_LEVELS = 12;

/**
 * The tree of a YAML 1.2 text, or undefined where it has none to speak of. Whatever is not
 * plain entries, lists and scalars is an error in `findings`. Never throws.
 */
export function parseTree(text: string, findings: Findings): Node | undefined {
  if (text.length > MOST_CHARACTERS) {
    const mistake = { problem: 'too large', characters: text.length, most: MOST_CHARACTERS } as const;
    findings.error({ from: 0, to: 0 }, mistake);
    return undefined;
  }
  const bad = BAD_CHARACTER.exec(text);
  if (bad) {
    const code = bad[0].codePointAt(0) as number;
    findings.error({ from: bad.index, to: bad.index + 1 }, { problem: 'bad character', code });
    return undefined;
  }
  try {
    return compose(text, findings);
  } catch (thrown) {
    // The composer calls itself a level at a time and runs out of stack.
    if (!(thrown instanceof RangeError)) throw thrown;
    findings.error({ from: 0, to: 0 }, { problem: 'too deep', most: MOST_LEVELS });
    return undefined;
  }
}

// What YAML calls not printable, and the mark that a decoder leaves where bytes were no text.
const BAD_CHARACTER = /[\0-\x08\x0b\x0c\x0e-\x1f\x7f\p{Cs}\ufffd-\uffff]/u;

function compose(text: string, findings: Findings): Node | undefined {
  const document = parseDocument(text, {
    version: '1.2',
    schema: 'core',
    merge: false,
    resolveKnownTags: false,
    stringKeys: true,
    // Theirs compares every pair of keys.
    uniqueKeys: false,
    prettyErrors: false,
  });
  if (document.errors.length > 0) {
    tellSyntax(document.errors, text, findings);
    return undefined;
  }
  const { yaml, tags } = document.directives ?? {};
  if (yaml?.explicit || Object.keys(tags ?? {}).length > 1 || document.warnings.length > 0) {
    const from = Math.max(0, text.search(/^%/m));
    const [what, to] = text[from] === '%' ? (['directive', from + 1] as const) : (['tag', from] as const);
    findings.error({ from, to }, { problem: 'refused', what });
    return undefined;
  }
  return new Converter(text, findings).node(document.contents, { from: 0, to: 0 }, 0);
}

// From the library's nodes to ours, refusing what a train file has no use for.
class Converter {
  private readonly text: string;
  private readonly findings: Findings;

  constructor(text: string, findings: Findings) {
    this.text = text;
    this.findings = findings;
  }

  /** `gap` is where the node would stand if there were one. */
  node(node: unknown, gap: Span, level: number): Node {
    if (isAlias(node)) {
      const at = spanOf(node.range, gap);
      this.findings.error(at, { problem: 'refused', what: 'alias' });
      return { kind: 'scalar', value: null, at };
    }
    if (!isScalar(node) && !isSeq(node) && !isMap(node)) return { kind: 'scalar', value: null, at: gap };
    const at = spanOf(node.range, gap);
    if (node.anchor !== undefined) this.refuse('anchor', `&${node.anchor}`, at.from);
    if (node.tag !== undefined) this.refuse('tag', '!', at.from);
    if (isScalar(node)) return { kind: 'scalar', value: plainValue(node.value), at };
    const flow = node.flow === true;
    if (level >= MOST_LEVELS) {
      this.findings.error(at, { problem: 'too deep', most: MOST_LEVELS });
      return { kind: 'list', items: [], flow, at };
    }
    if (isSeq(node)) {
      const items = node.items.map((item) => this.node(item, { from: at.from, to: at.from }, level + 1));
      return { kind: 'list', items, flow, at };
    }
    return { kind: 'section', entries: this.entries(node.items, level), flow, at };
  }

  private entries(pairs: readonly { key: unknown; value: unknown }[], level: number): Entry[] {
    const entries = new Map<string, Entry>();
    for (const pair of pairs) {
      const keyNode = isScalar(pair.key) ? pair.key : undefined;
      const keyAt = spanOf(keyNode?.range, { from: 0, to: 0 });
      const key = String(keyNode?.value ?? '');
      if (key === '<<') {
        this.findings.error(keyAt, { problem: 'refused', what: 'merge key' });
        continue;
      }
      if (keyNode?.anchor !== undefined) this.refuse('anchor', `&${keyNode.anchor}`, keyAt.from);
      if (keyNode?.tag !== undefined) this.refuse('tag', '!', keyAt.from);
      const value = this.node(pair.value, { from: keyAt.to, to: keyAt.to }, level + 1);
      if (entries.has(key)) this.findings.error(keyAt, { problem: 'duplicate key', key });
      else entries.set(key, { key, keyAt, value });
    }
    return [...entries.values()];
  }

  // The library keeps no place of an anchor or tag: it stands before its node.
  private refuse(what: 'anchor' | 'tag', mark: string, before: number): void {
    const from = Math.max(0, this.text.lastIndexOf(mark, before));
    const length = /^\S+/.exec(this.text.slice(from, from + 80))?.[0].length ?? 1;
    this.findings.error({ from, to: from + length }, { problem: 'refused', what });
  }
}

function spanOf(range: readonly number[] | null | undefined, gap: Span): Span {
  const [from, to] = range ?? [];
  return from === undefined || to === undefined ? gap : { from, to };
}

function plainValue(value: unknown): Scalar['value'] {
  switch (typeof value) {
    case 'string':
    case 'number':
    case 'boolean':
      return value;
    default:
      return null;
  }
}

interface SyntaxError {
  readonly code: string;
  readonly message: string;
  readonly pos: readonly [number, number];
}

// One a line: the first mistake on a line makes the others.
function tellSyntax(errors: readonly SyntaxError[], text: string, findings: Findings): void {
  const told = new Set<number>();
  for (const { code, message, pos } of errors.toSorted((a, b) => a.pos[0] - b.pos[0])) {
    const lineStart = text.lastIndexOf('\n', Math.min(pos[0], text.trimEnd().length) - 1);
    if (told.has(lineStart)) continue;
    told.add(lineStart);
    const span = { from: pos[0], to: pos[1] };
    switch (code) {
      case 'MULTIPLE_DOCS':
        findings.error(span, { problem: 'several documents' });
        break;
      case 'RESOURCE_EXHAUSTION':
        findings.error(span, { problem: 'too deep', most: MOST_LEVELS });
        break;
      case 'BAD_DIRECTIVE':
        findings.error(span, { problem: 'refused', what: 'directive' });
        break;
      case 'BAD_ALIAS':
      case 'ALIAS_PROPS':
        findings.error(span, { problem: 'refused', what: 'alias' });
        break;
      case 'MULTIPLE_ANCHORS':
        findings.error(span, { problem: 'refused', what: 'anchor' });
        break;
      case 'TAG_RESOLVE_FAILED':
      case 'MULTIPLE_TAGS':
      case 'BAD_COLLECTION_TYPE':
        findings.error(span, { problem: 'refused', what: 'tag' });
        break;
      default:
        findings.error(span, { problem: 'syntax', what: syntaxOf(code, message) });
    }
  }
}

function syntaxOf(code: string, message: string): Syntax {
  switch (code) {
    case 'TAB_AS_INDENT':
      return 'tab';
    case 'BAD_DQ_ESCAPE':
      return 'escape';
    case 'BAD_SCALAR_START':
      return 'needs quotes';
    case 'NON_STRING_KEY':
      return 'key';
    case 'BLOCK_AS_IMPLICIT_KEY':
      return 'second colon';
    case 'BLOCK_IN_FLOW':
      return 'missing comma';
  }
  // These codes stand for several mistakes, which only the library's message tells apart.
  if (message.startsWith('Flow ')) return 'unclosed bracket';
  if (message.startsWith('Missing closing')) return 'unclosed quote';
  if (message.startsWith('Missing ,')) return 'missing comma';
  if (message.startsWith('Implicit map keys')) return 'missing colon';
  return code === 'BAD_INDENT' ? 'indent' : 'unexpected text';
}
