import { describe, expect, it } from 'vitest';
import { isSpan } from '../flow/index.ts';
import { ours } from '../../../test/trains.ts';
import { hand } from './index.ts';

describe('a lock by hand', () => {
  const kestrel = ours('kestrel-three-speed');

  it('does not reach who is loose: nothing settles those', () => {
    // The sprag holds the rear carrier against the case; no set is given a second speed.
    const found = hand(kestrel, { hold: [], turn: 'rear.carrier', way: 'anticlockwise', on: [] });
    if (found.turns) throw new Error('the sprag holds it');
    expect([...found.loose.keys()]).toEqual(
      expect.arrayContaining(['turbine shaft', 'main shaft', 'sun shell']),
    );
    expect([...found.loose.values()].every(isSpan)).toBe(true);
    expect(found.loose.has('rear.carrier')).toBe(false);
  });

  it('reaches all that follows from whom it holds', () => {
    const found = hand(kestrel, {
      hold: ['main shaft'],
      turn: 'rear.carrier',
      way: 'anticlockwise',
      on: [],
    });
    if (found.turns) throw new Error('the sprag holds it');
    expect(found.loose.has('sun shell')).toBe(false);
    expect(found.loose.has('turbine shaft')).toBe(true);
  });
});
