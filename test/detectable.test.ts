import fs from 'node:fs';
import { expect, test } from 'vitest';
import { CheckFinder, faultMatrix, faultText, roadSign } from '../src/engine/faults/index.ts';
import type { Train } from '../src/engine/train/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';

const FOLDER = new URL('../trains/', import.meta.url);
const TRAINS = fs.readdirSync(FOLDER).filter((name) => name.endsWith('.train.yaml'));

// What neither a road test nor turning by hand shows, and why.
const NOT_SHOWN: Record<string, readonly string[]> = {
  // Nothing drives this motor's shaft in any gear of the file, and loose or not it turns either
  // way: only whether the wheels follow it, or a look, would tell.
  'tern-power-split.train.yaml': ['drive motor shaft: stripped at reduction.sun'],
};

test.each(TRAINS)('every single fault of %s shows on the road or at the bench', (name) => {
  const { train } = readTrain(fs.readFileSync(new URL(name, FOLDER), 'utf8'));
  const matrix = faultMatrix(train as Train);
  const finder = new CheckFinder(train as Train);
  const hidden = matrix.rows.filter((row) => !roadSign(matrix, row) && !finder.sign(row.faults));
  expect(hidden.map(({ faults }) => faults.map(faultText).join(', '))).toEqual(
    NOT_SHOWN[name] ?? [],
  );
});
