import * as v from 'valibot';
import type { FileLimit } from '../../engine/train/index.ts';
import { note, text, Walker } from '../../engine/form/index.ts';
import { LIMIT, shelf } from '../../engine/entries/index.ts';
import {
  type Expected,
  Findings,
  Lines,
  type Node,
  parseTree,
  type Problem,
} from '../../engine/yaml/index.ts';
import type { ShelfSaid } from '../../engine/trainfile/index.ts';
import type { JobEntry, Told } from './job.ts';
import { limitMistake } from './limits.ts';
import { flowText } from './line.ts';
import { TIME } from './moment.ts';
import { formProblems } from './readings.ts';

/** What one entry says; absent where it has a mistake. */
export interface EntryReading {
  readonly entry?: JobEntry;
  readonly problems: readonly Problem[];
}

/** The words for what an entry may tell, in the file and on the command line. */
export const KINDS = [
  'seen',
  'reading',
  'chosen',
  'check',
  'limit',
  'shelf',
  'photograph',
  'removed',
  'installed',
  'built',
  'unbuilt',
  'note',
  'signed',
] as const satisfies readonly Told['kind'][];

/**
 * Reads the YAML of one entry, without its brackets and its id, which stands in `line` of a file
 * from column `from` (counted from 0) on. Never throws.
 */
export function readEntry(body: string, id: string, line = 0, from = 0): EntryReading {
  // Columns are those of a text that stands as far in as the body does in its file.
  const yaml = `${' '.repeat(Math.max(0, from - 2))}{ ${body} }`;
  const findings = new Findings(new Lines(yaml));
  const root = parseTree(yaml, findings);
  const here = (problem: Problem): Problem => ({ ...problem, place: { ...problem.place, line } });
  const refused = (more: readonly Problem[] = []) => ({
    problems: [...findings.list(), ...more].map(here),
  });
  if (root?.kind !== 'section') return refused();
  const free = root.entries.filter(({ key }) => key === 'seen' || key === 'reading');
  const rest = { ...root, entries: root.entries.filter((its) => !free.includes(its)) };
  const read = new Walker(yaml, findings, (name) => name).value(rest, ENTRY as never, [], root.at);
  if (findings.errorCount > 0) return refused();
  const { at, who, strikes, because, ...others } = read as v.InferOutput<typeof ENTRY>;
  const kinds = [...free.map(({ key }) => key), ...Object.keys(others)];
  const missing = strikes === undefined ? 'strikes' : 'because';
  if ((strikes === undefined) !== (because === undefined)) {
    findings.error(root.at, { problem: 'missing key', keys: [missing] });
  } else if (kinds.length > 1 || (kinds.length === 0 && strikes === undefined)) {
    findings.error(root.at, { problem: 'expected', what: 'entry', found: kinds.join(', ') });
  }
  const [first] = free;
  const told = first ? freelyTold(first.key, first.value) : toldBy(others);
  if (kinds.length === 1 && !told) {
    findings.error(first?.value.at ?? root.at, { problem: 'expected', what: 'entry', found: '' });
  }
  const mistake = told?.kind === 'limit' ? limitMistake(told.limit) : undefined;
  if (mistake) findings.error(root.at, mistake);
  if (findings.errorCount > 0) return refused();
  if (first && told?.kind === 'reading') {
    const problems = formProblems(alone(yaml, first.value), valueIn(first.value));
    if (problems.length > 0) return refused(problems);
  }
  const struck =
    strikes !== undefined && because !== undefined ? { strikes: { id: strikes, because } } : {};
  return { entry: { id, at, who, ...(told && { told }), ...struck, line }, problems: [] };
}

const or = (what: Expected) => what;
const each = <Its extends v.GenericSchema>(its: Its) =>
  v.exactOptional(v.record(v.string(or('name')), its, or('entry')));
const line = (description: string) => v.exactOptional(note(description));

/** Initials. */
export const INITIALS = v.pipe(
  v.string(or('initials')),
  v.regex(/^[\p{L}\p{N}]{1,8}$/u, or('initials')),
);

/** A task of a build, as an entry names it. */
const TASK = /^(?:[1-9]\d{0,3}(?:\.[1-9]\d?| sound| stop)?|start [1-9]\d?)$/u;

const ENTRY = v.strictObject(
  {
    at: TIME,
    who: INITIALS,
    chosen: each(note('A part.')),
    check: each(
      v.strictObject({ predicted: line('By the train.'), felt: note('By hand.') }, or('entry')),
    ),
    limit: each(
      v.strictObject(
        {
          of: line('Which of its limits.'),
          ...LIMIT.entries,
          sure: v.exactOptional(v.picklist(['yes'], or('sure'))),
        },
        or('limit'),
      ),
    ),
    shelf: each(shelf(note('What sets it.'), 'The row of parts that sets it.')),
    photograph: v.exactOptional(
      v.union(
        [
          note('Its name.'),
          v.strictObject(
            { file: note('Its name.'), part: line('What it shows.'), step: line('Of the work.') },
            or('photograph'),
          ),
        ],
        or('photograph'),
      ),
    ),
    removed: line('A part that came off.'),
    installed: v.exactOptional(
      v.union(
        [
          note('A part that went on.'),
          v.strictObject(
            {
              part: note('A part that went on.'),
              replaced: v.exactOptional(v.picklist(['yes'], or('sure'))),
              why: line('Why the same one went on again.'),
            },
            or('installed'),
          ),
        ],
        or('installed'),
      ),
    ),
    built: v.exactOptional(
      v.strictObject(
        {
          task: v.pipe(v.string(or('built')), v.regex(TASK, or('built'))),
          of: line('What the step is about.'),
          went: v.exactOptional(v.picklist(['right', 'wrong', 'found'], or('went'))),
          said: v.exactOptional(v.pipe(text('What of it.'), v.minLength(1, or('text')))),
        },
        or('built'),
      ),
    ),
    unbuilt: v.exactOptional(
      v.strictObject(
        {
          step: v.pipe(v.string(or('unbuilt')), v.regex(/^[1-9]\d{0,3}$/u, or('unbuilt'))),
          why: v.pipe(text('Why.'), v.minLength(1, or('text'))),
        },
        or('unbuilt'),
      ),
    ),
    note: v.exactOptional(v.pipe(text('A note.'), v.minLength(1, or('text')))),
    signed: line('What is signed.'),
    strikes: v.exactOptional(v.pipe(v.string(or('id')), v.regex(/^[0-9a-z]{8}$/u, or('id')))),
    because: line('Why it is struck.'),
  },
  or('entry'),
);

// A value whose form is another file's: `NAME: whatever that file says of it`.
function freelyTold(kind: string, value: Node): Told | undefined {
  const [entry, ...more] = value.kind === 'section' ? value.entries : [];
  if (!entry || more.length > 0 || isEmpty(entry.value)) return undefined;
  const { key: of, value: its } = entry;
  const said = flowText(its);
  if (kind === 'seen') return its.kind === 'section' ? undefined : { kind, of, text: said };
  return { kind: 'reading', of, text: said };
}

// A value where it stands, and nothing else of the line.
function alone(yaml: string, { at }: Node): string {
  return ' '.repeat(at.from) + yaml.slice(at.from, at.to);
}

// What stands behind the one name of an entry.
function valueIn(value: Node): Node {
  const [entry] = value.kind === 'section' ? value.entries : [];
  return entry?.value ?? value;
}

function isEmpty(node: Node): boolean {
  return node.kind === 'scalar' && node.value === null;
}

type Others = Omit<v.InferOutput<typeof ENTRY>, 'at' | 'who' | 'strikes' | 'because'>;

function toldBy(told: Others): Told | undefined {
  const { photograph, removed, installed, built, unbuilt, note: noted, signed } = told;
  const [chosen] = named<string>(told.chosen);
  if (chosen) return { kind: 'chosen', of: chosen[0], part: chosen[1] };
  const [check] = named<{ readonly predicted?: string; readonly felt: string }>(told.check);
  if (check) return { kind: 'check', of: check[0], ...check[1] };
  const [limit] = named<FileLimit & { readonly of?: string; readonly sure?: 'yes' }>(told.limit);
  if (limit) {
    const { of: which, sure, ...its } = limit[1];
    const more = { ...(which !== undefined && { which }), ...(sure && { sure: true as const }) };
    return { kind: 'limit', of: limit[0], ...more, limit: its };
  }
  const [row] = named<ShelfSaid>(told.shelf);
  if (row) return { kind: 'shelf', of: row[0], shelf: row[1] };
  if (typeof photograph === 'string') return { kind: 'photograph', name: photograph };
  if (photograph !== undefined) {
    const { file: name, ...of } = photograph;
    return { kind: 'photograph', name, ...of };
  }
  if (removed !== undefined) return { kind: 'removed', part: removed };
  if (typeof installed === 'string') return { kind: 'installed', part: installed };
  if (installed !== undefined) {
    const { replaced, ...its } = installed;
    return { kind: 'installed', ...its, ...(replaced && { replaced: true }) };
  }
  if (built !== undefined) return { kind: 'built', ...built };
  if (unbuilt !== undefined) return { kind: 'unbuilt', ...unbuilt };
  if (noted !== undefined) return { kind: 'note', note: noted };
  if (signed !== undefined) return { kind: 'signed', what: signed };
  return undefined;
}

// Of one name: a second would be a second thing told.
function named<Its>(its: unknown): readonly (readonly [string, Its])[] {
  const all = [...((its as ReadonlyMap<string, Its> | undefined) ?? [])];
  return all.length === 1 ? all : [];
}
