import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { readTrain } from '../../engine/trainfile/index.ts';
import { lookAtFigures } from './index.ts';

const TRAINS = path.resolve(import.meta.dirname, '../../../trains');
const HEAD = `holdturn: 1
input: crank
output: set.carrier
sets: { set: { sun: 30, ring: 66 } }
joined: { crank: [set.sun] }
devices:
  ring brake: { brake: set.ring }
  ring band: { band: set.ring }
`;

const SIZES = 'friction: 0.13, lining mm: [136, 100], piston mm: [130, 60], springs N: 800';
const TWO = '[{ kind: friction, thickness: 2.00 mm }, { kind: friction, thickness: 2.00 mm }]';

// Each as "line: problem, of whom"; the section begins at line 9.
function odd(section: string): string[] {
  const reading = readTrain(`${HEAD}${section}`);
  expect(reading.problems).toEqual([]);
  return lookAtFigures(reading).map(({ problem, of, place }) => `${place.line}: ${problem}, ${of}`);
}

describe('the figures of a train file', () => {
  it.each([
    [
      'without figures',
      'wear: { pump: { measure: gear side, limit: { source: manual p. 12 } } }',
      ['9: limit without figures, pump'],
    ],
    [
      'turned round',
      'wear: { pump: { measure: gear side, limit: { least: 0.05 mm, most: 0.02 mm } } }',
      ['9: limits turned round, pump'],
    ],
    [
      'a shelf that cannot reach',
      `endplay:
  shaft:
    limit: { least: 0.30 mm, most: 0.60 mm }
    shelf: { part: shim, fitted: 1.60 mm, sizes: [1.40 mm, 1.60 mm] }
    stack: [{ part: case, size: 80.00 mm, gap: opens }, { part: drum, size: 78.00 mm, gap: fills }]`,
      ['12: shelf out of reach, shaft'],
    ],
    [
      'a shelf that reaches',
      `endplay:
  shaft:
    limit: { least: 0.30 mm, most: 0.60 mm }
    shelf: { part: shim, fitted: 1.60 mm, sizes: [1.60 mm, 1.80 mm] }
    stack: [{ part: case, size: 80.00 mm, gap: opens }, { part: drum, size: 79.40 mm, gap: fills }]`,
      [],
    ],
    [
      'a shelf with too wide a step',
      'endplay: { shaft: { limit: { least: 0.30 mm, most: 0.60 mm }, shelf: { part: shim, fitted: 1.00 mm, sizes: [1.40 mm, 1.00 mm] } } }',
      ['9: shelf too coarse, shaft'],
    ],
    [
      'a fitted rod that nobody sells, and no limits',
      'bands: { ring band: { shelf: { part: apply pin, fitted: 61.5 mm, sizes: [61.0 mm] } } }',
      ['9: fitted not on the shelf, ring band', '9: shelf without limits, ring band'],
    ],
    [
      'limits that the lever leaves as they are, turned round',
      'bands: { ring band: { lever: 0.5, limits: { clearance: { least: 2 mm, most: 1 mm } }, shelf: { part: apply pin, fitted: 61 mm, sizes: [61 mm] } } }',
      ['9: limits turned round, ring band'],
    ],
    [
      'plates',
      `packs:
  ring brake:
    plates:
      - { kind: steel, thickness: 1.80 mm, squash: 0.10 mm, at: 300 kPa }
      - { kind: cushion, thickness: 1.50 mm, squash: 0.10 mm }
    limits: { each friction: { least: 0.20 mm, most: 0.30 mm } }`,
      [
        '14: no friction to share, ring brake',
        '12: squash of no cushion, ring brake',
        '13: squash without air, ring brake',
      ],
    ],
  ])('%s', (_, section, said) => {
    expect(odd(section)).toEqual(said);
  });

  it.each([
    [
      'three counts of one pack',
      `teardown: { pack: { carries: [ring brake], frictions: 2 } }
capacities: { ring brake: { faces: 6, ${SIZES} } }
packs: { ring brake: { plates: ${TWO} } }`,
      ['9: counts differ, ring brake'],
    ],
    [
      'packs against capacities alone',
      `capacities: { ring brake: { faces: 2, ${SIZES} } }
packs: { ring brake: { plates: ${TWO} } }`,
      ['10: counts differ, ring brake'],
    ],
    [
      'counts that agree, of a part with two things in it',
      `teardown: { drum: { carries: [ring brake, set.ring], frictions: 2 } }
capacities: { ring brake: { faces: 4, ${SIZES} } }`,
      [],
    ],
  ])('tell of %s', (_, section, said) => {
    const reading = readTrain(`${HEAD}${section}`);
    const told = lookAtFigures(reading).map(
      (its) => `${its.place.line}: ${its.problem}, ${its.of}`,
    );
    expect(told).toEqual(said);
  });

  it('say nothing where there is no train, or nothing told', () => {
    expect(lookAtFigures(readTrain('holdturn: 1'))).toEqual([]);
    expect(odd('')).toEqual([]);
  });

  const ours = readdirSync(TRAINS).filter((name) => name.endsWith('.train.yaml'));
  it.each(ours)('of ours are sound: %s', (name) => {
    expect(lookAtFigures(readTrain(readFileSync(path.join(TRAINS, name), 'utf8')))).toEqual([]);
  });
});
