import fs from 'node:fs';
import { expect, it } from 'vitest';
import { askFaults } from '../../asking/faults/index.ts';
import { faultText } from '../../engine/faults/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { foldsOf } from './folds.ts';

const kestrel = readTrain(fs.readFileSync('trains/kestrel-three-speed.train.yaml', 'utf8'))
  .train as Train;

it('folds every fault once: by device, and by what no road test parts', () => {
  const { matrix } = askFaults(kestrel, {}).report;
  const { folds, silent } = foldsOf(matrix);
  const shown = folds.flatMap(({ classes }) => classes.flatMap(({ rows }) => rows));
  expect(new Set([...shown, ...silent])).toEqual(new Set(matrix.rows));
  expect(shown.length + silent.length).toBe(matrix.rows.length);
  expect(folds.map(({ device }) => device)).toEqual([
    'forward clutch',
    'direct clutch',
    'intermediate band',
    'second brake',
    'second roller',
    'low brake',
    'low sprag',
    '',
  ]);
  const second = folds.find(({ device }) => device === 'second brake');
  expect(
    second?.classes[0]?.rows.map(({ faults: [fault] }) => fault && faultText(fault)),
  ).toContain('second roller: slips');
});
