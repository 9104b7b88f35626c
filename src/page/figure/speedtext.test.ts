import { expect, it } from 'vitest';
import { fraction, ZERO } from '../../engine/linear/index.ts';
import { speedText } from './speedtext.ts';

it('tells a member that nothing settles from one that stands still or locks', () => {
  expect(speedText({ from: null, to: null })).toBe('free, until something holds or turns it');
  expect(speedText({ from: ZERO, to: null })).toBe('free: 0 or more');
  expect(speedText(fraction(1))).toBe('1');
  expect(speedText(undefined)).toBe('stands still, or locks');
});
