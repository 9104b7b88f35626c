import fc from 'fast-check';
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { fnv1a } from './id.ts';
import {
  entryText,
  foldJob,
  type Job,
  type JobEntry,
  newJobText,
  readEntry,
  readJob,
  type Told,
} from './index.ts';
import { lineOf } from './line.ts';

// An invented job of invented people.
const HEADER = newJobText({
  unit: 'bench 4, unit: 7',
  train: { file: 'kestrel.train.yaml', hash: '0123456789ab' },
  complaint: 'slips in second\nwhen hot',
  by: 'TW',
  at: '2026-11-25T08:00:00.000Z',
});
const at = (minute: number) => `2026-11-25T09:${`${minute}`.padStart(2, '0')}:00.000Z`;
const draft = (minute: number, told: Told, who = 'TW') => entryText({ at: at(minute), who, told });
const note = (minute: number, text: string, who = 'TW') =>
  draft(minute, { kind: 'note', note: text }, who);
const jobOf = (text: string) => readJob(text).job as Job;
const ids = (text: string) => readJob(text).job?.entries.map(({ id }) => id);

const EVERY: readonly Told[] = [
  { kind: 'seen', of: 'D 2', text: 'slips' },
  { kind: 'seen', of: 'turn rear.carrier clockwise, hold case', text: '[locks, not sure]' },
  { kind: 'reading', of: 'low brake', text: '{ feeler: [1.42 mm, 1/64 in] }' },
  { kind: 'reading', of: 'turbine shaft', text: '[0.82 mm]' },
  {
    kind: 'reading',
    of: 'turbine shaft',
    text: '{ play: [0.82 mm], again: { fitted: 2.00 mm, read: [0.44 mm] } }',
  },
  { kind: 'reading', of: 'low band', text: '{ turns: 2.5 }' },
  { kind: 'reading', of: 'springs', text: '{ read: [31.8 mm] }' },
  { kind: 'limit', of: 'low band', which: 'travel', limit: { least: '2.80 mm', by: 'TW' } },
  { kind: 'chosen', of: 'low brake', part: '5.20 mm backing plate' },
  { kind: 'check', of: 'turn rear.carrier clockwise', predicted: 'locks', felt: 'turns' },
  { kind: 'check', of: 'turn rear.carrier clockwise', felt: 'turns' },
  {
    kind: 'limit',
    of: 'low brake',
    limit: { least: '0.8 mm', most: '1.2 mm', source: 'manual, p. 12', by: 'TW' },
  },
  { kind: 'photograph', name: 'IMG_0012.jpg' },
  { kind: 'photograph', name: 'a.jpg', part: 'sun shell, front: 2', step: 'strip 4' },
  { kind: 'photograph', name: 'a.jpg', step: '4' },
  { kind: 'removed', part: 'sun shell, front: 2' },
  { kind: 'installed', part: 'sun shell' },
  { kind: 'installed', part: 'split cage', replaced: true },
  { kind: 'installed', part: 'low pack', why: 'within the book, p. 9' },
  { kind: 'built', task: '6', of: 'sun shell, front: 2' },
  { kind: 'built', task: '6.1', went: 'wrong', said: 'it turns: both ways' },
  { kind: 'built', task: '8 stop', said: `long: ${'x'.repeat(400)}` },
  { kind: 'built', task: 'start 10' },
  { kind: 'unbuilt', step: '6', why: 'rear ring: not home' },
  { kind: 'note', note: 'two\nlines, "quotes" }, id: abcdefgh }' },
  { kind: 'signed', what: 'build sheet' },
];

describe('a job file', () => {
  it.each(EVERY)('keeps what was told: %j', (told) => {
    const { id, text } = draft(1, told);
    const { job, problems } = readJob(HEADER + text);
    expect(problems).toEqual([]);
    expect(job?.entries).toEqual([{ id, at: at(1), who: 'TW', told, line: 10 }]);
    expect(text.trim().split('\n')).toHaveLength(1);
  });

  it('keeps its header', () => {
    expect(jobOf(HEADER)).toEqual({
      unit: 'bench 4, unit: 7',
      train: { file: 'kestrel.train.yaml', hash: '0123456789ab' },
      complaint: 'slips in second\nwhen hot',
      by: 'TW',
      at: '2026-11-25T08:00:00.000Z',
      entries: [],
    });
  });

  it('keeps every entry before a place where it was cut, wherever that is', () => {
    const parts = EVERY.map((told, minute) => draft(minute, told));
    const whole = HEADER + parts.map(({ text }) => text).join('');
    for (let end = HEADER.length; end <= whole.length; end++) {
      const before = parts.filter((_, i) => {
        const upTo =
          HEADER +
          parts
            .slice(0, i + 1)
            .map(({ text }) => text)
            .join('');
        return upTo.length - 1 <= end; // the last end of line is not part of the entry
      });
      const after = note(59, 'after the crash');
      const { job, problems } = readJob(whole.slice(0, end) + after.text);
      expect(job?.entries.map(({ id }) => id)).toEqual([...before, after].map(({ id }) => id));
      const half = before.length < parts.length && !whole.slice(0, end).endsWith('\n');
      const cutInside =
        half && !before.some(({ text }) => whole.slice(0, end).endsWith(text.trim()));
      // The note of the last but one says itself what an entry ends with.
      const told = problems.map(({ problem }) => problem).join();
      expect(told).toMatch(cutInside ? /^(?:half written|changed since)$/u : /^$/u);
    }
  });

  it('tells of a changed entry with its place, and leaves it out', () => {
    const text = HEADER + note(1, 'one').text + note(2, 'two').text;
    const { job, problems } = readJob(text.replace('note: one', 'note: ten'));
    expect(job?.entries.map(({ told }) => told)).toEqual([{ kind: 'note', note: 'two' }]);
    const place = { line: 10, column: 1, length: 68 };
    expect(problems).toEqual([{ problem: 'changed since', severity: 'warning', place }]);
  });

  it('whose header is spoilt still gives its entries', () => {
    const text = HEADER.replace('unit', 'unt') + note(1, 'one').text;
    const { job, problems } = readJob(text);
    expect([job?.unit, job?.entries.length, problems[0]?.problem]).toEqual(['', 1, 'unknown key']);
  });

  it.each(['', 'holdturn: 1\nname: A train\n', '%', '{', '\uFFFD', '- 1\n- 2\n'])(
    'is not %j',
    (text) => {
      const { job, problems } = readJob(text);
      expect(job).toBeUndefined();
      expect(problems.length).toBeGreaterThan(0);
    },
  );

  it('reads any text and never throws', () => {
    const piece = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.constantFrom(...EVERY.map((told) => draft(1, told).text), HEADER, '\n', '- { ', ' }'),
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 6 }), (pieces) => {
        const { job, problems } = readJob(pieces.join(''));
        if (job) foldJob(job);
        return job !== undefined || problems.length > 0;
      }),
      { seed: 7, numRuns: 500 },
    );
  });

  it('reads back any note', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 60 }), (text) => {
        const { id, body, text: line } = note(1, text);
        const alone = readEntry(body, id);
        if (!alone.entry) return alone.problems.length > 0;
        const told = jobOf(HEADER + line).entries[0]?.told;
        return told?.kind === 'note' && told.note === text;
      }),
      { seed: 7, numRuns: 500 },
    );
  });
});

describe('two copies of a job', () => {
  const common = HEADER + note(1, 'before').text;
  const mine = common + note(2, 'mine').text + note(4, 'mine too').text;
  const theirs = common + note(2, 'theirs', 'HT').text + note(3, 'theirs too', 'HT').text;

  it('put together by git keep what both wrote', () => {
    const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'holdturn-job-'));
    const files = [mine, common, theirs].map((text, i) => {
      const file = path.join(folder, `${i}.job.yaml`);
      fs.writeFileSync(file, text);
      return file;
    });
    const merged = execFileSync('git', ['merge-file', '-p', '--union', ...files], {
      encoding: 'utf8',
    });
    fs.rmSync(folder, { recursive: true });
    const { job, problems } = readJob(merged);
    expect(problems).toEqual([]);
    const both = [...(ids(mine) ?? []), ...(ids(theirs) ?? [])];
    expect(job?.entries.map(({ id }) => id).toSorted()).toEqual([...new Set(both)].toSorted());
  });

  it('left with the marks of a conflict keep it too, and tell of the marks', () => {
    const [, ...rest] = theirs.split(common);
    const text = `${mine}<<<<<<< ours\n=======\n${rest.join('')}>>>>>>> theirs\n`;
    const { job, problems } = readJob(text);
    expect(job?.entries).toHaveLength(5);
    expect(problems.map(({ problem }) => problem)).toEqual(Array(3).fill('merge mark'));
  });

  it('say the same in any order of their lines', () => {
    const lines = [...new Set([...mine.split('\n'), ...theirs.split('\n')])].filter((line) =>
      line.startsWith('- '),
    );
    const folded = (order: readonly string[]) =>
      foldJob(jobOf(`${HEADER}${order.join('\n')}\n`)).entries.map(({ id }) => id);
    expect(folded(lines.toReversed())).toEqual(folded(lines));
  });
});

describe('an entry', () => {
  it.each([
    ['reading: { low brake: { feeler: [1.42] } }', 'expected'],
    ['reading: { low brake: { feler: [1.42 mm] } }', 'unknown key'],
    ['reading: { turbine shaft: [NaN] }', 'expected'],
    ['reading: { a: [1 mm], b: [1 mm] }', 'expected'],
    ['seen: {}', 'expected'],
    ['note: ""', 'expected'],
    ['chosen: { low brake: 5 }', 'expected'],
    ['note: a, signed: b', 'expected'],
    ['strikes: zzzzzzzz', 'missing key'],
    ['because: why', 'missing key'],
    ['', 'expected'],
  ])('%s: %s', (said, problem) => {
    const body = `at: ${at(1)}, who: TW, ${said}`;
    const { entry, problems } = readEntry(body, 'a0000000', 7);
    const [first] = problems;
    expect([entry, first?.problem, first?.place.line]).toEqual([undefined, problem, 7]);
  });

  it('with a mistake is told where it stands in the file', () => {
    const { line } = lineOf(`at: ${at(1)}, who: TW, reading: { low brake: { feler: [1 mm] } }`);
    const { problems } = readJob(`${HEADER}${line}\n`);
    const place = { line: 9, column: line.indexOf('feler') + 1, length: 5 };
    expect(problems).toMatchObject([{ problem: 'unknown key', near: 'feeler', place }]);
  });

  it.each(['2026-02-40T00:00:00.000Z', '2026-13-01T00:00:00.000Z', 'yesterday', '12'])(
    'at %s is refused',
    (time) => {
      expect(readEntry(`at: ${time}, who: TW, note: a`, 'a0000000').entry).toBeUndefined();
    },
  );

  it.each(['', 'T W', 'TWTWTWTWT', '"<b>"'])('of %j is refused', (who) => {
    expect(readEntry(`at: ${at(1)}, who: ${who}, note: a`, 'a0000000').entry).toBeUndefined();
  });
});

describe('the fold', () => {
  const strike = (minute: number, id: string, told?: Told) =>
    entryText({
      at: at(minute),
      who: 'HT',
      ...(told && { told }),
      strikes: { id, because: 'misread' },
    });
  const struck = (entries: readonly { readonly text: string }[]) => {
    const job = foldJob(jobOf(HEADER + entries.map(({ text }) => text).join('')));
    return job.entries.map(({ struckBy }) => (struckBy as JobEntry | undefined)?.id ?? null);
  };
  const one = note(1, 'one');

  it('goes by the moment, whatever clocks showed', () => {
    const notes = [
      ['2026-11-25T09:30:00.000+01:00', 'second'],
      ['2026-11-25T08:00:00.000Z', 'first'],
      ['2026-11-25T04:00:00.000-05:00', 'third'],
    ] as const;
    const texts = notes.map(([when, its]) => {
      return entryText({ at: when, who: 'TW', told: { kind: 'note', note: its } }).text;
    });
    const { entries } = foldJob(jobOf(HEADER + texts.join('')));
    expect(entries.map(({ told }) => told?.kind === 'note' && told.note)).toEqual([
      'first',
      'second',
      'third',
    ]);
  });

  it('strikes an entry through and keeps it', () => {
    const by = strike(2, one.id, { kind: 'note', note: 'two' });
    expect(struck([one, by])).toEqual([by.id, null]);
  });

  it('brings back what a struck correction had struck', () => {
    const by = strike(2, one.id);
    const again = strike(3, by.id);
    expect(struck([one, by, again])).toEqual([null, again.id, null]);
    expect(struck([again, by, one])).toEqual([null, again.id, null]);
  });

  it('follows a chain of as many corrections as a job can hold', () => {
    const chain = [one];
    for (let k = 1; k <= 20_000; k++) chain.push(strike(2, chain.at(-1)?.id ?? ''));
    const alternately = struck(chain.toReversed());
    expect(alternately.filter((id) => id !== null)).toHaveLength(10_000);
  });

  it('tells of a strike at nothing', () => {
    const { problems } = readJob(HEADER + strike(2, 'a2345678').text);
    expect(problems).toMatchObject([{ problem: 'strikes nothing', id: 'a2345678' }]);
  });
});

// Published with FNV (draft-eastlake-fnv, "Test Vectors"); cited from memory.
it.each([
  ['', 0xcbf29ce484222325n],
  ['a', 0xaf63dc4c8601ec8cn],
  ['foobar', 0x85944171f73967e8n],
])('FNV-1a of %j', (text, hash) => {
  expect(fnv1a(text)).toBe(hash);
});
