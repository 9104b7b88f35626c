import { type Node, type Problem, scalarText } from '../../engine/yaml/index.ts';
import { idOf } from './id.ts';

// One entry, one line: whatever merges texts line by line keeps or drops it whole, and a union
// of two copies keeps both of two people's. The id at its end is made of what stands before it,
// so a line that was cut short, or changed since, is known.
const LINE = /^- \{ (.*), id: ([a-z][0-9a-z]{7}) \}$/su;
const START = /^- \{ /u;

/** The line of an entry, from its YAML entries with commas between. */
export function lineOf(body: string): { readonly id: string; readonly line: string } {
  const id = idOf(body);
  return { id, line: `- { ${body}, id: ${id} }` };
}

/** What a line of a job file is: an entry (its body starts at `from`), or why it is none. */
export function lineRead(
  line: string,
): { readonly body: string; readonly id: string; readonly from: number } | 'half' | 'changed' {
  const [, body, id] = LINE.exec(line) ?? [];
  if (body === undefined || id === undefined) return 'half';
  const from = START.exec(line)?.[0].length ?? 0;
  return idOf(body) === id ? { body, id, from } : 'changed';
}

/** A node of YAML on one line. */
export function flowText(node: Node): string {
  switch (node.kind) {
    case 'scalar':
      return node.value === null
        ? ''
        : typeof node.value === 'string'
          ? quoted(node.value)
          : `${node.value}`;
    case 'list':
      return `[${node.items.map(flowText).join(', ')}]`;
    case 'section': {
      const entries = node.entries.map(({ key, value }) => `${quoted(key)}: ${flowText(value)}`);
      return `{ ${entries.join(', ')} }`;
    }
  }
}

/** A text as a YAML scalar within brackets, plain where that reads back as the same text. */
export function quoted(text: string): string {
  return LENGTH.test(text) ? text : scalarText(text);
}

// "0.42 mm", "1/64 in", "300 kPa": what readings are made of.
const LENGTH = /^[0-9]{1,7}(?:[./][0-9]{1,6})? [a-zµ]{1,6}$/iu;

/** What an entry tells of a thing, as a file of its kind has it. */
export function fileText({ of, text }: { readonly of: string; readonly text: string }): string {
  return `${quoted(of)}: ${text}`;
}

/** Problems at the line of an entry. */
export function atEntry(
  { line }: { readonly line: number },
  problems: readonly Problem[],
): Problem[] {
  return problems.map((problem) => ({ ...problem, place: { line, column: 1, length: 1 } }));
}
