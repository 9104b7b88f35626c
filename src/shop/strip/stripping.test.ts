import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Dice, seedOfRun } from '../../../test/dice.ts';
import { randomTrain } from '../../../test/random-train.ts';
import { withRandomTeardown } from '../../../test/random-teardown.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import { isLostWith, isReadWhole } from './index.ts';
import { heldOnBy, keptOffBy, nextOff, nextOn, type Stripping } from './stripping.ts';

const kestrel = readTrain(fs.readFileSync('trains/kestrel-three-speed.train.yaml', 'utf8')).train;
const with_ = (teardown: Stripping['teardown'], off: readonly string[]) => ({
  teardown,
  off: new Set(off),
});

describe('stripping a unit', () => {
  const teardown = kestrel?.teardown ?? [];
  const part = (name: string) => teardown.find((its) => its.name === name) ?? teardown[0]!;

  it('refuses what something covers, and names it', () => {
    expect(heldOnBy(with_(teardown, []), part('direct drum'))).toEqual(['band strap']);
    // As its file says, not the one just before it.
    expect(heldOnBy(with_(teardown, []), part('second pack'))).toEqual(['front ring']);
    expect(heldOnBy(with_(teardown, []), part('pump'))).toEqual([]);
    // With the other end up nothing is over it.
    expect(heldOnBy(with_(teardown, []), part('output cover'))).toEqual([]);
  });

  it('refuses to put a part on what is not yet there', () => {
    const all = teardown.map(({ name }) => name);
    expect(keptOffBy(with_(teardown, all), part('pump'))).toEqual(['pump gasket']);
    expect(keptOffBy(with_(teardown, all), part('case washer'))).toEqual([]);
    expect(nextOn(with_(teardown, all))?.name).toBe('output cover');
  });

  it('loses a play with the part that closes it, and with none before', () => {
    const closing = teardown.map((its) => {
      return { ...its, closes: its.name === 'second pack' ? ['main shaft'] : [] };
    });
    const [pump, pack] = ['pump', 'second pack'].map((name) =>
      closing.find((its) => its.name === name)!,
    );
    const lost = (its: typeof pump, ...off: readonly string[]) => {
      return isLostWith(with_(closing, off), its!, 'main shaft');
    };
    expect([lost(pump), lost(pack), lost(pack, 'pump', 'front ring')]).toEqual([false, true, true]);
    expect(lost(pack, 'pump', 'front ring', 'second pack')).toBe(false);
    expect(isReadWhole(closing, 'main shaft')).toBe(false);
    // Where the file says nothing, before anything comes off.
    expect(isReadWhole(closing, 'turbine shaft')).toBe(true);
    expect(isLostWith(with_(closing, []), pump!, 'turbine shaft')).toBe(true);
    expect(isLostWith(with_(closing, ['pump']), pack!, 'turbine shaft')).toBe(false);
  });

  it('comes apart in the order of the file, and together in the other, on any teardown', () => {
    const first = seedOfRun();
    for (let seed = first; seed < first + 60; seed++) {
      const train = withRandomTeardown(randomTrain(seed), new Dice(seed));
      const parts = train.teardown ?? [];
      const off = new Set<string>();
      for (const expected of parts) {
        const next = nextOff({ teardown: parts, off });
        expect(next?.name).toBe(expected.name);
        off.add(expected.name);
      }
      for (const expected of parts.toReversed()) {
        expect(nextOn({ teardown: parts, off })?.name).toBe(expected.name);
        off.delete(expected.name);
      }
    }
  });
});
