import { expect, it } from 'vitest';
import { flow, flowAt } from '../flow/index.ts';
import { hand } from '../hand/index.ts';
import { fromText, type Rational } from '../linear/index.ts';
import { trainOf } from '../../../test/line.ts';
import { applyFault, type Fault } from './index.ts';

const train = trainOf(`
  set 30:66 x3; in crank = set.sun; out hub = set.carrier; last: hub 17 drives shaft 62;
  ring band holds set.ring; ring sprag lets set.ring clockwise`);

const speed = fromText('1') as Rational;
const check = { hold: ['hub'], turn: 'crank', way: 'clockwise', on: [] } as const;

it.each<[what: string, ask: () => unknown]>([
  ['flow', () => flow(train, ['rnig band'])],
  ['flow with a fault', () => flow(applyFault(train, AT_FAULT), ['rnig band'])],
  ['flowAt', () => flowAt(train, ['rnig band'], [{ member: 'crank', speed }])],
  ['what hands apply', () => hand(train, { ...check, on: ['rnig band'] })],
  ['what hands hold', () => hand(train, { ...check, hold: ['rnig band'] })],
  ['what hands turn', () => hand(train, { ...check, turn: 'rnig band' })],
])('a misspelt name is an error, not silence: %s', (_, ask) => {
  expect(ask).toThrow(/^no (device|member) is called rnig band/u);
});

const AT_FAULT: Fault = { what: 'device', device: 'ring band', is: 'slips' };

it.each<Fault>([
  { ...AT_FAULT, device: 'x' },
  { what: 'one-way', device: 'x', is: 'backwards' },
  { what: 'one-way', device: 'ring band', is: 'backwards' },
  { what: 'join', join: 'x', is: 'stripped' },
  { what: 'member', member: 'x', is: 'parted' },
  { what: 'wheel', member: 'x', is: 'stripped' },
  { what: 'pair', pair: 'x', is: 'stripped' },
  { what: 'planet', member: 'x', is: 'seized' },
  { what: 'set', set: 'x', is: 'left out' },
  { what: 'part', part: 'x', is: 'left out' },
])('a fault of what the train lacks is an error: %j', (fault) => {
  expect(() => applyFault(train, fault)).toThrow();
});
