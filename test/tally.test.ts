import { expect, it } from 'vitest';
import { Tally } from './tally.ts';

it('lets a law pass that enough cases met, and fails one that few did, with the counts', () => {
  const tally = new Tally({ driving: 3, 'tied up': 2, neutral: 0 });
  tally.met('driving');
  tally.met('tied up', 2);
  expect(() => tally.enough()).toThrow(
    'a law that few cases meet says little: driving: 1 cases, at least 3',
  );
  tally.met('driving', 2);
  expect(() => tally.enough()).not.toThrow();
  expect(tally.count('driving')).toBe(3);
});
