import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { toText } from '../../engine/linear/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { refusedBy } from '../request/refusedby.ts';
import { askCapacity, askChart, askCheck, askFlow, askHand } from './index.ts';

const trainOf = (name: string) => {
  return readTrain(fs.readFileSync(`trains/${name}.train.yaml`, 'utf8')).train as Train;
};
const kestrel = trainOf('kestrel-three-speed');
const wren = trainOf('wren-plain-set');

describe('how a gear works', () => {
  it('is asked by its names, in the trade’s other words and any case', () => {
    const answer = askFlow(kestrel, { range: ' d ', gear: '1' });
    if (answer.asked !== 'gear') throw new Error(answer.asked);
    expect(answer.gear).toEqual({ range: 'D', gear: '1' });
    expect(toText(answer.flow.drive.ratio ?? { num: 0, den: 1 })).toBe('17/7');
  });

  it('is asked of every gear of a range', () => {
    const answer = askFlow(kestrel, { range: 'D' });
    if (answer.asked !== 'gears') throw new Error(answer.asked);
    expect(answer.gears.map(({ range, gear }) => `${range} ${gear}`)).toEqual([
      'D 1',
      'D 2',
      'D 3',
    ]);
  });

  it.each([
    [['low sprag: backwards', 'low sprag: backwards']],
    [['low brake: will not apply', 'low brake: will not release']],
    [['sun shell: stripped', 'sun shell: stripped']],
    [['2-3 shift valve: stuck in position 1', '2-3 shift valve: stuck in position 2']],
  ])('has one fault of a thing, not %j', (fault) => {
    const [before, given] = fault;
    const asked = refusedBy(() => askFlow(kestrel, { range: 'D', gear: '1', fault }));
    expect(asked).toEqual({ refused: 'bad.fault twice', given, before });
  });

  it('names no devices beside a fault that changes which are applied', () => {
    const fault = ['2-3 shift valve: stuck in position 1'];
    const asked = refusedBy(() => askFlow(kestrel, { on: 'forward clutch', fault }));
    expect(asked).toEqual({ refused: 'bad.oil on' });
  });

  it('is asked of the train as it was found', () => {
    const answer = askFlow(kestrel, { range: 'D', gear: '1', fault: ['low sprag: slips'] });
    if (answer.asked !== 'gear') throw new Error(answer.asked);
    expect(answer.flow.drive.state).toBe('neutral');
    expect(answer.train).not.toBe(kestrel);
  });

  it('is asked at given speeds', () => {
    const answer = askFlow(wren, { at: 'crank shaft=1,output shaft=0' });
    expect(answer).toMatchObject({ asked: 'speeds' });
  });
});

it.each<[string, () => unknown, object]>([
  [
    'a range that is none',
    () => askFlow(kestrel, { range: 'Q' }),
    { refused: 'no.range', given: 'Q', known: ['D', 'L', 'R', 'N'] },
  ],
  [
    'a gear of several ranges',
    () => askFlow(kestrel, { gear: '1' }),
    { refused: 'bad.gear alone', gear: '1', ranges: ['D', 'L'] },
  ],
  [
    'a device that is misspelt',
    () => askFlow(kestrel, { on: 'frward clutch' }),
    { refused: 'no.device', given: 'frward clutch', near: 'forward clutch' },
  ],
  [
    'a fault of nothing',
    () => askChart(kestrel, { fault: ['low sprg: backwards'] }),
    { refused: 'no.fault name', of: 'fault', near: 'low sprag' },
  ],
  [
    'hands that turn nothing',
    () => askHand(kestrel, { hold: 'sun shell' }),
    { refused: 'bad.missing turn' },
  ],
  [
    'a way for the races of one-way clutches',
    () => askHand(kestrel, { oneWay: true, way: 'cw' }),
    { refused: 'bad.one-way', option: 'way' },
  ],
  [
    'a pressure that is none',
    () => askCapacity(kestrel, { pressure: 'high' }),
    { refused: 'bad.pressure', given: 'high' },
  ],
  [
    'capacities that the file does not tell',
    () => askCapacity(wren, {}),
    { refused: 'no.capacities' },
  ],
])('refuses %s, as data', (_, ask, why) => {
  expect(refusedBy(ask)).toMatchObject(why);
});

it('turns what a person names, each the reader’s way', () => {
  const asked = { turn: 'Rear Arm', hold: 'FRONT RING GEAR', way: 'antihorario' };
  const reply = askHand(kestrel, { ...asked, seenFrom: 'output' });
  if (reply.asked !== 'hands') throw new Error(reply.asked);
  expect(reply.answers.map(({ way }) => way)).toEqual(['clockwise']);
  expect(askHand(kestrel, asked)).toMatchObject({ answers: [{ way: 'anticlockwise' }] });
});

it('asks for one gear’s margins at a load with units', () => {
  const report = askCapacity(kestrel, { range: 'D', gear: '2', pressure: '9 bar', torque: '220' });
  expect(report).toMatchObject({ one: true, load: { pressureKpa: { num: 900, den: 1 } } });
  expect(report.gears.map(({ gear }) => gear)).toEqual(['2']);
});

describe('a one-way clutch by itself', () => {
  it('is as the file describes it, and found the other way up where that is the fault', () => {
    const fault = ['low sprag: backwards'];
    const right = askHand(kestrel, { oneWay: 'low sprag' });
    const found = askHand(kestrel, { oneWay: 'low sprag', fault });
    if (right.asked !== 'races' || found.asked !== 'races') throw new Error('not the races');
    expect(found.clutches.map(({ lets }) => lets)).toEqual(right.clutches.map(({ lets }) => lets));
    expect([...right.turned, ...found.turned]).toEqual(['low sprag']);
  });
});

describe('what is odd of a train', () => {
  it('is told with its one cause first, wherever that stands in the text', () => {
    const right = fs.readFileSync('trains/kestrel-three-speed.train.yaml', 'utf8');
    const wrong = right
      .replace(/(low sprag: .* lets: )clockwise/u, '$1anticlockwise')
      .replace(
        'rear:  { sun: 36, ring: 84, planets: 3 }',
        'rear:  { sun: 36, ring: 84, planets: 7 }',
      );
    const { problems } = askCheck(wrong);
    expect(problems[0]).toMatchObject({
      problem: 'one cause',
      mend: 'turned round',
      device: 'low sprag',
      lets: 'clockwise',
    });
    expect(
      problems
        .slice(1)
        .map(({ place }) => place.line)
        .some((line) => {
          return line < (problems[0]?.place.line ?? 0);
        }),
    ).toBe(true);
    expect(problems.map(({ problem }) => problem)).toContain('gear is neutral');
  });
});
