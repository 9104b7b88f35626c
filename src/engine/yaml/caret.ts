/** Where someone is typing in a train file that may be half written. */
export interface Caret {
  /** The keys and indices around it; of a value, the last is its own. */
  readonly path: readonly string[];
  readonly at: 'key' | 'value';
  /** Whether it stands within brackets or braces. */
  readonly flow: boolean;
  /** Where the word that is being typed begins, and what of it stands before the caret. */
  readonly from: number;
  readonly word: string;
  /** Keys and items that stand before it in the same section or list. */
  readonly beside: readonly string[];
}

/**
 * The caret at an offset; undefined in a comment or in a text of several lines. Reads only what
 * stands before it, and forgives whatever is not closed.
 */
export function caretAt(text: string, offset: number): Caret | undefined {
  const reader = new CaretReader();
  let start = 0;
  for (const line of text.slice(0, offset).split('\n')) {
    reader.line(line, start);
    start += line.length + 1;
  }
  return reader.caret(text.slice(0, offset));
}

interface Block {
  readonly indent: number;
  key: string;
  readonly beside: string[];
}

interface Flow {
  readonly mark: '{' | '[';
  key: string | undefined;
  readonly beside: string[];
}

// Indentation makes sections of lines, brackets and braces those on a line.
const KEY = /^("(?:[^"\\]|\\.)*"|'(?:[^']|'')*'|[^\s#"'{}[\],:-][^:#]*?)\s*:(?=\s|$)/u;

class CaretReader {
  private blocks: Block[] = [];
  private flows: Flow[] = [];
  /** The indent of the key whose text goes on for several lines. */
  private proseOf: number | undefined;
  private from = 0;
  private state: 'key' | 'value' | 'told' | 'comment' = 'key';
  private indent = 0;

  line(line: string, start: number): void {
    const blank = /^\s*/u.exec(line)?.[0].length ?? 0;
    if (this.proseOf !== undefined) {
      if (line.trim() === '' || blank > this.proseOf) return;
      this.proseOf = undefined;
    }
    this.from = start + blank;
    if (this.flows.length > 0) {
      this.flow(line, blank, start);
      return;
    }
    this.indent = blank;
    this.state = 'key';
    if (line[blank] === '#') {
      this.state = 'comment';
      return;
    }
    const found = KEY.exec(line.slice(blank));
    if (!found?.[1]) return;
    const open = this.blocks.findIndex(({ indent }) => indent >= blank);
    const beside = open >= 0 && this.blocks[open]?.indent === blank ? this.blocks[open].beside : [];
    if (open >= 0) this.blocks.length = open;
    const key = unquoted(found[1]);
    beside.push(key);
    this.blocks.push({ indent: blank, key, beside });
    this.state = 'value';
    const rest = blank + found[0].length;
    if (/^\s*[>|][-+\d]*\s*(?:#.*)?$/u.test(line.slice(rest))) this.proseOf = blank;
    else this.flow(line, rest, start);
  }

  caret(before: string): Caret | undefined {
    if (this.state === 'comment' || this.proseOf !== undefined) return undefined;
    const flow = this.flows.at(-1);
    const word = before.slice(this.from);
    if (!flow) {
      if (this.state === 'told') return undefined;
      const at = this.state === 'value' ? 'value' : 'key';
      const depth = this.blocks.findIndex(({ indent }) => indent >= this.indent);
      const around = at === 'value' || depth < 0 ? this.blocks : this.blocks.slice(0, depth);
      const same = depth >= 0 && this.blocks[depth]?.indent === this.indent;
      const beside = at === 'key' && same ? (this.blocks[depth]?.beside ?? []) : [];
      const path = around.map(({ key }) => key);
      return { path, at, flow: false, from: this.from, word, beside };
    }
    const path = [
      ...this.blocks.map(({ key }) => key),
      ...this.flows.flatMap(({ key }) => (key === undefined ? [] : [key])),
    ];
    const at = flow.mark === '[' || flow.key !== undefined ? 'value' : 'key';
    return { path, at, flow: true, from: this.from, word, beside: flow.beside };
  }

  // The brackets and braces of a line from a column on.
  private flow(line: string, column: number, start: number): void {
    const begin = (at: number) => {
      const blank = /^[ \t]*/u.exec(line.slice(at))?.[0].length ?? 0;
      this.from = start + at + blank;
    };
    begin(column);
    this.state = 'value';
    for (let i = column; i < line.length; i++) {
      const flow = this.flows.at(-1);
      const mark = line[i] ?? '';
      if ((mark === '"' || mark === "'") && this.from === start + i) {
        const end = line.indexOf(mark, i + 1);
        if (end < 0) return;
        i = end;
      } else if (mark === '#' && /\s/u.test(line[i - 1] ?? ' ')) {
        this.state = 'comment';
        return;
      } else if ((mark === '{' || mark === '[') && this.from === start + i) {
        this.flows.push({ mark, key: mark === '[' ? '0' : undefined, beside: [] });
        begin(i + 1);
      } else if (flow && (mark === '}' || mark === ']')) {
        this.flows.pop();
        if (this.flows.length === 0) this.state = 'told';
        this.from = start + i + 1;
      } else if (flow && mark === ',') {
        const item = unquoted(line.slice(this.from - start, i).trim());
        if (flow.mark === '[') {
          flow.beside.push(item);
          flow.key = `${Number(flow.key) + 1}`;
        } else flow.key = undefined;
        begin(i + 1);
      } else if (
        flow?.mark === '{' &&
        mark === ':' &&
        /^(?:[\s,{}[\]]|$)/u.test(line.slice(i + 1))
      ) {
        flow.key = unquoted(line.slice(this.from - start, i).trim());
        flow.beside.push(flow.key);
        begin(i + 1);
      }
    }
  }
}

function unquoted(word: string): string {
  return /^(["']).*\1$/u.test(word) ? word.slice(1, -1) : word;
}
