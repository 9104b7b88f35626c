import fs from 'node:fs';
import { expect, it } from 'vitest';
import { testsOf } from '../../engine/sight/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { voiceOf } from '../voice/index.ts';
import { testName } from './suspicion.ts';

const file = new URL('../../../trains/kestrel-three-speed.train.yaml', import.meta.url);
const kestrel = readTrain(fs.readFileSync(file, 'utf8')).train as Train;

it.each(['en', 'es'] as const)('a test of one device says of which: %s', (language) => {
  const voice = voiceOf(language);
  const tests = testsOf(kestrel, () => true, 0).filter((test) => 'device' in test);
  const silent = tests.filter((test) => {
    const device = 'device' in test ? (test.device ?? '') : '';
    return !testName(test, voice).includes(voice.called(device));
  });
  expect(tests.length).toBeGreaterThan(20);
  expect(silent).toEqual([]);
});
