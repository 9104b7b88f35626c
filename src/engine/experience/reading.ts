import { Walker } from '../form/index.ts';
import { Findings, find, Lines, parseTree, type Problem } from '../yaml/index.ts';
import { EXPERIENCE } from './definition.ts';
import type { CauseWord, Experience, TestWord } from './experience.ts';
import { LATER } from './later.ts';

/** What a experience file says: a experience if it has no error, and every error with its place. */
export interface ExperienceReading {
  readonly experience: Experience | undefined;
  readonly problems: readonly Problem[];
}

/** Reads a experience file. Never throws. */
export function readExperience(text: string): ExperienceReading {
  const findings = new Findings(new Lines(text));
  const root = parseTree(text, findings);
  if (!root) return { experience: undefined, problems: findings.list() };
  const walker = new Walker(text, findings, (name) => name);
  const start = { from: root.at.from, to: root.at.from };
  const read = walker.value(root, EXPERIENCE as never, [], start) as Experience;
  if (findings.errorCount === 0) {
    const at = (...path: string[]) => find(root, path);
    if (Object.keys(read.causes).every((cause) => read.causes[cause as CauseWord] === 0)) {
      findings.error(at('causes'), { problem: 'expected', what: 'proportions', found: '' });
    }
    for (const [test, row] of emptyRows(read)) {
      const place = at('tests', test, 'shows', row);
      findings.error(place, { problem: 'expected', what: 'proportions', found: '' });
    }
  }
  const experience = { ...read, tests: { ...LATER, ...read?.tests } };
  return {
    experience: findings.errorCount === 0 ? experience : undefined,
    problems: findings.list(),
  };
}

// Rows in which nothing at all is shown: no proportion can be made of them.
function emptyRows({ tests }: Experience): [test: string, row: string][] {
  return Object.keys(tests).flatMap((test) =>
    Object.entries(tests[test as TestWord].shows ?? {}).flatMap(([row, shown]) => {
      const sum = Object.values(shown).reduce((a, b) => a + b, 0);
      return sum > 0 ? [] : [[test, row] as [string, string]];
    }),
  );
}
