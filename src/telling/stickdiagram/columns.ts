import type { Arrangement } from './arrangement.ts';
import { LINE, linesOf, type NameOf, SIZE, WIDE, widthOf } from '../scene/index.ts';
import { BELOW, CASE_BAND, DRUM, HUB, HUB_AT_CASE, MIDDLE, RING_RIM, UNDER } from './levels.ts';
import { companyColumns } from './exits.ts';
import { holdsToCase, type Station } from './station.ts';
import { areApart, stripOf } from './strips.ts';
import type { Drafting } from './strokes.ts';

const MARGIN = 34;
const GAP = 11; // between a thing and the next
const CASE_ROOM = 86;
const NAME = 98; // a longer name takes another line

/** A name in lines: their right end, and the first base line. */
export interface NameBox {
  readonly lines: readonly string[];
  readonly x: number;
  readonly y: number;
}

/** The places that symbols take, on the sheet. */
export function symbolBoxes(drafting: Drafting, { choice }: Arrangement, { x, y }: Lengths) {
  return drafting.subjects.stations.flatMap((station, s) => {
    const start = drafting.starts[s] ?? 0;
    const keeps = symbolKeeps(station, start, choice[s] ?? 0, stripOf(drafting.subjects, s), y);
    return keeps.map(([column, { left, right, top, foot }]) => {
      return { left: x(column) + left, right: x(column) + right, top, foot };
    });
  });
}

/** The room under the case that brakes take with their names, and a mark below. */
export function roomAtCase(stations: readonly Station[], called: NameOf): number {
  const lines = stations.flatMap((it) => {
    const brake = it.kind === 'device' && holdsToCase(it.device);
    return brake ? [linesOf(called(it.name), SIZE, NAME).length] : [];
  });
  return lines.length === 0 ? 18 : Math.max(CASE_ROOM, (Math.max(...lines) + 1) * LINE + 10);
}

interface Lengths {
  readonly x: (column: number) => number;
  readonly y: (strip: number, height: number) => number;
}

/** A box that keeps others off, relative to its column. */
interface Keep {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
  readonly body: number;
}

interface Placed extends Keep {
  readonly station: number;
}

/** The places of columns from the left: as close as things stand that would touch. */
export function across(
  drafting: Drafting,
  { order, choice }: Arrangement,
  y: (strip: number, height: number) => number,
) {
  const { stations } = drafting.subjects;
  const uprights = drafting.uprights.list();
  // A brake may stand over what it holds: two lines that face each other become one.
  const isPair = (body: number) => uprights.filter((upright) => upright.body === body).length === 2;
  const columnX: number[] = [];
  const names: (NameBox | undefined)[] = [];
  const placed: Placed[] = [];
  let width = MARGIN + 20;
  for (const s of order) {
    const station = stations[s] as Station;
    const start = drafting.starts[s] ?? 0;
    const strip = stripOf(drafting.subjects, s);
    const own = uprights.filter((upright) => upright.station === s);
    const columns = new Map<number, Keep[]>();
    const keep = (column: number, box: Keep) => {
      columns.set(column, [...(columns.get(column) ?? []), box]);
    };
    for (const { column, body, low, high, strip: its } of own) {
      keep(column, { left: -5, right: 5, top: y(its, high), foot: y(its, low), body });
    }
    for (const [column, box] of symbolKeeps(station, start, choice[s] ?? 0, strip, y)) {
      keep(column, { ...box, body: -1 });
    }
    const sorted = [...columns.keys()].toSorted((a, b) => a - b);
    const first = sorted[0];
    const box = nameOf(station, strip, drafting, y);
    if (box && first !== undefined) {
      const room = Math.max(...box.lines.map((line) => widthOf(line, SIZE)));
      const right = Math.min(...(columns.get(first) ?? []).map(({ left }) => left)) - 8;
      const foot = box.top + (box.lines.length + 1) * LINE;
      keep(first, { left: right - room, right, top: box.top, foot, body: -1 });
    }
    let before: number | undefined;
    for (const column of sorted) {
      const boxes = columns.get(column) ?? [];
      let x = before === undefined ? firstX(boxes) : before + stepIn(station, boxes);
      for (const { left, top, foot, body } of boxes) {
        for (const other of placed) {
          if (other.foot < top - 3 || other.top > foot + 3) continue;
          const faces = body > 0 && other.body === body && (other.foot <= top || other.top >= foot);
          x = Math.max(x, faces && isPair(body) ? other.right - 5 : other.right + GAP - left);
        }
      }
      columnX[column] = x;
      before = x;
      for (const keepBox of boxes) width = Math.max(width, x + keepBox.right);
      if (box && column === first) {
        const left = Math.min(...boxes.slice(0, -1).map((one) => one.left));
        names[s] = { lines: box.lines, x: x + left - 8, y: box.top + SIZE - 3 };
      }
    }
    for (const column of sorted) {
      const x = columnX[column] ?? 0;
      for (const one of columns.get(column) ?? []) {
        placed.push({ ...one, left: x + one.left, right: x + one.right, station: s });
      }
    }
    if (first === undefined) columnX[start] = width + (station.kind === 'end' ? 16 : 0);
  }
  straighten(drafting, columnX, names, placed);
  // Shafts come in before everything and go out after it.
  const last = order.at(-1) ?? 0;
  columnX[drafting.starts[order[0] ?? 0] ?? 0] = MARGIN - 8;
  columnX[drafting.starts[last] ?? 0] = width + 18;
  return { x: (column: number) => columnX[column] ?? 0, names, width: width + 18 + MARGIN };
}

// Words may begin at the left edge; lines leave room for the input to come in.
function firstX(boxes: readonly Keep[]): number {
  return Math.max(MARGIN + 8, ...boxes.map(({ left, body }) => (body < 0 ? 10 - left : 0)));
}

// A brake that stands to the left of what it holds moves over it, if nothing is in the way.
function straighten(
  drafting: Drafting,
  columnX: number[],
  names: (NameBox | undefined)[],
  placed: Placed[],
): void {
  const { stations } = drafting.subjects;
  const uprights = drafting.uprights.list();
  for (const upright of uprights) {
    const own = uprights.filter(({ body }) => body === upright.body);
    const other = own.find((one) => one !== upright);
    const station = stations[upright.station];
    if (own.length !== 2 || !other || station?.kind !== 'device') continue;
    if (!holdsToCase(station.device) || other.high > upright.low) continue;
    const by = (columnX[other.column] ?? 0) - (columnX[upright.column] ?? 0);
    if (by <= 0) continue;
    const s = upright.station;
    const blocked = placed.some((box) => {
      return (
        box.station !== s &&
        placed.some((its) => {
          const beside = box.left < its.right + by + GAP && box.right > its.left;
          const level = box.top < its.foot + 3 && box.foot > its.top - 3;
          return its.station === s && beside && level && box.body !== upright.body;
        })
      );
    });
    if (blocked) continue;
    columnX[upright.column] = columnX[other.column] ?? 0;
    const name = names[s];
    if (name) names[s] = { ...name, x: name.x + by };
    placed.forEach((its, k) => {
      if (its.station !== s) return;
      placed[k] = { ...its, left: its.left + by, right: its.right + by };
    });
  }
}

function stepIn(station: Station, boxes: readonly Keep[]): number {
  if (station.kind === 'pair') return 34;
  if (station.kind === 'device') return station.device.kind === 'one-way' ? 60 : 38;
  return Math.min(...boxes.map(({ left }) => left)) < -5 ? 44 : 26;
}

function symbolKeeps(
  station: Station,
  start: number,
  choice: number,
  strip: number,
  y: (strip: number, height: number) => number,
): (readonly [number, Omit<Keep, 'body'>])[] {
  switch (station.kind) {
    case 'company': {
      const { company } = station;
      const columns = companyColumns(company, choice);
      const [top, foot] = [y(strip, MIDDLE + RING_RIM + 20), y(strip, MIDDLE + 20)];
      const wheel = { left: -17, right: 17, top, foot };
      return [
        ...company.columns.map((_, c) => [start + columns.mesh(c), wheel] as const),
        ...(company.bevel ? [[start + columns.pin, wheel] as const] : []),
        ...(company.bevel || company.carrier !== 0
          ? []
          : [[start + columns.plate, { ...wheel, left: -15, right: 15 }] as const]),
      ];
    }
    case 'device': {
      const oneWay = station.device.kind === 'one-way';
      const box = { left: -WIDE, right: oneWay ? 46 : WIDE };
      if (holdsToCase(station.device)) {
        const foot = y(strip, CASE_BAND);
        return [[start, { ...box, top: foot - HUB_AT_CASE, foot }]];
      }
      const [top, foot] = [y(strip, MIDDLE + DRUM), y(strip, MIDDLE + HUB)];
      return [[start + 1, { ...box, top, foot }]];
    }
    case 'pair':
    case 'end':
    case 'disc':
      return [];
  }
}

function nameOf(
  station: Station,
  strip: number,
  { subjects }: Drafting,
  y: (strip: number, height: number) => number,
): { readonly lines: readonly string[]; readonly top: number } | undefined {
  const lines = () => linesOf(subjects.nameOf(station.name), SIZE, NAME);
  switch (station.kind) {
    case 'company':
      return { lines: lines(), top: y(strip, MIDDLE + RING_RIM - 14) };
    case 'device':
      return {
        lines: lines(),
        top: holdsToCase(station.device)
          ? y(strip, CASE_BAND) - HUB_AT_CASE + 4
          : y(strip, MIDDLE + DRUM - 8),
      };
    case 'pair':
      return {
        lines: [subjects.nameOf(station.name)],
        top: areApart(station, subjects) ? y(strip, BELOW) + 4 : y(strip, UNDER) - LINE - 18,
      };
    case 'end':
    case 'disc':
      return undefined;
  }
}
