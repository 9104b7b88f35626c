import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { plan, type Plan } from '../../engine/plan/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { entryText, foldJob, newJobText, readJob, type Told } from '../records/index.ts';
import { builtIn, builtTold, buildTasks } from './index.ts';

const file = new URL('../../../trains/kestrel-three-speed.train.yaml', import.meta.url);
const KESTREL = readTrain(`${fs.readFileSync(file)}`).train as Train;
const PLAN = plan(KESTREL) as Plan;
const TASKS = buildTasks(PLAN);

// As it is read again from the file of a job.
const stands = (...told: Told[]) => {
  const at = (n: number) => `2026-11-25T08:00:00.${`${n}`.padStart(3, '0')}Z`;
  const head = newJobText({ unit: 'u', complaint: '', by: 'TW', at: at(0) });
  const lines = told.map((its, n) => entryText({ at: at(n + 1), who: 'TW', told: its }).text);
  const { job, problems } = readJob(head + lines.join(''));
  expect(problems).toEqual([]);
  const all = job && builtIn(PLAN, foldJob(job));
  return [...(all ?? [])].map(([key, { outcome }]) => `${key} ${outcome}`);
};

const built = (key: string, outcome: 'done' | 'right' | 'wrong' = 'done', said?: string): Told => {
  const task = TASKS.find((its) => its.key === key);
  if (!task) throw new Error(`no task ${key}`);
  return builtTold(task, outcome, said);
};

describe('where a build stands', () => {
  it('asks every check of the plan once, and ends with the first start', () => {
    const checks = PLAN.steps.flatMap((step) => (step.does === 'fit' ? step.checks : []));
    const asked = TASKS.flatMap((task) => (task.what === 'check' ? [task.check] : []));
    for (const check of checks) expect(asked.filter((its) => its === check)).toHaveLength(1);
    expect(new Set(TASKS.map(({ key }) => key)).size).toBe(TASKS.length);
    expect(TASKS.at(-1)?.what).toBe('start');
  });

  it('is told by the entries of a job, whatever words were used', () => {
    const stop = built('8 stop', 'done', 'rear ring: left out');
    const said = [built('1'), built('6.1', 'right', 'no gira'), stop, built('start 2')];
    expect(stands(...said, { kind: 'note', note: 'build 9: a bench' })).toEqual([
      '1 done',
      '6.1 right',
      '8 stop done',
      'start 2 done',
    ]);
  });

  it('is told of every task that there is', () => {
    expect(stands(...TASKS.map(({ key }) => built(key)))).toHaveLength(TASKS.length);
  });

  it('is open again from where everything came off, the first start with it', () => {
    const wrong = built('6.1', 'wrong', 'it turns both ways');
    const back: Told = { kind: 'unbuilt', step: '6', why: 'rear ring: not home in the main shaft' };
    expect(stands(built('5'), built('6'), wrong, built('start 1'), back)).toEqual(['5 done']);
  });

  it('is taken up at a step: all before it stands so, but each stop is still to be looked at', () => {
    const found: Told = { kind: 'built', task: '9', of: 'rear carrier', went: 'found' };
    const all = stands(built('1'), built('6.1', 'wrong', 'it turns both ways'), found);
    expect(all.filter((its) => its.endsWith('wrong') || its.includes('stop'))).toEqual([]);
    expect(all).toContain('1 done');
    expect(all).toContain('6.1 found');
    expect(all.at(-1)).toBe('9 found');
    const open = TASKS.find(({ key }) => !all.some((its) => its.startsWith(`${key} `)));
    expect(open?.key).toBe('8 stop');
    const back: Told = { kind: 'unbuilt', step: '6', why: 'rear ring: left out' };
    expect(stands(found, back).at(-1)).toMatch(/^5/u);
  });

  it('knows nothing of a step that names a part of another file', () => {
    expect(stands({ kind: 'built', task: '6', of: 'overdrive carrier' })).toEqual([]);
    expect(stands({ kind: 'built', task: '99' })).toEqual([]);
  });
});
