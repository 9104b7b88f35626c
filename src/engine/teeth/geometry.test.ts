import { describe, expect, it } from 'vitest';
import type { GearSet, Train } from '../train/index.ts';
import { geometryOf } from './index.ts';

function findings(...sets: GearSet[]): string[] {
  const train: Train = {
    name: '',
    about: '',
    input: 'a',
    output: 'b',
    sets,
    pairs: [],
    joins: [],
    devices: [],
    ranges: [],
  };
  return geometryOf(train).map(({ problem }) => problem);
}

const plain = (sun: number, ring: number, planets?: number, planet?: number): GearSet => ({
  kind: 'plain',
  name: 'a',
  sun,
  ring,
  ...(planets !== undefined && { planets }),
  ...(planet !== undefined && { planet }),
});
const pair = (
  sun: number,
  ring: number,
  pairs: number,
  inner?: number,
  outer?: number,
): GearSet => ({
  kind: 'pair',
  name: 'a',
  sun,
  ring,
  pairs,
  ...(inner !== undefined && { inner }),
  ...(outer !== undefined && { outer }),
});
const stepped = (
  sun: number,
  ring: number,
  steps: [number, number],
  planets?: number,
): GearSet => ({
  kind: 'stepped',
  name: 'a',
  sun,
  ring,
  steps,
  ...(planets !== undefined && { planets }),
});

const FIT = 'ring does not fit';
const EVEN = 'planets not evenly spaced';
const TOUCH = 'planets touch';

// Stock-gear technical handbook, section 13.3.1, conditions 1 to 3 (equations 13-5, 13-7, 13-9).
describe('sun 16, planet 16, ring 48', () => {
  it('is coaxial', () => {
    expect(findings(plain(16, 48, undefined, 16))).toEqual([]);
  });

  it('takes 2 or 4 planets of 2 to 12', () => {
    const counts = Array.from({ length: 11 }, (_, i) => i + 2);
    expect(counts.filter((n) => findings(plain(16, 48, n, 16)).length === 0)).toEqual([2, 4]);
  });

  it('does not space 3 evenly, and 8 touch', () => {
    expect(findings(plain(16, 48, 3, 16))).toEqual([EVEN]);
    expect(findings(plain(16, 48, 8, 16))).toEqual([TOUCH]);
  });
});

// The same conditions for a plain set; (ring - sun)/N whole for a meshed pair is Müller's,
// Epicyclic Drive Trains, assembly conditions (from memory).
describe('a published front set', () => {
  it.each([
    [plain(37, 71, 3, 17), []],
    [plain(37, 71, 4, 17), []],
    [plain(37, 71, 5, 17), [EVEN]],
    [pair(31, 85, 3), []],
    [pair(31, 85, 4), [EVEN]],
  ])('%j: %j', (set, problems) => {
    expect(findings(set)).toEqual(problems);
  });
});

// Of our own making, worked by hand.
describe('a set', () => {
  it.each<[GearSet, string[]]>([
    // The ring would be 66; profile shift takes up one tooth.
    [plain(30, 66, undefined, 18), []],
    [plain(30, 67, undefined, 18), []],
    [plain(30, 65, undefined, 18), []],
    [plain(30, 68, undefined, 18), [FIT]],
    [plain(30, 64, undefined, 18), [FIT]],
    [plain(30, 67), []],
    [plain(30, 30), [FIT]],
    // 6 planets: (30 + 18)·sin 30° = 24 > 20; 8: 48·sin 22.5° = 18.4 < 20.
    [plain(30, 66, 6), []],
    [plain(30, 66, 8), [TOUCH]],
    // (10 + 6)·sin 30° = 8 = 6 + 2: just touching is touching.
    [plain(10, 22, 6, 6), [EVEN, TOUCH]],
    [plain(30, 66, 1), []],
    // The pair reaches from 30 to at most 30 + 2·14 + 2·12 = 82.
    [pair(30, 70, 4, 14, 12), []],
    [pair(30, 84, 3, 14, 12), [FIT]],
    [pair(30, 60, 3, 14, 12), [FIT]],
    [pair(30, 70, 10, 14, 12), [TOUCH]],
    // 40 + 36 = 100 - 24; (40·24 + 100·36)/12 = 380, whole by 4, not by 3.
    [stepped(40, 100, [36, 24], 4), []],
    [stepped(40, 100, [36, 24], 3), [EVEN]],
    [stepped(40, 102, [36, 24]), [FIT]],
    // The large step counts: 44 + 2 > (20 + 24)·sin 90°.
    [stepped(20, 88, [24, 44], 2), [TOUCH]],
    [{ kind: 'bevel', name: 'a', sides: [16, 16], pinions: 3 }, [EVEN]],
    [{ kind: 'bevel', name: 'a', sides: [16, 16], pinions: 4 }, []],
  ])('%j: %j', (set, problems) => {
    expect(findings(set)).toEqual(problems);
  });

  it('with stepped planets of equal steps keeps the plain rule', () => {
    for (let sun = 10; sun <= 30; sun++) {
      for (let planets = 2; planets <= 6; planets++) {
        const even = (set: GearSet) => !findings(set).includes(EVEN);
        const ring = sun + 2 * 14;
        expect(even(stepped(sun, ring, [14, 14], planets))).toBe(
          even(plain(sun, ring, planets, 14)),
        );
      }
    }
  });

  it('on shared planets must fit them', () => {
    const owner = pair(30, 70, 4, 14, 12);
    const sharing = (sun: number): GearSet => ({ kind: 'sharing', name: 'b', shares: 'a', sun });
    expect(findings(owner, sharing(46))).toEqual([]);
    expect(findings(owner, sharing(43))).toEqual([FIT, EVEN]);
    expect(findings(owner, { kind: 'sharing', name: 'b', shares: 'a', ring: 72 })).toEqual([EVEN]);
  });
});

describe('wheels on one pin', () => {
  const wheels = (high: number): GearSet => ({
    kind: 'wheels',
    name: 'a',
    carried: ['idler'],
    wheels: new Map([
      ['fixed', 100],
      ['idler', 20],
      ['high', high],
      ['low', 99],
      ['ring', 140],
    ]),
    meshes: [
      { a: 'fixed', b: 'idler', internal: false },
      { a: 'idler', b: 'high', internal: false },
      { a: 'low', b: 'idler', internal: false },
      { a: 'ring', b: 'idler', internal: true },
    ],
  });

  // 100, 101 and 99 on one idler is Ferguson's old paradox: profile shift takes up the tooth.
  it('may be a tooth off either way', () => {
    expect(findings(wheels(101))).toEqual([]);
    expect(findings(wheels(102))).toEqual(['centre distances differ']);
  });

  it('are told with their distances', () => {
    const train: Train = {
      name: '',
      about: '',
      input: 'a',
      output: 'b',
      sets: [wheels(110)],
      pairs: [],
      joins: [],
      devices: [],
      ranges: [],
    };
    expect(geometryOf(train)).toEqual([
      {
        problem: 'centre distances differ',
        set: 'a',
        wheel: 'idler',
        allowance: 1,
        distances: [
          { with: 'fixed', distance: 120 },
          { with: 'high', distance: 130 },
          { with: 'low', distance: 119 },
          { with: 'ring', distance: 120 },
        ],
      },
    ]);
  });
});
