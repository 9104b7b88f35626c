import fs from 'node:fs';
import { expect, it } from 'vitest';
import { testText } from '../../engine/suspects/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { newJobText } from '../../shop/records/index.ts';
import { openJob } from '../job/index.ts';
import { refusedBy } from '../request/refusedby.ts';
import { askFaults, caseOf, suspicionOf } from './index.ts';

const kestrel = readTrain(fs.readFileSync('trains/kestrel-three-speed.train.yaml', 'utf8'))
  .train as Train;
const practice = { called: 'ours', text: fs.readFileSync('experience.yaml', 'utf8') };

it('finds what is suspected by a text of what was seen', () => {
  const seen = { called: 'seen', text: 'D 1: slips\nL 1: drives\n' };
  const { told, ...its } = caseOf(kestrel, { practice, seen });
  expect(told.observations.map(({ test }) => testText(test))).toEqual(['D 1', 'L 1']);
  const { ranking, practice: called } = suspicionOf({ ...its, told });
  expect(called).toBe('ours');
  expect(ranking.brackets[0]?.suspects[0]?.cause).toMatchObject({
    faults: [{ device: 'low sprag', is: 'slips' }],
  });
});

it('hears what a job’s driver says, and gives back what it makes nothing of', () => {
  const [complaint, at] = ['slips in second, smells of fish', '2026-11-25T12:40:07.000Z'];
  const text = newJobText({ unit: 'bench 4', complaint, by: 'TW', at });
  const { told } = caseOf(kestrel, { practice, job: openJob({ called: 'job', text }) });
  expect(told.observations.map(({ test, sure }) => [testText(test), sure])).toContainEqual([
    'D 2',
    'not sure',
  ]);
  expect(told.unused).toEqual(['smells of fish']);
});

it('refuses a text of what was seen with its problems, by the name that it was given', () => {
  const seen = { called: 'yesterday', text: 'D 1: drives\nD 22: slips\n' };
  expect(refusedBy(() => caseOf(kestrel, { practice, seen }))).toMatchObject({
    refused: 'bad.file',
    called: 'yesterday',
    problems: [{ place: { line: 2, column: 1 } }],
  });
});

it('tries the faults that are named, with what shows each on the bench, or two at once', () => {
  const only = 'low sprag: backwards, low sprag: seized';
  const { report, stand } = askFaults(kestrel, { only, seenFrom: 'output', hold: 'inner' });
  expect(stand).toMatchObject({ seenFrom: 'output', hold: 'inner' });
  expect([report.matrix.rows.length, report.bench?.length]).toEqual([2, 2]);
  const both = askFaults(kestrel, {
    only: 'low sprag: slips, low brake: will not apply',
    pairs: true,
  });
  expect(both.report.matrix.rows.length).toBe(3);
  expect(both.report).not.toHaveProperty('bench');
});

it.each<[string, Parameters<typeof askFaults>[1], object]>([
  ['a fault of nothing', { only: 'low sprog: slips' }, { refused: 'no.fault name', of: 'only' }],
  ['an end that is none', { seenFrom: 'above' }, { refused: 'no.end', given: 'above' }],
  ['a race that is none', { hold: 'middle' }, { refused: 'no.race', given: 'middle' }],
])('refuses %s', (_, request, why) => {
  expect(refusedBy(() => askFaults(kestrel, request))).toMatchObject(why);
});
