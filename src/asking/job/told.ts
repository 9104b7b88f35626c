import { Findings, Lines, type Node, parseTree } from '../../engine/yaml/index.ts';
import { flowText, KINDS, type Told } from '../../shop/records/index.ts';
import type { FileLimit } from '../../engine/train/index.ts';
import type { ShelfSaid } from '../../engine/trainfile/index.ts';
import { NoAnswer, unknown } from '../request/index.ts';

/** Who writes an entry, and what a hand check was expected to show. */
export interface EntryRequest {
  readonly by?: string;
  readonly predicted?: string;
}

/** What an entry says, by the words in which somebody tells it: its kind first. */
export function entryTold(words: readonly string[], { by, predicted }: EntryRequest): Told {
  const [given = '', first = '', second, ...more] = words;
  const kind = KINDS.find((one) => one === given.trim().toLowerCase());
  if (!kind) throw new NoAnswer({ refused: 'no.entry kind', ...unknown(given, KINDS) });
  const one = kind === 'note' || kind === 'signed';
  const [third, ...beyond] = more;
  const spare = one && second !== undefined ? [second, ...more] : kind === 'built' ? beyond : more;
  if (spare.length > 0) throw new NoAnswer({ refused: 'bad.excess', given: spare.join(' ') });
  if (first.trim() === '') throw new NoAnswer({ refused: 'bad.missing words', kind });
  switch (kind) {
    case 'photograph':
      return { kind, name: first.trim(), ...(second !== undefined && shownOf(second)) };
    case 'removed':
      if (second !== undefined) throw new NoAnswer({ refused: 'bad.excess', given: second });
      return { kind, part: first.trim() };
    case 'installed':
      return { kind, part: first.trim(), ...installedBy(second?.trim()) };
    case 'built':
      return { kind, task: first.trim(), ...builtBy(first, second, third) };
    case 'unbuilt':
      if (second === undefined) throw new NoAnswer({ refused: 'bad.missing words', kind });
      return { kind, step: first.trim(), why: second.trim() };
    case 'note':
      return { kind, note: first };
    case 'signed':
      return { kind, what: first };
  }
  const [of, said] = second === undefined ? halves(first) : [first.trim(), second.trim()];
  if (of === '' || said === '') throw new NoAnswer({ refused: 'bad.missing words', kind });
  switch (kind) {
    case 'seen':
      return { kind, of, text: flowText(nodeOf(said, kind)) };
    case 'reading':
      return { kind, of, text: flowText(nodeOf(said, kind)) };
    case 'chosen':
      return { kind, of, part: said };
    case 'check':
      return { kind, of, ...(predicted !== undefined && { predicted }), felt: said };
    case 'shelf':
      return { kind, of, shelf: shelfOf(nodeOf(said, kind), said) };
    case 'limit': {
      // Who typed it is known; where it comes from may not be.
      const { of: which, sure, ...limit } = limitOf(nodeOf(said, kind), said);
      if (sure !== undefined && sure !== 'yes')
        throw new NoAnswer({ refused: 'bad.words', kind, given: said });
      const told = { ...(which !== undefined && { which }), ...(sure && { sure: true as const }) };
      return { kind, of, ...told, limit: { ...limit, by: limit.by ?? by ?? '' } };
    }
  }
}

// Of a step what it is about, then what of it; of anything else "right: what it did"; "found: why" of
// what stood so already.
function builtBy(
  task: string,
  second = '',
  third = '',
): Partial<Pick<Extract<Told, { kind: 'built' }>, 'of' | 'went' | 'said'>> {
  const [said, of] = /^\s*\d+\s*$/u.test(task)
    ? [third.trim(), second.trim()]
    : [second.trim(), ''];
  const [, went, rest = said] = /^(right|wrong|found)(?::\s*(.*))?$/isu.exec(said) ?? [];
  return {
    ...(of !== '' && { of }),
    ...(went !== undefined && { went: went.toLowerCase() as 'right' | 'wrong' | 'found' }),
    ...(rest !== '' && { said: rest }),
  };
}

// "replaced", or why the same one went on again.
function installedBy(said: string | undefined): {
  readonly replaced?: true;
  readonly why?: string;
} {
  if (said === undefined || said === '') return {};
  return said.toLowerCase() === 'replaced' ? { replaced: true } : { why: said };
}

// "part: sun shell" or "step: 4".
function shownOf(said: string): { readonly part?: string; readonly step?: string } {
  const bad = () => new NoAnswer({ refused: 'bad.words', kind: 'photograph', given: said });
  const findings = new Findings(new Lines(`{ ${said} }`));
  const node = parseTree(`{ ${said} }`, findings);
  if (node?.kind !== 'section' || findings.list().length > 0) throw bad();
  const of = node.entries.map(({ key, value }) => {
    if ((key !== 'part' && key !== 'step') || value.kind !== 'scalar') throw bad();
    return [key, `${value.value ?? ''}`] as const;
  });
  return Object.fromEntries(of);
}

// "D 2: slips" in one word of the shell.
function halves(text: string): [string, string] {
  const colon = text.indexOf(': ');
  return colon < 0
    ? [text.trim(), '']
    : [text.slice(0, colon).trim(), text.slice(colon + 2).trim()];
}

// "feeler: [1.42 mm]" or "0.82 mm, 0.84 mm", without the outer brackets or with them.
function nodeOf(said: string, kind: 'seen' | 'reading' | 'limit' | 'shelf'): Node {
  const plain = kind === 'seen' ? said : said.replaceAll(COMMA, '.');
  const bare = kind === 'seen' || /^[[{]/u.test(plain);
  const text = bare ? plain : plain.includes(':') ? `{ ${plain} }` : `[${plain}]`;
  const findings = new Findings(new Lines(text));
  const node = parseTree(text, findings);
  const [problem] = findings.list();
  if (problem || !node) throw new NoAnswer({ refused: 'bad.words', kind, given: said });
  return node;
}

// A comma between two digits before a unit is a point, or it would end an item of a list.
const COMMA =
  /(?<=[0-9]),(?=[0-9]{1,6} ?(?:mm|[uµμ]m|in|inch|inches|"|thou|mil|kPa|MPa|bar|psi|Nm)\b)/gu;

// "part: snap ring, fitted: 1.60 mm, sizes: [1.40 mm, 1.60 mm]"; the entry's reading refuses what is none.
function shelfOf(node: Node, said: string): ShelfSaid {
  const bad = () => new NoAnswer({ refused: 'bad.words', kind: 'shelf', given: said });
  if (node.kind !== 'section') throw bad();
  const textOf = (key: string) => {
    const its = node.entries.find((one) => one.key === key)?.value;
    return its?.kind === 'scalar' ? `${its.value ?? ''}` : undefined;
  };
  const row = node.entries.find(({ key }) => key === 'sizes')?.value;
  const [part, fitted, tolerance] = ['part', 'fitted', 'tolerance'].map(textOf);
  if (row?.kind !== 'list' || part === undefined || fitted === undefined) throw bad();
  const sizes = row.items.map((its) => (its.kind === 'scalar' ? `${its.value ?? ''}` : ''));
  return { part, fitted, sizes, ...(tolerance !== undefined && { tolerance }) };
}

// Its values as texts, of which the entry's reading refuses those that are none.
function limitOf(node: Node, said: string): SaidLimit {
  if (node.kind !== 'section')
    throw new NoAnswer({ refused: 'bad.words', kind: 'limit', given: said });
  const texts = node.entries.map(({ key, value }) => [
    key,
    value.kind === 'scalar' ? `${value.value}` : '',
  ]);
  return Object.fromEntries(texts) as SaidLimit;
}

type SaidLimit = FileLimit & { readonly of?: string; readonly sure?: string };
