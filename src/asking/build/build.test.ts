import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Train } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { entryText, newJobText } from '../../shop/records/index.ts';
import { openJob } from '../job/index.ts';
import { refusedBy } from '../request/refusedby.ts';
import { askBands, askEndPlays, askMeasurements, askPacks, askPlan, askWear } from './index.ts';

const trainOf = (name: string) => {
  return readTrain(fs.readFileSync(`trains/${name}.train.yaml`, 'utf8')).train as Train;
};
const kestrel = trainOf('kestrel-three-speed');
// An invented job of invented people.
const JOB =
  newJobText({ unit: 'bench 4', complaint: '', by: 'TW', at: '2026-11-25T12:40:07.000Z' }) +
  entryText({
    at: '2026-11-25T12:50:07.000Z',
    who: 'TW',
    told: { kind: 'reading', of: 'main shaft', text: '["0.30 mm"]' },
  }).text;
const given = (text: string) => ({ called: 'readings', text });

describe('what is measured', () => {
  it('is judged, and is wrong where something is outside', () => {
    const plays = askEndPlays(kestrel, { readings: given('turbine shaft: [0.15 mm]\n') });
    expect(plays.judged.map(({ endPlay }) => endPlay.shaft)).toEqual(['turbine shaft']);
    expect(plays.judged.map(({ verdict }) => verdict)).toEqual(['too small']);
    expect(plays.wrong).toBe(true);
  });

  it('is drawn by chance where that is asked', () => {
    const asked = { readings: given('turbine shaft: [0.82 mm]\n'), trials: '5000', series: '7' };
    expect(askEndPlays(kestrel, asked).judged[0]?.draws).toMatchObject({ draws: 5000 });
  });

  it('is the readings’ before the job’s', () => {
    const job = openJob({ called: 'job', text: JOB });
    const all = askMeasurements(kestrel, { job });
    expect(
      all.endplay.find(({ endPlay }) => endPlay.shaft === 'main shaft')?.verdict,
    ).toBeDefined();
    expect(askEndPlays(kestrel, { job }).judged.length).toBe(1);
    const readings = given('turbine shaft: [0.82 mm]\n');
    expect(askEndPlays(kestrel, { readings, job }).judged.length).toBe(2);
  });
});

it.each<[string, () => unknown, object]>([
  [
    'no readings at all',
    () => askWear(kestrel, { readings: given('# nothing yet\n') }),
    { refused: 'no.measured wear', called: 'readings' },
  ],
  [
    'readings of another kind',
    () => askBands(kestrel, { readings: given('intermediate band: { feeler: [1.40 mm] }\n') }),
    { refused: 'bad.file', called: 'readings' },
  ],
  [
    'readings that have a mistake, among others, before a sheet is filled in from them',
    () => askMeasurements(kestrel, { readings: given('second brake: { feeler: [wide] }\n') }),
    { refused: 'bad.file', called: 'readings' },
  ],
  [
    'plays that have a mistake, too',
    () => askMeasurements(kestrel, { plays: given('turbine shaft: [wide]\n') }),
    { refused: 'bad.file', called: 'readings' },
  ],
  [
    'a number of trials that is none',
    () => askPacks(kestrel, { trials: 'many' }),
    { refused: 'bad.trials', given: 'many', least: 1000 },
  ],
  [
    'a series of no trials',
    () => askPacks(kestrel, { series: '7' }),
    { refused: 'bad.series alone' },
  ],
  ['a plan of no parts', () => askPlan(trainOf('wren-plain-set')), { refused: 'no.teardown' }],
])('refuses %s', (_, ask, why) => {
  expect(refusedBy(ask)).toMatchObject(why);
});

it('plans the build of a train whose file tells how it comes apart', () => {
  expect(askPlan(kestrel).steps.length).toBeGreaterThan(10);
});
