import fs from 'node:fs';
import { expect, it } from 'vitest';
import { readTrain } from '../../engine/trainfile/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { askFeel, askHalfBuilt, askPlan } from './index.ts';

const file = new URL('../../../trains/kestrel-three-speed.train.yaml', import.meta.url);
const KESTREL = readTrain(`${fs.readFileSync(file)}`).train as Train;
const PLAN = askPlan(KESTREL);

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
