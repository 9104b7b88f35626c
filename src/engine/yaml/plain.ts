import type { Span } from './place.ts';
import {
  type Entry,
  type List,
  MOST_LEVELS,
  type Node,
  type Scalar,
  type Section,
} from './node.ts';

/**
 * The tree of a text that is written in the plain part of YAML, which nearly every file of ours
 * is: entries and items by indentation, lists and sections in brackets, words, figures, quotes
 * without escapes, paragraphs. Undefined for whatever else stands in it, mistakes too: the YAML
 * library reads that, and would read the rest alike, to the last place, in ten times the time.
 */
export function plainTree(text: string): Node | undefined {
  try {
    return new Plain(text).root();
  } catch (thrown) {
    if (thrown !== NOT_PLAIN) throw thrown;
    return undefined;
  }
}

const NOT_PLAIN = Symbol('not plain');

// What a word may begin with, and what it may be made of: outside brackets, and within.
const WORD = /(?![-?:,[\]{}#&*!|>'"%@` ])(?:[^\n:#]+|:(?=[^ \n])|(?<! )#)+/y;
const WORD_WITHIN = /(?![-?:#&*!|>'"%@` ])(?:[^\n,[\]{}:#]+|:(?=[^ \n,[\]{}])|(?<! )#)+/y;
const QUOTED = /"[^"\\\n]*"|'[^'\n]*'/y;
const KEY = new RegExp(`(?:${QUOTED.source}|${WORD.source}):(?=[ \\n])`, 'y');
const REST_OF_LINE = / *(?:(?<= )#[^\n]*)?(?:\n|$)/y;
const PARAGRAPH = /([>|])(-?)\n/y;
const NUMBER = /^[0-9]+(?:\.[0-9]*)?$/;
const ELSE = /^(?:[.0-9][-+.0-9a-fxo]*|\.inf|\.nan|~|null|true|false)$/i;
const LONGEST_KEY = 1000;

class Plain {
  private readonly text: string;
  private pos = 0;
  /** The column at which the next line with something on it begins; -1 behind the last. */
  private indent = 0;
  /** Behind the line on which the last value ended. */
  private end = 0;

  constructor(text: string) {
    this.text = text;
    if (/[\t\r\ufeff]/.test(text)) throw NOT_PLAIN;
  }

  root(): Node {
    this.nextLine();
    if (this.indent !== 0) throw NOT_PLAIN;
    return this.block(0, 0);
  }

  private block(column: number, level: number): Node {
    if (level >= MOST_LEVELS) throw NOT_PLAIN;
    return this.at('-') ? this.items(column, level) : this.entries(column, level);
  }

  private items(column: number, level: number): List {
    const from = this.pos;
    const items: Node[] = [];
    do {
      const dash = this.pos;
      if (!this.at('-') || this.text[dash + 1] !== ' ') throw NOT_PLAIN;
      this.pos += 1;
      this.blanks();
      const inner = column + this.pos - dash;
      KEY.lastIndex = this.pos;
      if (KEY.test(this.text)) items.push(this.block(inner, level + 1));
      else {
        items.push(this.value(column, level + 1));
        this.endOfLine();
      }
    } while (this.goesOn(column));
    return { kind: 'list', items, flow: false, at: { from, to: this.end } };
  }

  private entries(column: number, level: number): Section {
    const from = this.pos;
    const entries = new Map<string, Entry>();
    do {
      const { key, keyAt } = this.key(WORD);
      this.blanks();
      const below = this.at('\n') || this.at('#');
      if (below) {
        this.endOfLine();
        if (this.indent <= column) throw NOT_PLAIN;
        this.pos += this.indent;
      }
      let value: Node;
      if (below && !this.bracket()) value = this.block(this.indent, level + 1);
      else if (this.at('>') || this.at('|')) value = this.paragraph(column);
      else {
        value = this.value(column, level + 1);
        this.endOfLine();
      }
      if (entries.has(key)) throw NOT_PLAIN;
      entries.set(key, { key, keyAt, value });
    } while (this.goesOn(column));
    return {
      kind: 'section',
      entries: [...entries.values()],
      flow: false,
      at: { from, to: this.end },
    };
  }

  private key(word: RegExp): { key: string; keyAt: Span } {
    const { text: key, at: keyAt } = this.spelt(word);
    this.blanks();
    const next = this.text[this.pos + 1];
    if (!this.at(':') || (next !== ' ' && next !== '\n')) throw NOT_PLAIN;
    if (keyAt.to - keyAt.from > LONGEST_KEY || key === '<<') throw NOT_PLAIN;
    this.pos += 1;
    return { key, keyAt };
  }

  /** What stands behind a key or a dash; brackets may go on over lines right of `column`. */
  private value(column: number, level: number): Node {
    if (this.bracket()) return this.within(column, level);
    return this.scalar(WORD);
  }

  private within(column: number, level: number): Node {
    if (level >= MOST_LEVELS) throw NOT_PLAIN;
    const from = this.pos;
    const isList = this.at('[');
    const close = isList ? ']' : '}';
    const items: Node[] = [];
    const entries = new Map<string, Entry>();
    this.pos += 1;
    this.gap(column);
    if (!this.at(close)) {
      for (;;) {
        const named = isList ? undefined : this.key(WORD_WITHIN);
        this.gap(column);
        const value = this.bracket() ? this.within(column, level + 1) : this.scalar(WORD_WITHIN);
        if (!named) items.push(value);
        else if (entries.has(named.key)) throw NOT_PLAIN;
        else entries.set(named.key, { ...named, value });
        this.gap(column);
        if (this.at(close)) break;
        if (!this.at(',') || !/[ \n]/.test(this.text[this.pos + 1] ?? '')) throw NOT_PLAIN;
        this.pos += 1;
        this.gap(column);
      }
    }
    this.pos += 1;
    const at = { from, to: this.pos };
    if (isList) return { kind: 'list', items, flow: true, at };
    return { kind: 'section', entries: [...entries.values()], flow: true, at };
  }

  private scalar(word: RegExp): Scalar {
    const { text, at, quoted } = this.spelt(word);
    return { kind: 'scalar', value: quoted ? text : meant(text), at };
  }

  private spelt(word: RegExp): { text: string; at: Span; quoted: boolean } {
    const from = this.pos;
    const quoted = this.at('"') || this.at("'");
    const found = this.match(quoted ? QUOTED : word)[0];
    if (quoted) {
      this.pos += found.length;
      // Two in a row are one within.
      if (this.at("'")) throw NOT_PLAIN;
      return { text: found.slice(1, -1), at: { from, to: this.pos }, quoted };
    }
    let { length } = found;
    while (found[length - 1] === ' ') length -= 1;
    this.pos += length;
    return { text: found.slice(0, length), at: { from, to: this.pos }, quoted };
  }

  // Lines that all begin at one column, or are empty.
  private paragraph(column: number): Scalar {
    const from = this.pos;
    const [header, sign, chomp] = this.match(PARAGRAPH);
    this.pos += header.length;
    const first = this.column();
    if (first <= column) throw NOT_PLAIN;
    let [value, between] = ['', ''];
    for (this.end = this.pos; ;) {
      const lineEnd = this.text.indexOf('\n', this.pos);
      if (lineEnd < 0) throw NOT_PLAIN;
      const here = this.column();
      if (here !== first && this.pos + here < lineEnd) {
        if (here > column) throw NOT_PLAIN;
        break;
      }
      if (lineEnd === this.pos) between += '\n';
      else if (this.pos + here === lineEnd) throw NOT_PLAIN;
      else {
        // One end of a line is a blank, and of more the first is dropped.
        const joint = sign === '|' ? between : between === '\n' ? ' ' : between.slice(1);
        value += joint + this.text.slice(this.pos + here, lineEnd);
        between = '\n';
        this.end = lineEnd + 1;
      }
      this.pos = lineEnd + 1;
      if (this.pos === this.text.length) break;
    }
    this.pos = this.end;
    this.nextLine();
    if (chomp === '') value += '\n';
    return { kind: 'scalar', value, at: { from, to: this.end } };
  }

  private endOfLine(): void {
    const [rest] = this.match(REST_OF_LINE);
    this.pos += rest.length;
    this.end = this.pos;
    this.nextLine();
  }

  // To the start of the next line with something on it. A remark stands at the left edge or as
  // far in as what follows it; elsewhere it would belong to what stands before.
  private nextLine(): void {
    let remark = 0;
    while (this.pos < this.text.length) {
      const column = this.column();
      const first = this.text[this.pos + column];
      if (first !== '\n' && first !== '#' && first !== undefined) {
        if (remark > 0 && remark !== column) throw NOT_PLAIN;
        this.indent = column;
        return;
      }
      if (first === '#' && column > 0) {
        if (remark > 0 && remark !== column) throw NOT_PLAIN;
        remark = column;
      }
      const end = this.text.indexOf('\n', this.pos);
      this.pos = end < 0 ? this.text.length : end + 1;
    }
    if (remark > 0) throw NOT_PLAIN;
    this.indent = -1;
  }

  // Whether another entry or item stands at this column.
  private goesOn(column: number): boolean {
    if (this.indent > column) throw NOT_PLAIN;
    if (this.indent < column) return false;
    this.pos += column;
    return true;
  }

  // Blanks, ends of lines and remarks within brackets.
  private gap(column: number): void {
    for (;;) {
      this.blanks();
      if (this.at('#') && this.text[this.pos - 1] === ' ') {
        this.pos = this.text.indexOf('\n', this.pos);
        if (this.pos < 0) throw NOT_PLAIN;
      }
      if (!this.at('\n')) return;
      this.pos += 1;
      if (this.column() <= column) throw NOT_PLAIN;
    }
  }

  private column(): number {
    let column = 0;
    while (this.text[this.pos + column] === ' ') column += 1;
    return column;
  }

  private blanks(): void {
    while (this.at(' ')) this.pos += 1;
  }

  private bracket(): boolean {
    return this.at('[') || this.at('{');
  }

  private at(character: string): boolean {
    return this.text[this.pos] === character;
  }

  private match(pattern: RegExp): RegExpExecArray {
    pattern.lastIndex = this.pos;
    const found = pattern.exec(this.text);
    if (!found) throw NOT_PLAIN;
    return found;
  }
}

// YAML's other ways to write figures and true, and its words for nothing, are the library's.
function meant(word: string): string | number | boolean {
  if (NUMBER.test(word)) return Number(word);
  if (word === 'true' || word === 'false') return word === 'true';
  if (ELSE.test(word)) throw NOT_PLAIN;
  return word;
}
