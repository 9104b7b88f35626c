import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Train } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { entryText, newJobText } from '../../shop/records/index.ts';
import { refusedBy } from '../request/refusedby.ts';
import { entryMade, entryMeant, entryTold, jobMade, openJob } from './index.ts';

const kestrel = readTrain(fs.readFileSync('trains/kestrel-three-speed.train.yaml', 'utf8'))
  .train as Train;
const experience = fs.readFileSync('experience.yaml', 'utf8');

// An invented job of invented people.
const at = '2026-11-25T12:40:07.000Z';
const train = { file: 'kestrel', hash: '0123456789ab' };
const NEW = newJobText({ unit: 'bench 4', train, complaint: 'slips when hot', by: 'TW', at });
const entry = (...words: string[]) =>
  entryText({ at, who: 'TW', told: entryTold(words, { by: 'TW' }) });

describe('an entry', () => {
  it('is told in the words of a person', () => {
    expect(entryTold(['Seen', 'D 2: slips'], {})).toEqual({
      kind: 'seen',
      of: 'D 2',
      text: 'slips',
    });
    expect(entryTold(['chosen', 'low brake', '1.80 mm steel'], {})).toMatchObject({
      of: 'low brake',
      part: '1.80 mm steel',
    });
  });

  it.each<[string, readonly string[], object]>([
    ['a kind that is none', ['noet', 'x'], { refused: 'no.entry kind', near: 'note' }],
    ['no words', ['note'], { refused: 'bad.missing words', kind: 'note' }],
    ['words too many', ['note', 'a', 'b'], { refused: 'bad.excess', given: 'b' }],
    ['brackets that do not close', ['reading', 'a', '[1'], { refused: 'bad.words' }],
  ])('is refused with %s', (_, words, why) => {
    expect(refusedBy(() => entryTold(words, {}))).toMatchObject(why);
  });

  it.each<[string, readonly string[], object | undefined]>([
    ['what the train has', ['seen', 'D 2: slips'], undefined],
    ['a gear that is none', ['seen', 'D 22: slips'], { refused: 'bad.entry' }],
    ['a task of its build', ['built', '6', 'rear ring'], undefined],
    ['a check of it', ['built', '6.1', 'wrong: it turns both ways'], undefined],
    ['a task of none', ['built', '6 sound'], { refused: 'no.task' }],
    ['a step of another part', ['built', '6', 'pump'], { refused: 'bad.task of', of: 'rear ring' }],
    ['a word that is no task', ['built', 'six'], { refused: 'bad.entry' }],
    [
      'a part of nothing',
      ['chosen', 'lo brake', 'x'],
      { refused: 'no.measured', near: 'low brake' },
    ],
  ])('must fit the train: %s', (_, words, why) => {
    const { job } = openJob({ called: 'job', text: NEW });
    const its = { train: kestrel, experience };
    const made = () => entryMade({ told: entryTold(words, {}) }, { who: 'TW', at }, job, its);
    const refused = refusedBy(made);
    if (why) expect(refused).toMatchObject(why);
    else expect(refused).toBe(undefined);
  });

  it('is refused where it could not be read again, and so is a job', () => {
    const { job } = openJob({ called: 'job', text: NEW });
    const told = entryTold(['note', 'scored'], {});
    const made = (who: string) => () => entryMade({ told }, { who, at }, job);
    expect(refusedBy(made('T. W.'))).toMatchObject({ refused: 'bad.entry' });
    expect(made('TW')()).toEqual({
      id: entry('note', 'scored').id,
      text: entry('note', 'scored').text,
    });
    const head = { unit: '', complaint: '', by: 'TW', at };
    expect(refusedBy(() => jobMade(head))).toMatchObject({ refused: 'bad.entry' });
  });

  it('of a photograph says what it shows', () => {
    expect(entryTold(['photograph', 'a.jpg', 'part: sun shell, step: 4'], {})).toEqual({
      kind: 'photograph',
      name: 'a.jpg',
      part: 'sun shell',
      step: '4',
    });
    const odd = () => entryTold(['photograph', 'a.jpg', 'prat: sun shell'], {});
    expect(refusedBy(odd)).toMatchObject({ refused: 'bad.words', kind: 'photograph' });
  });

  it('of a road speed is read beside the gear that drives well, in another entry', () => {
    const good = [
      entry('seen', 'D 3: drives'),
      entry('seen', 'D 3', '1500 rpm at 60 km/h, locked'),
    ];
    const { job } = openJob({ called: 'job', text: NEW + good.map(({ text }) => text).join('') });
    const speed = entryTold(['seen', 'D 2', '2150 rpm at 60 km/h'], {});
    const made = (before: typeof job) => {
      return refusedBy(() =>
        entryMade({ told: speed }, { at, who: 'TW' }, before, { train: kestrel, experience }),
      );
    };
    expect(made(job)).toBe(undefined);
    expect(made({ ...job, entries: [] })).toMatchObject({
      refused: 'bad.entry',
      problem: { problem: 'no scale of speeds' },
    });
  });

  it('is meant by the first four letters of its id', () => {
    const { id, text } = entry('note', 'the drum is scored');
    const { job } = openJob({ called: 'job', text: NEW + text });
    expect(entryMeant(id.slice(0, 4), job).id).toBe(id);
    expect(refusedBy(() => entryMeant(id.slice(0, 3), job))).toMatchObject({ refused: 'no.entry' });
  });
});

describe('an open job', () => {
  it('notes what of it could not be used, and another train than its own', () => {
    const text = `${NEW}${entry('seen', 'D 2: slips').text}- { at: 2026-11-25T1`;
    const job = openJob({ called: 'bench 4', text });
    expect(job.notes('0123456789ab')).toMatchObject([
      { note: 'unused', called: 'bench 4', count: 1 },
    ]);
    expect(job.notes('ffff').at(-1)).toEqual({ note: 'other train', called: 'bench 4' });
  });

  it('notes a limit that stands in the place of the file’s', () => {
    const limit = entry('limit', 'turbine shaft', 'least: 0.10 mm, most: 0.20 mm, source: page 12');
    const job = openJob({ called: 'job', text: NEW + limit.text });
    const limited = job.withLimits(kestrel);
    expect(limited.endPlays).not.toEqual(kestrel.endPlays);
    expect(job.notes('0123456789ab')).toMatchObject([
      { note: 'limit', replaced: { of: 'turbine shaft' } },
    ]);
  });

  it('is no job: refused, by the name that it was given', () => {
    expect(refusedBy(() => openJob({ called: 'shopping', text: 'milk' }))).toMatchObject({
      refused: 'bad.file',
      called: 'shopping',
    });
  });
});

describe('a shelf of the job', () => {
  const row = 'part: snap ring, fitted: 1.60 mm, sizes: [1.50 mm, 1.60 mm], tolerance: 0.02 mm';
  const first = (...words: string[]) => `${NEW}${entry('shelf', ...words).text}`;

  it('stands in the place of the file’s, and the answer says so', () => {
    const job = openJob({ called: 'bench 4', text: first('second brake', row) });
    const its = job.withLimits(kestrel).packs?.find(({ device }) => device === 'second brake');
    expect(its?.shelf).toEqual({
      part: 'snap ring',
      fitted: '1.60 mm',
      sizes: ['1.50 mm', '1.60 mm'],
      tolerance: '0.02 mm',
    });
    expect(job.notes('0123456789ab')).toMatchObject([{ note: 'shelf', of: 'second brake' }]);
  });

  it.each([
    ['no shaft', row],
    ['stator bushing', row],
    ['main shaft', row],
    ['second brake', 'part: snap ring, fitted: 1.60, sizes: [1.50 mm]'],
    ['second brake', 'part: snap ring, fitted: 1.60 mm'],
    ['second brake', '1.60 mm'],
  ])('%s: %s is refused', (of, said) => {
    const job = openJob({ called: 'bench 4', text: NEW }).job;
    const refused = refusedBy(() => {
      const told = entryTold(['shelf', of, said], {});
      entryMade({ told }, { who: 'TW', at }, job, { train: kestrel, experience });
    });
    expect(refused).toBeDefined();
  });
});
