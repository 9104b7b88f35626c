import { composedTree } from './composed.ts';
import type { Findings } from './findings.ts';
import { BAD_CHARACTER, MOST_LEVELS, type Node } from './node.ts';
import { plainTree } from './plain.ts';

/**
 * A text of this many characters is read in a second at worst, and 120 members with every
 * device and range take an eighth of it.
 */
const MOST_CHARACTERS = 65_536;

/**
 * The tree of a YAML 1.2 text, or undefined where it has none to speak of. Whatever is not
 * plain entries, lists and scalars is an error in `findings`. Never throws.
 */
export function parseTree(text: string, findings: Findings): Node | undefined {
  if (text.length > MOST_CHARACTERS) {
    const mistake = {
      problem: 'too large',
      characters: text.length,
      most: MOST_CHARACTERS,
    } as const;
    findings.error({ from: 0, to: 0 }, mistake);
    return undefined;
  }
  const bad = BAD_CHARACTER.exec(text);
  if (bad) {
    const code = bad[0].codePointAt(0) as number;
    findings.error({ from: bad.index, to: bad.index + 1 }, { problem: 'bad character', code });
    return undefined;
  }
  const mark = MERGE_MARK.exec(text);
  if (mark) {
    findings.error(
      { from: mark.index, to: mark.index + mark[0].length },
      { problem: 'merge mark' },
    );
    return undefined;
  }
  try {
    return plainTree(text) ?? composedTree(text, findings);
  } catch (thrown) {
    // The composer calls itself a level at a time and runs out of stack.
    if (!(thrown instanceof RangeError)) throw thrown;
    findings.error({ from: 0, to: 0 }, { problem: 'too deep', most: MOST_LEVELS });
    return undefined;
  }
}

// Where two copies of a file were put together and some lines would not go.
const MERGE_MARK = /^(?:<{7}|>{7}) .*$/mu;
