import { isMap, isPair, isScalar, isSeq } from 'yaml';
import type { Findings } from './findings.ts';
import { MOST_LEVELS } from './node.ts';
import type { Passage } from './place.ts';
import type { Syntax } from './problem.ts';

/** Tells what the YAML library found wrong, one mistake a line: the first makes the others. */
export function tellSyntax(
  errors: readonly SyntaxError[],
  contents: unknown,
  text: string,
  findings: Findings,
): void {
  const end = text.trimEnd().length;
  let toldTo = -1;
  for (const { code, message, pos } of errors.toSorted((a, b) => a.pos[0] - b.pos[0])) {
    if (Math.min(pos[0], end) <= toldTo) continue;
    const lineEnd = text.indexOf('\n', Math.min(pos[0], end));
    toldTo = lineEnd < 0 ? text.length : lineEnd;
    const passage = { from: pos[0], to: pos[1] };
    switch (code) {
      case 'MULTIPLE_DOCS':
        findings.error(passage, { problem: 'several documents' });
        break;
      case 'RESOURCE_EXHAUSTION':
        findings.error(passage, { problem: 'too deep', most: MOST_LEVELS });
        break;
      case 'BAD_DIRECTIVE':
        findings.error(passage, { problem: 'refused', what: 'directive' });
        break;
      case 'BAD_ALIAS':
      case 'ALIAS_PROPS':
        findings.error(passage, { problem: 'refused', what: 'alias' });
        break;
      case 'MULTIPLE_ANCHORS':
        findings.error(passage, { problem: 'refused', what: 'anchor' });
        break;
      case 'TAG_RESOLVE_FAILED':
      case 'MULTIPLE_TAGS':
      case 'BAD_COLLECTION_TYPE':
        findings.error(passage, { problem: 'refused', what: 'tag' });
        break;
      default: {
        const what = syntaxOf(code, message);
        const unclosed = what === 'unclosed bracket' || what === 'unclosed quote';
        findings.error((unclosed && openingOf(contents, pos[0], text)) || passage, {
          problem: 'syntax',
          what,
        });
      }
    }
  }
}

interface SyntaxError {
  readonly code: string;
  readonly message: string;
  readonly pos: readonly [number, number];
}

// The bracket or quote that is not closed: the library tells where it misses the other one,
// which is where the innermost node that it began ends.
function openingOf(node: unknown, end: number, text: string): Passage | undefined {
  if (!isScalar(node) && !isSeq(node) && !isMap(node)) return undefined;
  const children: unknown[] = isScalar(node)
    ? []
    : node.items.flatMap((item) => {
        return isPair(item) ? [item.key, item.value] : [item];
      });
  for (const child of children) {
    const found = openingOf(child, end, text);
    if (found) return found;
  }
  const from = node.range?.[0] ?? 0;
  const ends = node.range?.slice(1).includes(end) && '[{"\''.includes(text[from] ?? ' ');
  return ends ? { from, to: from + 1 } : undefined;
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
