import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { readTrain } from '../src/engine/trainfile/index.ts';
import { flow } from '../src/engine/flow/index.ts';
import { ROOT } from './sources.ts';

const README = readFileSync(path.join(ROOT, 'README.md'), 'utf8');
const blocks = [...README.matchAll(/^```yaml\n([^]*?)^```$/gmu)].map(([, text = '']) => text);

it('the train in ten lines is one, and a gear pair and a differential go behind it', () => {
  const first = blocks.find((text) => text.startsWith('holdturn: 1')) ?? '';
  expect(readTrain(first).problems).toEqual([]);
  const behind = blocks.find((text) => text.startsWith('gear pairs:')) ?? '';
  // The sets and joins of both, and the axle's left half shaft held, as on a stand.
  const grown = first
    .replace(/^output: .*$/mu, 'output: axle.right')
    .replace(/^sets:$/mu, `sets:\n${/^ {2}axle: .*$/mu.exec(behind)?.[0]}`)
    .replace('joined: {', `joined: {${/joined: \{(.*) \}/u.exec(behind)?.[1]},`)
    .replace(/^devices:$/mu, `devices:\n  half shaft: { brake: axle.left }`)
    .concat(/^gear pairs:\n.*\n/mu.exec(behind)?.[0] ?? '');
  const { train, problems } = readTrain(grown);
  expect(problems).toEqual([]);
  if (!train) return;
  // 16/5 of the set, 62/17 of the pair the other way round, and half of it at a differential.
  expect(flow(train, ['ring band', 'half shaft']).drive.ratio).toEqual({ num: -496, den: 85 });
});
