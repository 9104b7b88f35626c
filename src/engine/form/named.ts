import type * as v from 'valibot';
import {
  find,
  Findings,
  Lines,
  type FileMistake,
  nearest,
  parseTree,
  type Problem,
} from '../yaml/index.ts';
import type { Train } from '../train/index.ts';
import { inFileNames } from '../words/index.ts';
import { Walker } from './walker.ts';

/** Things by name; none of them where the file has a mistake. */
export interface NamedReading<Its> {
  readonly things: ReadonlyMap<string, Its>;
  readonly problems: readonly Problem[];
}

/**
 * Reads a file of things by name, each of the form that `form` gives its entries. A name that is
 * not among the known, in whatever language of the train's file, is the mistake that `unknown` makes
 * of it. Never throws.
 */
export function readNamed<Its>(
  text: string,
  form: v.GenericSchema,
  known: readonly string[] | undefined,
  unknown: (name: string, near: { readonly near?: string }) => FileMistake,
  train?: Train,
): NamedReading<Its> {
  const findings = new Findings(new Lines(text));
  const root = parseTree(text, findings);
  if (!root) return { things: new Map(), problems: findings.list() };
  const walker = new Walker(text, findings, (name) => name);
  const start = { from: root.at.from, to: root.at.from };
  const said = walker.value(root, form as never, [], start) as ReadonlyMap<string, Its>;
  const read = new Map(known ? [] : said);
  if (findings.errorCount === 0 && known) {
    for (const [name, its] of said) {
      const own = train && !known.includes(name) ? inFileNames(name, train) : name;
      if (read.has(own))
        findings.error(find(root, [name]), { problem: 'duplicate key', key: name });
      read.set(own, its);
      if (known.includes(own)) continue;
      findings.error(find(root, [name]), () => {
        const near = nearest(name, known);
        return unknown(name, near === undefined ? {} : { near });
      });
    }
  }
  const problems = findings.list();
  return { things: problems.length > 0 ? new Map() : read, problems };
}
