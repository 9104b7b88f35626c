import { expect, it } from 'vitest';
import { voiceOf } from '../narrative/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { stripSheet } from './strip.ts';

const train = readTrain(`
holdturn: 1
input: turbine shaft
output: main shaft
sets: { set: { sun: 30, ring: 66 } }
joined: { turbine shaft: [set.sun], main shaft: [set.carrier] }
devices: { ring brake: { brake: set.ring } }
preload: { side bearings: { turning: { least: 1 Nm, most: 2 Nm } } }
`).train as Train;

it('a preload is read before the unit comes apart', () => {
  expect(JSON.stringify(stripSheet(train, voiceOf('en')))).toContain('before, side bearings');
  expect(JSON.stringify(stripSheet(train, voiceOf('es')))).toContain('antes, side bearings');
});
