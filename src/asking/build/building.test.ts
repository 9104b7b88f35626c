import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readTrain } from '../../engine/trainfile/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { Told } from '../../shop/records/index.ts';
import { asIfTold } from '../job/index.ts';
import {
  askFeel,
  askHalfBuilt,
  askPlan,
  builtIn,
  builtTold,
  buildTasks,
  takenOffTold,
} from './index.ts';

const file = new URL('../../../trains/kestrel-three-speed.train.yaml', import.meta.url);
const KESTREL = readTrain(`${fs.readFileSync(file)}`).train as Train;
const PLAN = askPlan(KESTREL);
const TASKS = buildTasks(PLAN);

const stands = (...told: Told[]) => {
  const all = builtIn(PLAN, asIfTold(undefined, told).job);
  return [...all].map(([key, { outcome }]) => `${key} ${outcome}`);
};

describe('where a build stands', () => {
  it('asks every check of the plan once, and ends with the first start', () => {
    const checks = PLAN.steps.flatMap((step) => (step.does === 'fit' ? step.checks : []));
    const asked = TASKS.flatMap((task) => (task.what === 'check' ? [task.check] : []));
    for (const check of checks) expect(asked.filter((its) => its === check)).toHaveLength(1);
    expect(new Set(TASKS.map(({ key }) => key)).size).toBe(TASKS.length);
    expect(TASKS.at(-1)?.what).toBe('start');
  });

  it('is told by the notes of a job, whichever language wrote them', () => {
    expect(
      stands(
        builtTold('1', 'done', '1. output cover', 'en'),
        builtTold('6.1', 'right', 'it turns neither way', 'es'),
        builtTold('8 stop', 'done', 'rear ring: left out', 'es'),
        builtTold('start 2', 'done', 'Convertidor', 'es'),
        { kind: 'note', note: 'build a bench' },
      ),
    ).toEqual(['1 done', '6.1 right', '8 stop done', 'start 2 done']);
  });

  it('is open again from where everything came off, the first start with it', () => {
    expect(
      stands(
        builtTold('5', 'done', '5. main shaft', 'en'),
        builtTold('6', 'done', '6. rear ring', 'en'),
        builtTold('6.1', 'wrong', 'it turns both ways', 'en'),
        builtTold('start 1', 'done', 'Cooler flushed', 'en'),
        takenOffTold(6, 'rear ring: not home in the main shaft', 'es'),
      ),
    ).toEqual(['5 done']);
  });

  it('knows nothing of a step that names a part of another file', () => {
    expect(stands(builtTold('6', 'done', '6. overdrive carrier', 'en'))).toEqual([]);
  });

  it('lets a right build feel as the plan says', () => {
    for (const step of PLAN.steps) {
      for (const check of step.does === 'fit' ? step.checks : []) {
        const half = askHalfBuilt(KESTREL, PLAN, step);
        const both = askFeel(half, step, check);
        const turns = [both.clockwise.turns, both.anticlockwise.turns];
        const said = {
          'both ways': [true, true],
          'clockwise only': [true, false],
          'anticlockwise only': [false, true],
          'neither way': [false, false],
        }[check.right];
        expect([step.number, ...turns]).toEqual([step.number, ...(said ?? [])]);
      }
    }
  });
});
