import * as v from 'valibot';
import type { Expected } from '../../engine/yaml/index.ts';

const DAY = String.raw`(\d{4})-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])`;
const CLOCK = String.raw`([01]\d|2[0-3]):([0-5]\d):([0-5]\d\.\d{3})`;
const ZONE = String.raw`(?:Z|([+-])(0\d|1[0-4]):([0-5]\d))`;
const FORM = new RegExp(`^${DAY}T${CLOCK}${ZONE}$`, 'u');

const or = (what: Expected) => what;

/** A moment to the thousandth of a second, as clocks showed it, with their offset; Z in UTC. */
export const TIME = v.pipe(v.string(or('time')), v.regex(FORM, or('time')));

/** Seconds by which moments are put in order, whatever clocks showed; 0 where it is no moment. */
export function secondsOf(moment: string): number {
  const [, year, month, day, hour, minute, second, sign, hours, minutes] = FORM.exec(moment) ?? [];
  if (year === undefined) return 0;
  const ahead = (sign === '-' ? -60 : 60) * (60 * Number(hours ?? 0) + Number(minutes ?? 0));
  const days = daysSince(Number(year), Number(month), Number(day));
  return 86_400 * days + 3600 * Number(hour) + 60 * Number(minute) + Number(second) - ahead;
}

/**
 * A moment, in milliseconds since 1970, as clocks show it that are so many minutes ahead of
 * Greenwich: "2026-11-25T13:40:07.120+01:00", and with a Z where they are not.
 */
export function momentText(ms: number, minutesAhead: number): string {
  const shown = Math.floor(ms) + minutesAhead * 60_000;
  const day = Math.floor(shown / 86_400_000);
  const rest = shown - day * 86_400_000;
  const clock = [rest / 3_600_000, (rest / 60_000) % 60, (rest / 1000) % 60].map(two).join(':');
  const thousandths = `${rest % 1000}`.padStart(3, '0');
  return `${dayText(day)}T${clock}.${thousandths}${zoneText(minutesAhead)}`;
}

function zoneText(minutes: number): string {
  if (minutes === 0) return 'Z';
  const ahead = Math.abs(minutes);
  return `${minutes < 0 ? '-' : '+'}${two(ahead / 60)}:${two(ahead % 60)}`;
}

function two(its: number): string {
  return `${Math.floor(its)}`.padStart(2, '0');
}

// The day of the calendar whose `daysSince` is that of 1970-01-01 and so many more.
function dayText(days: number): string {
  const since = days + daysSince(1970, 1, 1);
  let year = Math.floor(since / 365.2425) + 1;
  while (daysSince(year, 1, 1) > since) year--;
  let month = 12;
  while (daysSince(year, month, 1) > since) month--;
  const day = since - daysSince(year, month, 1) + 1;
  return `${`${year}`.padStart(4, '0')}-${two(month)}-${two(day)}`;
}

// Of the Gregorian calendar; the year begins in March, so that a leap day ends it.
function daysSince(year: number, month: number, day: number): number {
  const march = (month + 9) % 12;
  const y = month <= 2 ? year - 1 : year;
  const leaps = Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400);
  return 365 * y + leaps + Math.floor((153 * march + 2) / 5) + day;
}
