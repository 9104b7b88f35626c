import fs from 'node:fs';
import { expect, it } from 'vitest';
import { caseOf, suspicionOf } from '../../asking/faults/index.ts';
import { askCheck } from '../../asking/gears/index.ts';
import { asIfTold } from '../../asking/job/index.ts';
import { trainIn } from '../../asking/request/index.ts';
import { refusedBy } from '../../asking/request/refusedby.ts';
import { entryText, foldJob, newJobText, readJob } from '../../shop/records/index.ts';
import { Answering } from './answering.ts';

const train = fs.readFileSync('trains/kestrel-three-speed.train.yaml', 'utf8');
const experience = { called: 'ours', text: fs.readFileSync('experience.yaml', 'utf8') };
const at = '2026-11-25T12:40:07.000Z';

function jobOf(...said: readonly (readonly [string, string])[]) {
  const lines = said.map(([of, text]) =>
    entryText({ at, who: 'TW', told: { kind: 'seen', of, text } }),
  );
  const text = newJobText({ unit: 'x', complaint: '', by: 'TW', at });
  const { job } = readJob(text + lines.map((one) => one.text).join(''));
  return foldJob(job as NonNullable<typeof job>);
}

it('answers as the command does, and forgets nothing of another train', () => {
  const answering = new Answering(experience);
  const job = jobOf(['D 2', 'slips'], ['D 1', 'drives'], ['fluid', 'burnt']);
  const told = { train, job, skipped: [] };
  const { ranking } = answering.answer('examine', told);
  const its = suspicionOf(
    caseOf(trainIn({ called: '', text: train }).train, {
      experience,
      job: asIfTold(job, []),
    }),
  );
  expect(ranking.brackets).toEqual(its.ranking.brackets);
  const wren = fs.readFileSync('trains/wren-plain-set.train.yaml', 'utf8');
  const other = answering.answer('examine', { train: wren, job: jobOf(), skipped: [] });
  expect(other.tests.length).not.toBe(its.inquiry.tests.length);
  expect(answering.answer('examine', told).ranking.brackets).toEqual(its.ranking.brackets);
});

it('shows a suspect in a gear that was seen to be wrong', () => {
  const answering = new Answering(experience);
  const told = { train, job: jobOf(['D 3', 'slips'], ['D 1', 'drives']), skipped: [] };
  const { ranking } = answering.answer('examine', told);
  const places = ranking.brackets.flatMap(({ suspects }, bracket) =>
    suspects.map(({ cause }, suspect) => ({ cause, bracket, suspect })),
  );
  const found = places.find(({ cause }) => {
    const [fault] = cause.faults;
    return fault && 'device' in fault && fault.device === 'forward clutch' && fault.is === 'slips';
  });
  const its = answering.answer('explain', { ...told, bracket: 0, suspect: 0, ...found });
  expect(its.road).toMatchObject({ gear: { range: 'D', gear: '3' }, now: { is: 'slips' } });
});

it('refuses an entry that means nothing to the train, and a speed without a scale', () => {
  const answering = new Answering(experience);
  const told = { train, job: jobOf(['D 3', 'drives']), skipped: [] };
  const fits = (of: string, text: string) =>
    refusedBy(() => answering.answer('fits', { ...told, told: { kind: 'seen', of, text } }));
  expect(fits('D 2', 'slips')).toBe(undefined);
  expect(fits('D 22', 'slips')).toMatchObject({ refused: 'bad.entry' });
  expect(fits('D 2', '"2150 rpm at 60 km/h"')).toMatchObject({
    problem: { problem: 'no scale of speeds' },
  });
});

it('tells of a file what the command tells of it, the one cause first', () => {
  const answering = new Answering(experience);
  const backwards = train.replace(/(low sprag: .*lets: )clockwise/u, '$1anticlockwise');
  const told = answering.answer('checked', { train: backwards });
  expect(told[0]?.problem).toBe('one cause');
  expect(told).toEqual(askCheck(backwards).problems);
  expect(answering.answer('checked', { train: 'holdturn: 1\n' })).toEqual([]);
});
