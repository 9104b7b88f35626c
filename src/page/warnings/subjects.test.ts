import { describe, expect, it } from 'vitest';
import { check } from '../../engine/check/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { subjectsOf } from './subjects.ts';

const TEXT = `
holdturn: 1
input: shaft
output: drum
sets:
  main: { sun: 30, ring: 66, planets: 5 }
  idle: { sun: 30, ring: 66, planets: 3 }
  back: { shares: idle, sun: 24 }
joined:
  shaft: [main.sun]
  drum: [main.carrier]
devices:
  low: { brake: main.ring }
  spare: { brake: drum }
  stray: { one-way: [shaft, second race], lets: clockwise }
  nothing: { clutch: [shaft, main.sun] }
ranges:
  D: { "1": [low], "2": [] }
`;

describe('the subjects of a warning', () => {
  const reading = readTrain(TEXT);
  const { train, problems } = reading;
  if (!train) throw new Error('the text is a train');
  const all = [...problems, ...check(reading)];
  const of = (problem: string) =>
    all
      .filter((one) => one.problem === problem)
      .flatMap((one) => subjectsOf(one, train).map(({ kind, name }) => `${kind} ${name}`));

  it.each([
    ['planets not evenly spaced', ['set main']],
    ['set stands alone', ['set idle', 'set back']],
    ['member carries nothing', ['member second race']],
    ['one body', ['device nothing']],
    ['device never applied', ['device spare']],
    ['gear is neutral', []],
  ])('%s', (problem, subjects) => {
    expect(all.map((one) => one.problem)).toContain(problem);
    expect(of(problem)).toEqual(subjects);
  });

  it('names a member by the label of its body, as the drawing does', () => {
    const place = { line: 1, column: 1, length: 1 };
    const warning = { problem: 'lonely name', near: 'x', severity: 'warning', place } as const;
    expect(subjectsOf({ ...warning, name: 'main.sun' }, train)).toEqual([
      { kind: 'member', name: 'shaft' },
    ]);
  });

  it('of one cause are what to look at: the devices or the set', () => {
    const place = { line: 1, column: 1, length: 1 };
    const cause = { problem: 'one cause', gears: 2, severity: 'warning', place } as const;
    const exchanged = { mend: 'devices exchanged', device: 'low', other: 'spare' } as const;
    expect(subjectsOf({ ...cause, ...exchanged }, train)).toEqual([
      { kind: 'device', name: 'low' },
      { kind: 'device', name: 'spare' },
    ]);
    const turned = { mend: 'turned round', device: 'stray', lets: 'anticlockwise' } as const;
    expect(subjectsOf({ ...cause, ...turned }, train)).toEqual([{ kind: 'device', name: 'stray' }]);
    const members = {
      mend: 'members exchanged',
      set: 'main',
      members: ['main.sun', 'main.ring'],
    } as const;
    expect(subjectsOf({ ...cause, ...members }, train)).toEqual([{ kind: 'set', name: 'main' }]);
  });
});
