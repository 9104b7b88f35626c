import fs from 'node:fs';
import path from 'node:path';
import { beforeAll, expect, it } from 'vitest';
import { parse } from 'yaml';
import type { Train } from '../src/engine/train/index.ts';
import { readTrain } from '../src/engine/trainfile/index.ts';
import { answersOf, fractionOf } from './answers.ts';
import { loadPeers, type Peer } from './peers.ts';
import { ROOT } from './sources.ts';

const FOLDER = path.join(ROOT, 'trains');
const NAMES = fs
  .readdirSync(FOLDER)
  .filter((file) => file.endsWith('.train.yaml'))
  .map((file) => file.slice(0, -'.train.yaml'.length));

let peer: Peer;
beforeAll(async () => {
  peer = (await loadPeers())[0] as Peer;
});

// What scripts/answers.ts would write of them today, without the engine.
it.each(NAMES)('a general-purpose solver finds the expected answers of %s', (name) => {
  const read = (end: string) => fs.readFileSync(path.join(FOLDER, `${name}.${end}`), 'utf8');
  const { ranges } = parse(read('expected.yaml'));
  const found = answersOf(readTrain(read('train.yaml')).train as Train, peer);
  expect(inDigits(found)).toEqual(inDigits(ranges));
});

// Fractions of very large numbers are beyond what a solver in floats can tell apart.
function inDigits(value: unknown): unknown {
  return JSON.parse(JSON.stringify(value), (_, its: unknown) => {
    const [, num, den = '1'] = /^(-?\d+)(?:\/(\d+))?$/u.exec(String(its)) ?? [];
    return num === undefined ? its : (Number(num) / Number(den)).toPrecision(9);
  });
}

it.each([
  [17 / 7, '17/7'],
  [-3102 / 817, '-3102/817'],
  [1, '1'],
  [0.3, '3/10'],
])('%f is %s', (value, text) => {
  expect(fractionOf(value)).toBe(text);
});
