import { expect, it } from 'vitest';
import { voiceOf } from '../narrative/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { chartSheet } from './chart.ts';

const train = readTrain(`
holdturn: 1
input: turbine shaft
output: axle case
final drive: final drive
sets: { set: { sun: 30, ring: 60 } }
gear pairs: { final drive: { driver: [output gear, 20], driven: [axle case, 70] } }
joined: { turbine shaft: [set.sun], output gear: [set.carrier] }
devices: { ring brake: { brake: set.ring }, park pawl: { pawl: output gear } }
ranges: { P: { P: [park pawl] }, D: { "1": [ring brake] } }
`).train as Train;

// 1 + 60/30 = 3 by Willis; an external pair of 20 and 70 makes it −21/2.
it('the chart tells the ratio of the gear beside the whole one, and that a pawl locks in park', () => {
  const [en, es] = (['en', 'es'] as const).map((its) =>
    JSON.stringify(chartSheet(train, voiceOf(its))),
  );
  expect(en).toMatch(/\u221221\/2[^"]*\\ngear: 3"/u);
  expect(en).toContain('locked in park');
  expect(es).toContain('marcha: 3');
  expect(es).toContain('bloqueado en estacionamiento');
});
