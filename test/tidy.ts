import type { Source } from './sources.ts';

/** A rule that every file of the project keeps, with examples that its own test reads. */
export interface Rule {
  readonly name: string;
  /** Which files it is about. */
  readonly about: (path: string) => boolean;
  /** What is wrong with a file: a sentence each, with the line where there is one. */
  readonly faults: (source: Source) => readonly Fault[];
  readonly wrong: readonly Source[];
  readonly right: readonly Source[];
}

export interface Fault {
  readonly line?: number;
  readonly says: string;
}

/** Every fault of the sources, as `path:line: sentence`. This file and its test are let off. */
export function untidy(sources: readonly Source[], rules: readonly Rule[]): string[] {
  return sources
    .filter(({ path }) => !/^test\/tidy\b/.test(path))
    .flatMap((source) =>
      rules
        .filter((rule) => rule.about(source.path))
        .flatMap((rule) => rule.faults(source))
        .map(({ line, says }) => `${source.path}${line ? `:${line}` : ''}: ${says}`),
    );
}

const code = (path: string) => /\.(?:tsx?|mjs)$/.test(path);
const own = (path: string) => /^(?:src|test|bench|scripts)\//.test(path);
const test = (path: string) => path.endsWith('.test.ts') || path.startsWith('test/');
const fixture = (path: string) => path.startsWith('trains/');

/** The words that are not ours, each with ours. */
const WORDS: readonly (readonly [RegExp, string])[] = [
  [/annul(?:us|ar)/i, 'ring'],
  [/\bepicycl|[a-z]Epicycl/, 'planetary'], // a title that is cited keeps its capital
  [/satellite/i, 'planet'],
  [/free-?wheel/i, 'one-way clutch; one that does not hold over-runs'],
  [/over(?:run|ran)(?:s|ning)?\b(?!['"]?:)/, 'over-run'],
  [/(?:locked|bound)[- ]up|bind-?up/i, 'tied up'],
  [/counter-?clockwise|\bccw\b/i, 'anticlockwise'],
  [/circlip/i, 'snap ring'],
  [/\blet(?:s|ting)? (?:\w+ )?go\b/i, 'released, slips, over-runs or stripped'],
  [/gear ratio/i, 'ratio'],
  [/behavior/i, 'behaviour'],
  [/neighbor/i, 'neighbour'],
  [/\butili[sz]e/i, 'use'],
  [/\b(?:simply|obviously)\b/i, 'nothing'],
];

/** The tidy rules. A file of examples or of a person's words is no code: `about` leaves it out. */
export const RULES: readonly Rule[] = [
  {
    name: 'nothing is left to do',
    about: (path) => !fixture(path) && path !== 'LICENSE',
    faults: lines(/\b(?:TODO|FIXME|XXX|HACK)\b/, (word) => `do it now, or file it: ${word}`),
    wrong: [file('src/a.ts', '// TODO: the rest'), file('README.md', 'FIXME')],
    right: [file('src/a.ts', '// todos are a noun')],
  },
  {
    name: 'a source has at most 300 lines',
    // A language is one file, as long as it needs; so is a table of cases.
    about: (path) =>
      code(path) && path.startsWith('src/') && !/\/voice\/[a-z]{2}\.ts$|\.test\.ts$/u.test(path),
    faults: ({ text }) => {
      const count = text.trimEnd().split('\n').length;
      return count > 300 ? [{ says: `${count} lines; a file is one noun, at most 300 lines` }] : [];
    },
    wrong: [file('src/a.ts', '\n'.repeat(300) + 'end')],
    right: [file('src/a.ts', 'line\n'.repeat(300)), file('test/a.ts', '\n'.repeat(400) + 'end')],
  },
  {
    name: 'a line has at most 110 characters',
    about: (path) => code(path) || path.endsWith('.sh'),
    // A message is one string, and an address cannot be broken.
    faults: lines(/^(?!\s*(?:\S+:\s*)?(['"`]).*\1,?;?$)(?!.*https?:).{111,}/u, (line) => {
      return `${[...line].length} characters; break the line at 100`;
    }),
    wrong: [file('src/a.ts', `const a = ${'1 + '.repeat(30)}1;`)],
    right: [file('src/a.ts', `  turns: '${'a'.repeat(120)}',`), file('a.md', 'a'.repeat(120))],
  },
  {
    name: 'one word a thing',
    // The glossary and the train file take the synonyms that people write.
    about: (path) => {
      return (
        code(path) && path.startsWith('src/') && !/trainfile\/|engine\/words\/|synonym/.test(path)
      );
    },
    faults: (source) =>
      WORDS.flatMap(([word, ours]) => lines(word, (its) => `"${its}": say ${ours}`)(source)),
    wrong: [
      file('src/a.ts', 'const annulusTeeth = 72;'),
      file('src/a.ts', "'turn it counterclockwise'"),
      file('src/a.ts', '// the sprag overruns'),
      file('src/a.ts', '// it is obviously so'),
    ],
    right: [file('src/a.ts', "const overRunning = 'over-running';"), file('src/a.ts', '// locked')],
  },
  {
    name: 'a pinion belongs to a bevel set',
    about: (path) => {
      return (
        code(path) && path.startsWith('src/') && !/trainfile\/|engine\/words\/|synonym/.test(path)
      );
    },
    faults: (source) =>
      /bevel/i.test(source.text) ? [] : lines(/pinion/i, () => '"pinion": say planet')(source),
    wrong: [file('src/a.ts', 'const pinions = 3;')],
    right: [file('src/a.ts', "// A bevel pinion\nconst pinion = part('pinion');")],
  },
  {
    name: 'an export has a name',
    about: (path) => code(path) && own(path),
    faults: lines(/^export default\b|\bas default\b/, () => 'give the export a name'),
    wrong: [
      file('src/a.ts', 'export default class {}'),
      file('src/a.ts', 'export { a as default };'),
    ],
    right: [
      file('src/a.ts', 'export const a = 1;'),
      file('vitest.config.ts', 'export default {};'),
    ],
  },
  {
    name: 'a file is named after its noun',
    about: (path) => code(path),
    faults: ({ path }) => {
      const name = /(?:^|\/)(utils?|helpers?|common|types?|misc|shared)(?:\/|\.)/.exec(path)?.[1];
      return name ? [{ says: `"${name}" is no noun; name the thing that lives here` }] : [];
    },
    wrong: [file('src/engine/utils.ts', ''), file('src/helpers/a.ts', '')],
    right: [file('src/engine/flow/answer.ts', '')],
  },
  {
    name: 'only doors and scripts speak',
    about: (path) => code(path) && !/^(?:src\/doors|scripts|bench)\//.test(path),
    faults: lines(/\bconsole\s*\./, () => 'return the words; a door says them'),
    wrong: [file('src/engine/a.ts', "console.log('here');"), file('test/a.ts', 'console.warn(1);')],
    right: [file('src/doors/cli/a.ts', 'console.error(1);')],
  },
  {
    name: 'only doors, the command and the page have a clock',
    about: (path) => code(path) && /^src\/(?!doors\/|command\/|page\/)/.test(path),
    faults: lines(/\bnew Date\b|\bDate\.|\bperformance\./, () => 'no clock here'),
    wrong: [file('src/engine/a.ts', 'Date.now()'), file('src/telling/a.ts', 'new Date()')],
    right: [file('src/page/a.ts', 'Date.now()'), file('src/engine/a.ts', '// Up to date.')],
  },
  {
    name: 'only doors and the command have files',
    about: (path) => code(path) && /^src\/(?!doors\/|command\/)/.test(path) && !test(path),
    faults: lines(/'node:/, () => 'text in and out; a door reads files'),
    wrong: [file('src/asking/a.ts', "import fs from 'node:fs';")],
    right: [
      file('src/asking/a.test.ts', "import fs from 'node:fs';"),
      file('src/doors/cli/a.ts', "import path from 'node:path';"),
    ],
  },
  {
    name: 'no test is timed',
    about: (path) => code(path) && test(path),
    faults: lines(/\bperformance\.|\bhrtime\b|\bconsole\.time/, () => 'put it in bench/'),
    wrong: [file('test/a.test.ts', 'const start = performance.now();')],
    right: [file('bench/a.ts', 'performance.now()')],
  },
  {
    name: 'chance is seeded',
    about: (path) => code(path) && own(path),
    faults: lines(
      /\bMath\.random\b|\brandomInt\b|\brandomUUID\b/,
      () => 'seed it, so it can be replayed',
    ),
    wrong: [file('test/a.test.ts', 'Math.random()'), file('src/engine/a.ts', 'Math.random')],
    right: [file('test/a.test.ts', 'new Dice(7)')],
  },
  {
    name: 'no test is skipped or alone',
    about: (path) => code(path) && test(path),
    faults: lines(/\b(?:it|test|describe)\.(?:only|skip|todo)\b/, (word) => `${word} hides tests`),
    wrong: [
      file('src/a.test.ts', "it.only('turns', f);"),
      file('test/a.test.ts', 'describe.skip('),
    ],
    right: [file('src/a.test.ts', "it.each([1])('turns', f);")],
  },
  {
    name: 'no folder of one machine',
    about: (path) => path !== 'LICENSE',
    faults: lines(
      /(?<![\w.~*)\]}/-])\/(?:home|Users|root|work|workspace|mnt|srv)\/|(?<![\w*)])\.(?!(?:ci|git|github|bin|cache)\/)[a-z]{2,}\//,
      (folder) => `${folder} is there on one machine only`,
    ),
    wrong: [
      file('README.md', 'see /home/ada/trains'),
      file('src/a.ts', "const a = '/work/a';"),
      file('src/a.ts', "'.hidden/list'"),
    ],
    right: [
      file('src/a.ts', "import '../train/index.ts'; // https://a.org/work/a"),
      file('a.md', '.ci/run'),
    ],
  },
];

function file(path: string, text: string): Source {
  return { path, text };
}

// A fault for each line that the pattern finds.
function lines(pattern: RegExp, says: (found: string) => string): Rule['faults'] {
  return ({ text }) =>
    text.split('\n').flatMap((line, index) => {
      const found = pattern.exec(line)?.[0];
      return found === undefined ? [] : [{ line: index + 1, says: says(found) }];
    });
}
