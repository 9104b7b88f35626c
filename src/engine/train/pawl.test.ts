import fs from 'node:fs';
import { describe, expect, test } from 'vitest';
import { chart } from '../chart/index.ts';
import { applyFault, everyFault, faultNamed, faultText } from '../faults/index.ts';
import { coast, flow } from '../flow/index.ts';
import { readTrain, trainText } from '../trainfile/index.ts';
import { isApplied, isFriction, type Train } from './index.ts';

const file = new URL('../../../trains/plover-three-speed.train.yaml', import.meta.url);
const plover = readTrain(fs.readFileSync(file, 'utf8')).train as Train;

function wrong(text: string): Train {
  const named = faultNamed(text, plover);
  if (!('fault' in named)) throw new Error(`${text} is not known`);
  return applyFault(plover, named.fault);
}

describe('a park pawl', () => {
  const pawl = plover.devices.find(({ kind }) => kind === 'pawl');

  test('is applied by the selector, and no oil moves it', () => {
    expect(pawl).toMatchObject({ first: 'output shaft', second: 'case' });
    expect(pawl && [isApplied(pawl), isFriction(pawl)]).toEqual([true, false]);
    expect(readTrain(trainText(plover)).train).toEqual(plover);
  });
  test('holds the output both ways, and leaves the engine free', () => {
    const parked = flow(plover, ['park pawl']);
    expect([parked.drive.state, parked.coast.state]).toEqual(['neutral', 'tied up']);
    expect(coast(plover, ['park pawl'], 'reverse').state).toBe('tied up');
    expect(parked.rollback.inputFree).toMatchObject({ rolls: false, heldBy: ['park pawl'] });
    // In a gear nothing turns any more: it is no brake that gives.
    expect(flow(plover, ['park pawl', 'forward clutch']).drive.state).toBe('tied up');
    expect(chart(plover).devices).toContain('park pawl');
  });
  test('may stay out, or stay in, and never slips', () => {
    const its = everyFault(plover).map(faultText);
    expect(its.filter((text) => text.startsWith('park pawl'))).toEqual([
      'park pawl: will not apply',
      'park pawl: will not release',
    ]);
    expect(faultNamed('park pawl: slips', plover)).toMatchObject({ unknown: 'fault' });
    const out = flow(wrong('park pawl: will not apply'), ['park pawl']);
    expect([out.coast.state, out.rollback.inputFree.rolls]).toEqual(['neutral', true]);
    expect(flow(wrong('park pawl: will not release'), ['forward clutch']).drive.state).toBe(
      'tied up',
    );
  });
});
