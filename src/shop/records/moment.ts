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

// Of the Gregorian calendar; the year begins in March, so that a leap day ends it.
function daysSince(year: number, month: number, day: number): number {
  const march = (month + 9) % 12;
  const y = month <= 2 ? year - 1 : year;
  const leaps = Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400);
  return 365 * y + leaps + Math.floor((153 * march + 2) / 5) + day;
}
