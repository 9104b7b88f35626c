import { afterEach, describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { entryText, foldJob, momentText, newJobText, readJob } from '../../shop/records/index.ts';
import { localTime, typedTime } from './clock.ts';

const before = process.env['TZ'];
const inZone = (zone: string) => (process.env['TZ'] = zone);
afterEach(() => {
  if (before === undefined) delete process.env['TZ'];
  else process.env['TZ'] = before;
});

// Offsets of the IANA time zone data that Node carries; summer time is that of the moment told.
describe('a time', () => {
  it.each([
    ['UTC', '2026-11-25T12:40:07.120Z'],
    ['Europe/Madrid', '2026-11-25T13:40:07.120+01:00'],
    ['America/Chicago', '2026-11-25T06:40:07.120-06:00'],
    ['Asia/Kolkata', '2026-11-25T18:10:07.120+05:30'],
  ])('in %s is told as clocks show it', (zone, told) => {
    inZone(zone);
    expect(localTime(new Date('2026-11-25T12:40:07.120Z'))).toBe(told);
  });

  it.each([
    ['2026-07-01 12:40', '2026-07-01T12:40:00.000+02:00'],
    ['2026-11-25 12:40', '2026-11-25T12:40:00.000+01:00'],
    ['2026-11-25T12:40:07Z', '2026-11-25T12:40:07.000Z'],
    ['2026-11-25T12:40-05:00', '2026-11-25T12:40:00.000-05:00'],
    ['2026-02-30 12:40', undefined],
    ['2026-11-25 25:40', undefined],
    ['12:40', undefined],
  ])('typed as %s in Madrid is %s', (typed, told) => {
    inZone('Europe/Madrid');
    expect(typedTime(typed)).toBe(told);
  });
});

it('a moment is told as Node tells it, in any year and any zone', () => {
  const any = fc.date({
    min: new Date('0001-01-02'),
    max: new Date('9999-12-30'),
    noInvalidDate: true,
  });
  fc.assert(
    fc.property(any, fc.integer({ min: -840, max: 840 }), (utc, ahead) => {
      const told = momentText(utc.getTime(), ahead);
      const shown = new Date(utc.getTime() + ahead * 60_000).toISOString().slice(0, -1);
      expect(told.slice(0, 23)).toBe(shown);
      expect(new Date(told).getTime()).toBe(utc.getTime());
    }),
    { seed: 7, numRuns: 2000 },
  );
});

it('entries stand in the order of their moments, as Node reckons it', () => {
  const header = newJobText({ unit: 'u', complaint: '', by: 'TW', at: '2026-11-25T08:00:00.000Z' });
  const moment = fc.record({
    utc: fc.date({ min: new Date('1999-12-30'), max: new Date('2101-03-02'), noInvalidDate: true }),
    quarters: fc.integer({ min: -48, max: 56 }),
  });
  fc.assert(
    fc.property(fc.array(moment, { minLength: 2, maxLength: 8 }), (moments) => {
      const texts = moments.map(({ utc, quarters }) => {
        const there = new Date(utc.getTime() + quarters * 900_000).toISOString().slice(0, -1);
        const two = (its: number) => `${Math.floor(its)}`.padStart(2, '0');
        const size = Math.abs(quarters);
        const at = `${there}${quarters < 0 ? '-' : '+'}${two(size / 4)}:${two((size % 4) * 15)}`;
        return entryText({ at, who: 'TW', told: { kind: 'note', note: 'a' } }).text;
      });
      const { job } = readJob(header + texts.join(''));
      const times = job && foldJob(job).entries.map(({ at }) => new Date(at).getTime());
      expect(times).toEqual(times?.toSorted((a, b) => a - b));
      expect(times?.length).toBeGreaterThan(0);
    }),
    { seed: 7, numRuns: 200 },
  );
});
