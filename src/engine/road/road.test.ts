import { describe, expect, it } from 'vitest';
import {
  isWithin,
  OPEN_SLIP,
  ratioByCar,
  ratioByGear,
  type RoadReading,
  roadReadingFrom,
  roadReadingText,
} from './index.ts';

const read = (text: string) => roadReadingFrom(text) as RoadReading;

describe('engine speed at a road speed', () => {
  it.each([
    ['2100 rpm at 50 km/h', 2100, 50, false],
    ['2,100 rpm at 50 km/h, locked', 2100, 50, true],
    ['2100 RPM @ 31 mph', 2100, 31 * 1.609344, false],
    ['950 rpm at 12,5 km/h', 950, 12.5, false],
  ])('%j', (text, engineRpm, roadKmh, locked) => {
    expect(read(text)).toMatchObject({ engineRpm, roadKmh, locked });
  });

  it.each([
    '',
    '2100 rpm',
    '50 km/h',
    '0 rpm at 50 km/h',
    '2100 rpm at 0 km/h',
    '21 at 5',
    'drives',
  ])('%j is none', (text) => expect(roadReadingFrom(text)).toBeUndefined());

  it('is written as it is read', () => {
    const reading = read('2100 rpm at 50.5 km/h, locked');
    expect(roadReadingFrom(roadReadingText(reading))).toEqual(reading);
  });
});

describe('the ratio that it tells', () => {
  // A rule printed in many handbooks, from memory: engine rpm = mph × gear × axle × 336 / tyre
  // diameter in inches; 336 stands for 63360 in a mile / (60 π) = 336.13.
  it.each([
    [2.484, 3.73, 26, 30],
    [1, 3.08, 28.5, 60],
    [0.7, 4.1, 24.9, 70],
  ])('gear %d, axle %d, tyre %d in, at %d mph, locked', (gear, axle, inches, mph) => {
    const rpm = Math.round((mph * gear * axle * 336.13) / inches);
    const car = { 'tyre mm': inches * 25.4, 'final drive': axle };
    const range = ratioByCar(read(`${rpm} rpm at ${mph} mph, locked`), car);
    expect(isWithin(range, gear)).toBe(true);
    expect((range.from + range.to) / 2 / gear).toBeCloseTo(1, 2);
  });

  it('may be smaller by the slip of an open converter, and not larger', () => {
    const car = { 'tyre mm': 632, 'final drive': 3.65 };
    const [open, locked] = ['', ', locked'].map((end) => {
      return ratioByCar(read(`2003 rpm at 60.0 km/h${end}`), car);
    });
    expect(open?.to).toBe(locked?.to);
    expect(open?.from).toBeCloseTo((locked?.from as number) * (1 - OPEN_SLIP), 12);
  });

  it('needs no tyre beside a gear that is good, and has no sign', () => {
    const good = read('1500 rpm at 60 km/h, locked');
    const other = read('2183 rpm at 60 km/h, locked');
    const range = ratioByGear(other, good, 1);
    expect(isWithin(range, 1.455)).toBe(true);
    expect(isWithin(range, -1.455)).toBe(true);
    expect(isWithin(range, 1.2)).toBe(false);
    expect(isWithin(ratioByGear(good, good, -2.25), 2.25)).toBe(true);
  });

  it('is looser where the road speed was read in whole km/h at a crawl', () => {
    const width = (text: string) => {
      const { from, to } = ratioByGear(read(text), read('1503 rpm at 60.0 km/h, locked'), 1);
      return to / from;
    };
    expect(width('1503 rpm at 10 km/h, locked')).toBeGreaterThan(1.1);
    expect(width('1503 rpm at 60.0 km/h, locked')).toBeLessThan(1.01);
  });
});
