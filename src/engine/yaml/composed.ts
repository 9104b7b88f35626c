import { isAlias, isMap, isScalar, isSeq, parseDocument } from 'yaml';
import type { Findings } from './findings.ts';
import {
  BAD_CHARACTER,
  blockPassage,
  type EntryNode,
  MOST_LEVELS,
  type Node,
  type Scalar,
  type Within,
} from './node.ts';
import type { Passage } from './place.ts';
import { tellSyntax } from './syntax.ts';

/** The tree of any text, by the YAML library; refuses what a train file has no use for. */
export function composedTree(text: string, findings: Findings): Node | undefined {
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
    tellSyntax(document.errors, document.contents, text, findings);
    return undefined;
  }
  const { yaml, tags } = document.directives ?? {};
  const unknown = document.warnings.some(({ code }) => code === 'BAD_DIRECTIVE');
  if (yaml?.explicit || Object.keys(tags ?? {}).length > 1 || unknown) {
    const from = Math.max(0, text.search(/^%/m));
    const to = text.indexOf('\n', from);
    findings.error({ from, to }, { problem: 'refused', what: 'directive' });
    return undefined;
  }
  const before = findings.errorCount;
  const converter = new Converter(text, findings);
  const root = converter.node(document.contents, { from: 0, to: 0 }, 0);
  // What stands where something was refused would only be told as a second mistake.
  return findings.errorCount - before > converter.passed ? undefined : root;
}

// From the library's nodes to ours, refusing what a train file has no use for.
class Converter {
  /** Mistakes behind which the rest still means what it says. */
  passed = 0;
  private readonly text: string;
  private readonly findings: Findings;

  constructor(text: string, findings: Findings) {
    this.text = text;
    this.findings = findings;
  }

  /** `gap` is where the node would stand if there were one. */
  node(node: unknown, gap: Passage, level: number): Node {
    if (isAlias(node)) {
      const at = passageOf(node.range, gap);
      this.findings.error(at, { problem: 'refused', what: 'alias' });
      return { kind: 'scalar', value: null, at };
    }
    if (!isScalar(node) && !isSeq(node) && !isMap(node))
      return { kind: 'scalar', value: null, at: gap };
    const at = passageOf(node.range, gap);
    if (node.anchor !== undefined) this.refuse('anchor', `&${node.anchor}`, at.from);
    if (node.tag !== undefined) this.refuse('tag', '!', at.from);
    if (isScalar(node)) {
      const value = plainValue(node.value);
      if (value === null && at.from === at.to) return { kind: 'scalar', value, at: gap };
      return {
        kind: 'scalar',
        value: typeof value === 'string' ? this.sound(value, at) : value,
        at,
      };
    }
    const flow = node.flow === true;
    if (level >= MOST_LEVELS) {
      this.findings.error(at, { problem: 'too deep', most: MOST_LEVELS });
      return { kind: 'list', items: [], flow, at };
    }
    if (isSeq(node)) {
      const items = node.items.map((item) =>
        this.node(item, { from: at.from, to: at.from }, level + 1),
      );
      return collection({ kind: 'list', items }, flow, at);
    }
    return collection({ kind: 'section', entries: this.entries(node.items, level) }, flow, at);
  }

  private entries(pairs: readonly { key: unknown; value: unknown }[], level: number): EntryNode[] {
    const entries = new Map<string, EntryNode>();
    for (const pair of pairs) {
      const keyNode = isScalar(pair.key) ? pair.key : undefined;
      const keyAt = passageOf(keyNode?.range, { from: 0, to: 0 });
      const key = this.sound(String(keyNode?.value ?? ''), keyAt);
      if (key === '<<') {
        this.findings.error(keyAt, { problem: 'refused', what: 'merge key' });
        continue;
      }
      if (keyNode?.anchor !== undefined) this.refuse('anchor', `&${keyNode.anchor}`, keyAt.from);
      if (keyNode?.tag !== undefined) this.refuse('tag', '!', keyAt.from);
      const value = this.node(pair.value, { from: keyAt.to, to: keyAt.to }, level + 1);
      if (entries.has(key)) {
        this.findings.error(keyAt, { problem: 'duplicate key', key });
        this.passed += 1;
      } else entries.set(key, { key, keyAt, value });
    }
    return [...entries.values()];
  }

  // What may not stand in the file may not be written as an escape either.
  private sound(text: string, at: Passage): string {
    const bad = BAD_CHARACTER.exec(text);
    if (!bad) return text;
    this.findings.error(at, { problem: 'bad character', code: bad[0].codePointAt(0) as number });
    this.passed += 1;
    return text.replaceAll(new RegExp(BAD_CHARACTER, 'gu'), '?');
  }

  // The library keeps no place of an anchor or tag: it stands before its node.
  private refuse(what: 'anchor' | 'tag', mark: string, before: number): void {
    let from = Math.max(0, this.text.lastIndexOf(mark, before));
    if (this.text[from - 1] === '!') from -= 1;
    const length = /^\S+/.exec(this.text.slice(from, from + 80))?.[0].length ?? 1;
    this.findings.error({ from, to: from + length }, { problem: 'refused', what });
  }
}

// The library takes the comments below a block into it.
function collection(within: Within, flow: boolean, at: Passage): Node {
  return { ...within, flow, at: flow ? at : blockPassage(within, at) };
}

function passageOf(range: readonly number[] | null | undefined, gap: Passage): Passage {
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
