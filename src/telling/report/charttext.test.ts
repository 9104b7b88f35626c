import { expect, it } from 'vitest';
import { voiceOf } from '../narrative/index.ts';
import { chart } from '../../engine/chart/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { Language } from '../narrative/index.ts';
import { PLAIN } from '../text/page.ts';
import { chartJson } from '../data/index.ts';
import { chartText } from './charttext.ts';

const train = readTrain(`
holdturn: 1
input: turbine shaft
output: axle case
final drive: final drive
sets: { set: { sun: 30, ring: 60 } }
gear pairs: { final drive: { driver: [output gear, 20], driven: [axle case, 70] } }
joined: { turbine shaft: [set.sun], output gear: [set.carrier] }
devices:
  ring brake: { brake: set.ring }
  lock-up: { clutch: [turbine shaft, output gear] }
  ring sprag: { one-way: [set.ring, case], lets: clockwise }
  park pawl: { pawl: output gear }
ranges: { P: { P: [park pawl] }, D: { "1": [ring brake], "2": [lock-up] }, E: { "1": [] } }
`).train as Train;

const told = (language: Language) => {
  return chartText(train, chart(train), false, {
    voice: voiceOf(language),
    columns: 120,
    ink: PLAIN,
  });
};

it('counts a pawl as what it is, and not among the friction devices', () => {
  expect(told('en')).toContain('2 friction devices and a park pawl, 8 combinations');
  expect(told('es')).toContain('2 elementos de fricción y un trinquete de estacionamiento');
});

// 1 + 60/30 = 3 by Willis; an external pair of 20 and 70 makes it −21/2.
it('tells the ratio of the gear itself where the file names a final drive', () => {
  const line = told('en')
    .split('\n')
    .find((its) => its.startsWith('D 1'));
  expect(line).toMatch(/−21\/2 = −10\.5 +3 /u);
  expect(told('en')).toContain('before final drive');
  const [, brake] = (chartJson(chart(train)) as never as { gears: Record<string, unknown>[] })
    .gears;
  expect(brake?.['beforeFinalDrive']).toMatchObject({ exact: '3' });
});

// Both off, the sprag holds the ring under power: that is E 1; both on, ring and sun agree on nothing.
it('tells in which gear an overlap or a gap drives', () => {
  const line = told('en')
    .split('\n')
    .find((its) => its.startsWith('D 1 > D 2'));
  expect(line).toMatch(/ring brake +lock-up +tied up +drives: E 1/u);
});
