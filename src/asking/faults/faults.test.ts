import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Cause } from '../../engine/cause/index.ts';
import { type Test, testText } from '../../engine/sight/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { entryText, newJobText } from '../../shop/records/index.ts';
import { openJob } from '../job/index.ts';
import { refusedBy } from '../request/refusedby.ts';
import { askFaults, caseOf, examine, explanationOf, questionOf, suspicionOf } from './index.ts';

const kestrel = readTrain(fs.readFileSync('trains/kestrel-three-speed.train.yaml', 'utf8'))
  .train as Train;
const experience = { called: 'ours', text: fs.readFileSync('experience.yaml', 'utf8') };

it('finds what is suspected by a text of what was seen', () => {
  const seen = { called: 'seen', text: 'D 1: slips\nL 1: drives\n' };
  const { told, ...its } = caseOf(kestrel, { experience, seen });
  expect(told.observations.map(({ test }) => testText(test))).toEqual(['D 1', 'L 1']);
  const { ranking, experience: called } = suspicionOf({ ...its, told });
  expect(called).toBe('ours');
  expect(ranking.brackets[0]?.suspects[0]?.cause).toMatchObject({
    faults: [{ device: 'low sprag', is: 'slips' }],
  });
});

it('hears what a job’s driver says, and gives back what it makes nothing of', () => {
  const [complaint, at] = ['slips in second, smells of fish', '2026-11-25T12:40:07.000Z'];
  const text = newJobText({ unit: 'bench 4', complaint, by: 'TW', at });
  const { told } = caseOf(kestrel, { experience, job: openJob({ called: 'job', text }) });
  expect(told.observations.map(({ test, sure }) => [testText(test), sure])).toContainEqual([
    'D 2',
    'not sure',
  ]);
  expect(told.unused).toEqual(['smells of fish']);
});

it('hears once what stands in the job and is typed again', () => {
  const [complaint, at] = ['slips in second, smells of fish', '2026-11-25T12:40:07.000Z'];
  const job = openJob({
    called: 'job',
    text: newJobText({ unit: 'bench 4', complaint, by: 'TW', at }),
  });
  const heard = (text?: string) =>
    caseOf(kestrel, { experience, job, ...(text && { seen: { called: 'seen', text } }) }).told;
  expect(heard(`driver says: ${complaint}\n`)).toEqual(heard());
  expect(heard('driver says: It slips in second\n')).toEqual(heard());
  expect(heard('driver says: slips in third\n').observations).toHaveLength(2);
});

it('goes from what a job found back to why it failed, and says nothing of it before', () => {
  const head = newJobText({ unit: 'x', complaint: '', by: 'TW', at: '2026-11-25T12:40:07.000Z' });
  const note = { kind: 'note', note: 'second brake: burnt' } as const;
  const { text } = entryText({ at: '2026-11-25T12:41:07.000Z', who: 'TW', told: note });
  const whys = (job: string, seen: string) =>
    suspicionOf(
      caseOf(kestrel, {
        experience,
        job: openJob({ called: 'job', text: job }),
        seen: { called: 'seen', text: seen },
      }),
    ).failures.map(({ root, of }) => [root, of].join(' '));
  expect(whys(head + text, '')[0]).toBe('leaking circuit second brake');
  expect(whys(head, 'fluid: burnt')).toEqual([]);
});

it('takes out what the driver’s words were not meant for, in a file and in a job', () => {
  const says = 'driver says: slips in second and third\n';
  const texts = (text: string) => {
    const { told } = caseOf(kestrel, { experience, seen: { called: 'seen', text } });
    return told.observations.map(({ test }) => testText(test));
  };
  expect(texts(says)).toEqual(['D 2', 'D 3']);
  expect(texts(`${says}D 3: not said\n`)).toEqual(['D 2']);
  expect(texts(`- ${says}- D 3: not said\n- D 3: slips\n`)).toEqual(['D 2', 'D 3']);
  const head = newJobText({ unit: 'x', complaint: '', by: 'TW', at: '2026-11-25T12:40:07.000Z' });
  const lines = ['{ driver says: slips in second and third }', '{ D 3: not said }'].map(
    (told, k) => {
      const [, of = '', text = ''] = /^\{ (.*?): (.*) \}$/u.exec(told) ?? [];
      const at = `2026-11-25T12:40:0${k}.000Z`;
      return entryText({ at, who: 'TW', told: { kind: 'seen', of, text } }).text;
    },
  );
  const job = openJob({ called: 'job', text: head + lines.join('') });
  const { told } = caseOf(kestrel, { experience, job });
  expect(told.heard.map(({ said }) => said)).toEqual(['slips in second']);
  expect(told.observations.map(({ test }) => testText(test))).toEqual(['D 2']);
});

describe('an examination', () => {
  const seen = { called: 'seen', text: 'D 1: slips\nL 1: drives\nR: drives\nD 2: drives\n' };
  const { suspicion, examination } = examine(caseOf(kestrel, { experience, seen }));

  it('is plain data that says what the suspicion says', () => {
    const copy = structuredClone(examination);
    expect(copy).toEqual(examination);
    expect(copy.ranking.brackets).toEqual(suspicion.ranking.brackets);
    expect(copy.advice.best?.test).toEqual(suspicion.advice.best?.test);
    const texts = copy.tests.map(({ test }) => testText(test));
    expect(new Set(texts)).toEqual(new Set(suspicion.inquiry.tests.map(testText)));
  });

  it('offers no test that somebody skips', () => {
    const best = testText(suspicion.advice.best?.test as Test);
    const skipped = examine(caseOf(kestrel, { experience, seen }), [best]).examination;
    expect(testText(skipped.advice.best?.test as Test)).not.toBe(best);
  });

  it('asks of any test what it may show, what that leaves, and why it is not made now', () => {
    const { outcomes, own, parts } = questionOf(suspicion, 'D 3');
    expect(outcomes[own as number]).toMatchObject({ word: 'drives' });
    expect(parts.every(({ outcome }) => outcomes.includes(outcome))).toBe(true);
    expect(questionOf(suspicion, 'R coast').stop).toEqual({ why: 'backwards' });
    expect(questionOf(suspicion, 'pressure D 2').test).toMatchObject({ gear: 'D 2' });
    expect(refusedBy(() => questionOf(suspicion, 'D 22'))).toMatchObject({ refused: 'bad.entry' });
  });

  it('proves that its first suspect explains all that was seen, and what another does not', () => {
    const [first] = suspicion.ranking.brackets;
    const explained = explanationOf(suspicion, first?.suspects[0]?.cause as Cause);
    expect(explained.length).toBe(4);
    expect(explained.every(({ agrees, by }) => agrees && by === 'train')).toBe(true);
    const dead = suspicion.inquiry.causes.find(({ faults: [fault] }) => {
      return fault && 'device' in fault && fault.device === 'forward clutch';
    }) as Cause;
    const missed = explanationOf(suspicion, dead).filter(({ agrees }) => !agrees);
    expect(missed.map(({ observation }) => testText(observation.test))).toContain('L 1');
  });
});

it('refuses a text of what was seen with its problems, by the name that it was given', () => {
  const seen = { called: 'yesterday', text: 'D 1: drives\nD 22: slips\n' };
  expect(refusedBy(() => caseOf(kestrel, { experience, seen }))).toMatchObject({
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

describe('what a strip found', () => {
  const at = (k: number) => `2026-11-25T12:4${k}:07.000Z`;
  const head = newJobText({ unit: 'x', complaint: '', by: 'TW', at: at(0) });
  type Said = Parameters<typeof entryText>[0]['told'];
  const suspected = (...said: readonly NonNullable<Said>[]) => {
    const lines = said.map((told, k) => entryText({ at: at(k + 1), who: 'TW', told }).text);
    const job = openJob({ called: 'job', text: head + lines.join('') });
    return suspicionOf(caseOf(kestrel, { experience, job }));
  };
  const chanceOf = ({ ranking }: ReturnType<typeof suspected>, device: string) =>
    ranking.brackets
      .flatMap(({ suspects }) => suspects)
      .filter(({ cause: { faults } }) =>
        faults.some((one) => 'device' in one && one.device === device),
      )
      .reduce((sum, { chance }) => sum + chance, 0);
  const lost = { kind: 'seen', of: 'D 2', text: 'slips' } as const;
  const note = (its: string) => ({ kind: 'note', note: its }) as const;

  it('speaks for whom it is of, and for none that was sound', () => {
    const before = suspected(lost);
    const loose = suspected(lost, note('roller cage: Turns both ways'));
    expect(chanceOf(before, 'second roller')).toBeLessThan(0.5);
    expect(chanceOf(loose, 'second roller')).toBeGreaterThan(0.8);
    const burnt = suspected(lost, note('second pack: Linings burnt'));
    expect(chanceOf(burnt, 'second brake')).toBeGreaterThan(chanceOf(before, 'second brake'));
    const split = suspected(lost, note('second pack: Seals cut or hard'));
    expect(split.ranking.brackets[0]?.suspects[0]?.cause).toMatchObject({
      cause: /leaks|not apply/u,
    });
    const sound = suspected(lost, note('roller cage: En buen estado'));
    expect(chanceOf(sound, 'second roller')).toBeLessThan(chanceOf(before, 'second roller'));
    expect(chanceOf(suspected(lost, note('second pack: not burnt')), 'second brake')).toBe(
      chanceOf(before, 'second brake'),
    );
  });

  it('counts no more once the unit is built anew and signed for; a note says so', () => {
    const cage = note('roller cage: Turns both ways');
    const built = { kind: 'built', task: '1' } as const;
    const signed = { kind: 'signed', what: 'build sheet' } as const;
    const before = suspected();
    expect(suspected(lost, cage, built, signed).ranking).toEqual(before.ranking);
    // Neither a build that nobody signed for, nor a signature before it.
    expect(suspected(lost, cage, built).ranking).not.toEqual(before.ranking);
    expect(suspected(signed, lost, built).ranking).not.toEqual(before.ranking);
    // What is told afterwards counts alone.
    expect(suspected(cage, built, signed, lost).ranking).toEqual(suspected(lost).ranking);
    const lines = [lost, built, signed].map(
      (told, k) => entryText({ at: at(k + 1), who: 'TW', told }).text,
    );
    const job = openJob({ called: 'job', text: head + lines.join('') });
    caseOf(kestrel, { experience, job });
    expect(job.notes('')).toContainEqual({ note: 'rebuilt' });
  });

  it('asks no more of the car once the unit is in pieces, and again when it is whole', () => {
    const off = { kind: 'removed', part: 'pump' } as const;
    const on = { kind: 'installed', part: 'pump' } as const;
    const onCar = ({
      at: stage,
      advice: { best, others, stops },
    }: ReturnType<typeof suspected>) => [
      stage,
      [best, ...others].flatMap((one) => one ?? []).some(({ opening }) => opening > 0),
      [best, ...others].some((one) =>
        ['under power', 'fluid', 'pressure'].includes(one?.test.test ?? ''),
      ),
      stops.map((one) => one.stops),
    ];
    expect(onCar(suspected(lost))).toEqual([
      'on the road',
      false,
      true,
      ['pulling hard', 'stall test', 'opening'],
    ]);
    expect(onCar(suspected(lost, off))).toEqual(['in pieces', false, false, []]);
    expect(onCar(suspected(lost, off, on)).slice(0, 3)).toEqual(['on the road', false, true]);
  });
});
