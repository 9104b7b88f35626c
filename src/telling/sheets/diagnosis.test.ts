import fs from 'node:fs';
import { voiceOf } from '../narrative/index.ts';
import { describe, expect, it } from 'vitest';
import { type Experience, readExperience } from '../../engine/experience/index.ts';
import { inquire } from '../../engine/cause/index.ts';
import { testText } from '../../engine/sight/index.ts';
import { inTradeOrder } from '../../engine/triage/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { AT_THE_INPUT } from '../../asking/request/index.ts';
import { caseOf, suspicionOf } from '../../asking/faults/index.ts';
import { diagnosisSheet } from './diagnosis.ts';
import { oneWayCard } from './oneway.ts';
import { ours } from '../../../test/trains.ts';

const train = readTrain(`
holdturn: 1
input: turbine shaft
output: main shaft
sets: { set: { sun: 30, ring: 66 } }
joined: { turbine shaft: [set.sun], main shaft: [set.carrier] }
devices:
  ring band: { band: set.ring }
  ring sprag: { one-way: [set.ring, case], lets: clockwise }
ranges: { N: { N: [] }, D: { "1": [ring band] } }
teardown:
  sprag cage: { carries: [ring sprag], face: the lip }
  rest: { carries: [set.sun, set.ring, set.carrier, ring band] }
`).train as Train;
const text = fs.readFileSync(new URL('../../../experience.yaml', import.meta.url), 'utf8');
const { tests } = inquire(train, readExperience(text).experience as Experience);

// Common practice, no source: nobody drives before the fluid, the codes and the pressure are read.
it('the tests stand in the order of the trade, stall after all that is made outside', () => {
  const order = inTradeOrder(tests).map(({ test }) => test);
  const at = (test: (typeof order)[number]) => order.indexOf(test);
  expect(order).toHaveLength(tests.length);
  expect(at('fluid')).toBe(0);
  for (const [before, after] of [
    ['fluid', 'codes'],
    ['build record', 'codes'],
    ['codes', 'pressure'],
    ['pressure', 'engagement'],
    ['engagement', 'under power'],
    ['under power', 'coast'],
    ['coast', 'pan'],
    ['air check', 'stall'],
  ] as const) {
    expect(order).toContain(before);
    expect(order.lastIndexOf(before), `${before}, ${after}`).toBeLessThan(at(after));
  }
  expect(new Set(inTradeOrder(tests).map(testText))).toEqual(new Set(tests.map(testText)));
});

it('a leak that carries nothing where it slips says how it can be suspected all the same', () => {
  const experience = { called: 'ours', text };
  const seen = { called: 'seen', text: 'D 2: slips\n' };
  const suspicion = suspicionOf(caseOf(ours('kestrel-three-speed'), { experience, seen }));
  const sheet = JSON.stringify(diagnosisSheet(suspicion, voiceOf('en')));
  expect(sheet).toContain('its circuit leaks (it carries nothing where it slips;');
});

it('asks no power of park and neutral', () => {
  const plover = ours('plover-three-speed');
  const experience = { called: 'ours', text };
  const sheet = JSON.stringify(
    diagnosisSheet(suspicionOf(caseOf(plover, { experience })), voiceOf('en')),
  );
  expect(sheet).not.toMatch(/"[NP] under power/u);
  for (const lever of ['P', 'N']) expect(sheet).toContain(`"${lever} with the engine running"`);
  expect(sheet).toContain('"D 1 under power"');
});

describe('the one-way card', () => {
  const card = JSON.stringify(oneWayCard(train, voiceOf('en'), AT_THE_INPUT));

  it('names the face, never turns the case, and tells the wrong way as wrong', () => {
    expect(card).toContain('The face to look at, of the sprag cage: the lip');
    expect(card).toContain('wrong: the other way up');
    const rows = card.match(/"outer race: case","inner race: [^"]*"/gu);
    expect(rows).toHaveLength(2);
    expect(card).not.toMatch(/"inner race: [^"]*","outer race: case"/u);
    expect(card.match(/"look":"strong","turns"/gu)).toHaveLength(1);
  });
});
