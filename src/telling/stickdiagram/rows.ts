import type { Subjects } from './arrangement.ts';
import { holdsToCase, type Station } from './station.ts';
import { stripOf } from './strips.ts';

/** The stations that are sets. */
export function setsOf(stations: readonly Station[]): number[] {
  return stations.flatMap(({ kind }, s) => (kind === 'company' ? [s] : []));
}

/** The sets of each axis in the order of the file, in which they stand whatever lines cross. */
export function rowsOf(subjects: Subjects): number[][] {
  const rows: number[][] = [];
  for (const set of setsOf(subjects.stations)) (rows[stripOf(subjects, set)] ??= []).push(set);
  return rows.filter(Boolean);
}

/** The clutches on the input, which stand at the input's end where they can. */
export function inputClutches({ assembly, stations }: Subjects): number[] {
  const [end] = stations;
  const input = end?.kind === 'end' ? end.body : 0;
  return stations.flatMap((station, s) => {
    if (station.kind !== 'device' || holdsToCase(station.device)) return [];
    const { first, second } = station.device;
    return [first, second].some((member) => assembly.bodyOf(member) === input) ? [s] : [];
  });
}

/** An order of stations whose rows of sets take their places in the order of the file. */
export function inRows(order: readonly number[], rows: readonly (readonly number[])[]): number[] {
  const next = rows.map((row) => row.values());
  return order.map((s) => {
    const row = rows.findIndex((its) => its.includes(s));
    return next[row]?.next().value ?? s;
  });
}
