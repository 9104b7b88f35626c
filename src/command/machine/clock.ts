import { momentText } from '../../shop/records/index.ts';

/**
 * "2026-11-25T13:40:07.120+01:00": a moment as clocks show it here, with their offset from
 * Greenwich at that moment; there a Z.
 */
export function localTime(moment: Date): string {
  return momentText(moment.getTime(), -moment.getTimezoneOffset());
}

/**
 * What somebody typed of a time: "2026-11-25 12:40" as clocks show it here, or with a Z or an
 * offset, which stays. Undefined for anything else, and for a thirtieth of February.
 */
export function typedTime(text: string): string | undefined {
  const [, day, minute = '', second = ':00', zone = ''] = FORM.exec(text.trim()) ?? [];
  if (day === undefined) return undefined;
  const date = new Date(`${day}T${minute}${second}${zone}`);
  // A thirtieth of February would be the second of March.
  const sound = new Date(`${day}T00:00Z`);
  if (Number.isNaN(date.getTime()) || !sound.toISOString().startsWith(day)) return undefined;
  if (zone === '') return localTime(date);
  const told = new Date(`${day}T${minute}${second}Z`).toISOString().slice(0, -1);
  return `${told}${zone}`;
}

const FORM =
  /^(\d{4}-\d\d-\d\d)[T ](\d\d:\d\d)(:\d\d(?:\.\d{1,3})?)?(Z|[+-](?:0\d|1[0-4]):[0-5]\d)?$/u;
