import { describe, expect, it } from 'vitest';
import { entryTold } from '../../asking/job/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import type { Train } from '../../engine/train/index.ts';
import { readingProblems } from '../../shop/records/index.ts';
import { askStanding } from '../../asking/build/index.ts';
import { isWhole, nextField, saidOf, type Typed, unitsOf, waysOf } from './ways.ts';

const { train } = readTrain(`
holdturn: 1
input: shaft
output: hub
sets: { set: { sun: 30, ring: 60 } }
joined: { shaft: [set.sun], hub: [set.carrier] }
devices: { ring brake: { brake: set.ring }, ring band: { band: set.ring } }
packs:
  ring brake:
    plates: [{ kind: friction, thickness: 2.00 mm }]
    shelf: { part: snap ring, fitted: 1.60 mm, sizes: [1.60 mm, 1.80 mm] }
bands: { ring band: { pitch: 1.25 mm } }
endplay: { shaft: { shelf: { part: washer, fitted: 1.60 mm, sizes: [1.60 mm] } } }
preload: { bearings: {} }
wear: { bushing: { measure: bushing } }
`) as { train: Train };

// Every way of every kind, with the numbers that somebody would type.
const ways = askStanding(train).flatMap((thing) => {
  return waysOf(thing).map((way) => ({ name: thing.name, way, kind: thing.kind }));
});

const typedFor = ({ fields }: (typeof ways)[number]['way']): Typed[] => {
  return fields.flatMap(({ field, of, many }) => {
    const unit = unitsOf({ field, of, many })[0] ?? '';
    const text = unit === '' ? '2.5' : `1.20 ${unit}`;
    return Array.from({ length: many ? 3 : 1 }, () => ({ field, text }));
  });
};

describe('a way to measure', () => {
  it.each(ways.map((its) => [its.kind, its.way.way, its] as const))(
    '%s, %s: is said in words that the command reads',
    (_, __, { name, way }) => {
      const typed = typedFor(way);
      expect(isWhole(way, typed)).toBe(true);
      const told = entryTold(['reading', name, saidOf(way, typed)], {});
      expect(told.kind).toBe('reading');
      const text = told.kind === 'reading' ? `${JSON.stringify(name)}: ${told.text}` : '';
      expect(readingProblems(text, name, train)).toEqual([]);
    },
  );

  it('says what the command is told, struck readings left out', () => {
    const way = ways.find((its) => its.way.way === 'feeler')?.way as (typeof ways)[number]['way'];
    const typed: Typed[] = [
      { field: '', text: '1.38 mm' },
      { field: '', text: '13.9 mm', struck: true },
      { field: '', text: '1.39 mm' },
    ];
    expect(saidOf(way, typed)).toBe('feeler: [1.38 mm, 1.39 mm]');
  });

  it('asks for what is wanted first, and then for the row', () => {
    const way = ways.find((its) => its.way.way === 'again')?.way as (typeof ways)[number]['way'];
    expect(nextField(way, []).field).toBe('fitted');
    expect(nextField(way, [{ field: 'fitted', text: '1.80 mm' }]).field).toBe('read');
    expect(isWhole(way, [{ field: 'fitted', text: '1.80 mm' }])).toBe(false);
  });
});
