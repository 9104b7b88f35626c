import * as v from 'valibot';
import { note, text as anyText, Walker } from '../../engine/form/index.ts';
import {
  type Expected,
  Findings,
  Lines,
  parseTree,
  type Problem,
} from '../../engine/yaml/index.ts';
import { startOf } from './copies.ts';
import { INITIALS, readEntry } from './entry.ts';
import type { Job, JobEntry } from './job.ts';
import { lineRead } from './line.ts';
import { TIME } from './moment.ts';

/** A job and what is wrong with its file, with places. */
export interface JobReading {
  /** Absent only where neither a header nor an entry can be read: the text is no job file. */
  readonly job?: Job;
  /** Whatever could not be read is left out of the job, and told here; it stays in the file. */
  readonly problems: readonly Problem[];
}

/**
 * Reads a job file: a header, then an entry a line. A line that was cut short, changed since it
 * was written or put there by something else loses nothing but itself. Copies of a line are one
 * entry, so two copies of a job may be put together by whatever unites their lines. Never throws.
 */
export function readJob(text: string): JobReading {
  const lines = text.split(/\r?\n/u);
  const start = startOf(lines);
  const header = readHeader(lines.slice(0, start).join('\n'));
  const entries = new Map<string, JobEntry>();
  const problems: Problem[] = [];
  lines.forEach((line, index) => {
    if (index < start || line === 'entries:' || line.trim() === '' || entries.has(line)) return;
    const number = index + 1;
    const read = lineRead(line);
    if (typeof read === 'string') {
      const mark = /^(?:<{7}|>{7}|\|{7})(?: |$)|^={7}$/u.test(line);
      const problem = mark ? 'merge mark' : read === 'half' ? 'half written' : 'changed since';
      const place = { line: number, column: 1, length: line.length };
      problems.push({ problem, severity: 'warning', place });
      return;
    }
    const { entry, problems: more } = readEntry(read.body, read.id, number, read.from);
    if (entry) entries.set(line, entry);
    problems.push(...more);
  });
  const all = [...entries.values()];
  if (!header.told && all.length === 0) return { problems: [...header.problems, ...problems] };
  const job = { ...(header.told ?? NOTHING), entries: all };
  return { job, problems: [...header.problems, ...problems, ...loose(all)] };
}

type Header = Omit<Job, 'entries'>;
const NOTHING: Header = { unit: '', complaint: '', by: '', at: '' };

function readHeader(text: string): {
  readonly told?: Header;
  readonly problems: readonly Problem[];
} {
  const findings = new Findings(new Lines(text));
  const root = parseTree(text, findings);
  if (!root) return { problems: findings.list() };
  const start = { from: root.at.from, to: root.at.from };
  const walker = new Walker(text, findings, (name) => name);
  const read = walker.value(root, HEADER as never, [], start) as v.InferOutput<typeof HEADER>;
  const problems = findings.list();
  if (problems.length > 0) return { problems };
  const { unit, train, complaint, by, opened } = read;
  return {
    told: { unit, ...(train && { train: { ...train } }), complaint, by, at: opened },
    problems,
  };
}

const or = (what: Expected) => what;
const HEADER = v.strictObject(
  {
    'holdturn job': v.literal(1, or('job')),
    unit: note('What is worked on.'),
    train: v.exactOptional(
      v.strictObject(
        { file: note('Its name.'), hash: v.exactOptional(note('Of its text.')) },
        or('section'),
      ),
    ),
    complaint: anyText('In the words of whoever brought it.'),
    by: INITIALS,
    opened: TIME,
  },
  or('section'),
);

// A strike at an entry that was lost, or that stands in another copy.
function loose(entries: readonly JobEntry[]): Problem[] {
  const ids = new Set(entries.map(({ id }) => id));
  return entries.flatMap(({ strikes, line }) => {
    if (!strikes || ids.has(strikes.id)) return [];
    const place = { line, column: 1, length: 1 };
    return [{ problem: 'strikes nothing', id: strikes.id, severity: 'warning', place } as const];
  });
}
