import { linesOf, widthOf } from './lettering.ts';
import { ABOVE, BELOW, CASE_BAND, MIDDLE, MIDDLE_HEIGHT, OUTER } from './levels.ts';
import { holdsToCase, type Station } from './station.ts';
import type { Arrangement, Strokes, Subjects } from './strokes.ts';

/** Lengths for an arrangement: where columns, heights, names and leaders stand, in sheet units. */
export interface Places {
  readonly width: number;
  readonly height: number;
  readonly x: (column: number) => number;
  readonly y: (strip: number, height: number) => number;
  readonly caseY: number;
  /** Of a strip: its case, and where pairs meet the strips above and below. */
  readonly caseOf: (strip: number) => number;
  readonly topOf: (strip: number) => number;
  readonly footOf: (strip: number) => number;
  readonly axes: readonly number[];
  /** By station: its name in lines, and the right end of the space that they have. */
  readonly names: readonly { readonly lines: readonly string[]; readonly x: number }[];
  readonly leaders: readonly Leader[];
}

/** A thin line from a body's trunk to its dial. */
export interface Leader {
  readonly body: number;
  readonly strip: number;
  readonly x: number;
  /** Where it leaves the trunk. */
  readonly from: number;
  readonly trunk: number;
  /** Where the row of dials is: above the case, or below the axis. */
  readonly row: 'above' | 'below';
  /** Where the leader ends, and the dial begins to be looked for. */
  readonly end: number;
}

export const SIZE = 17;
const TRACK = 22;
const COLUMN = 26;
const DEVICE_COLUMN = 36; // a one-way clutch has its arrow between its races
const MARGIN = 28;
const ROW = 142; // a leader's slant, a dial, two lines of a name, a line of what it does
const BAND = 74; // brakes between the drums and the case
const LEADER = 16;

export function placesOf(subjects: Subjects, arrangement: Arrangement, strokes: Strokes): Places {
  const leaders = leadersOf(subjects, strokes);
  const { x, width, leaderX, names } = across(subjects, arrangement, strokes, leaders);
  const down = downward(subjects, strokes, leaders);
  return {
    width,
    x,
    names,
    ...down,
    leaders: leaders.map(({ body, strip, trunk, row, to }, k) => {
      const end = down.rowY(strip, row);
      const at = leaderX[k] ?? 0;
      return {
        body,
        strip,
        x: at,
        from: Math.min(at, x(to)),
        trunk: down.y(strip, trunk),
        row,
        end,
      };
    }),
  };
}

interface DraftLeader {
  readonly body: number;
  readonly strip: number;
  readonly trunk: number;
  readonly row: 'above' | 'below';
  /** It stands in the gap after this column; the trunk ends at the other. */
  readonly after: number;
  readonly to: number;
}

// In the gap of its trunk where the fewest lines are in the way, as near the middle as can be.
function leadersOf({ strips }: Subjects, strokes: Strokes): DraftLeader[] {
  const last = Math.max(...strips);
  const taken = new Map<string, number>();
  return strokes.levels
    .filter(({ is }) => is === 'trunk')
    .map(({ body, strip, height, from, to }) => {
      const row = strip === 0 && (height >= OUTER || last > 0) ? 'above' : 'below';
      const end = row === 'above' ? ABOVE : BELOW;
      const [low, high] = [Math.min(height, end), Math.max(height, end)];
      const cost = (after: number) => {
        const at = after + 0.5;
        const passed = strokes.levels.filter(
          (level) =>
            level.strip === strip &&
            level.body !== body &&
            level.from < at &&
            level.to > at &&
            level.height > low &&
            level.height < high,
        );
        const crowd = taken.get(`${row} ${after}`) ?? 0;
        return passed.length * 100 + crowd * 30 + Math.abs(at - (from + to) / 2);
      };
      const gaps = from === to ? [from] : range(from, to);
      const after = gaps.reduce((best, gap) => (cost(gap) < cost(best) ? gap : best));
      taken.set(`${row} ${after}`, (taken.get(`${row} ${after}`) ?? 0) + 1);
      return { body, strip, trunk: height, row, after, to };
    });
}

function range(from: number, to: number): number[] {
  return Array.from({ length: to - from }, (_, k) => from + k);
}

function across(
  { stations }: Subjects,
  { order }: Arrangement,
  strokes: Strokes,
  leaders: readonly DraftLeader[],
) {
  const used = new Set(strokes.uprights.map(({ column }) => column));
  for (const { from, to } of strokes.levels) used.add(from).add(to);
  const leaderX: number[] = [];
  const columnX: number[] = [];
  const names: { lines: readonly string[]; x: number }[] = [];
  let x = MARGIN;
  const placeLeaders = (after: number) => {
    leaders.forEach((leader, k) => {
      if (leader.after !== after) return;
      x += LEADER;
      leaderX[k] = x;
    });
  };
  placeLeaders(-1);
  for (const s of order) {
    const station = stations[s] as Station;
    const lines = nameLines(station);
    const room = Math.max(0, ...lines.map((line) => widthOf(line, SIZE)));
    // A band's drum and a wheel of a pair are wider than a line.
    const wide =
      station.kind === 'pair' || (station.kind === 'device' && station.device.kind === 'band');
    const clear = wide ? 22 : 10;
    x += station.kind === 'end' ? 0 : 20 + room + (room > 0 ? clear + 4 : 0);
    names[s] = { lines, x: x - clear };
    const start = strokes.starts[s] ?? 0;
    const next = start + columnsIn(s, order, strokes);
    for (let column = start; column < next; column++) {
      const keeps = used.has(column) || station.kind === 'device';
      if (column > start && keeps) x += station.kind === 'device' ? DEVICE_COLUMN : COLUMN;
      columnX[column] = x;
      placeLeaders(column);
    }
    x += 8;
  }
  return { x: (column: number) => columnX[column] ?? x, leaderX, names, width: x + MARGIN };
}

function columnsIn(s: number, order: readonly number[], strokes: Strokes): number {
  const next = order[order.indexOf(s) + 1];
  const end = next === undefined ? strokes.columns : (strokes.starts[next] ?? strokes.columns);
  return end - (strokes.starts[s] ?? 0);
}

function nameLines(station: Station): string[] {
  if (station.kind === 'end') return [];
  const most = station.kind === 'pair' ? 100 : 66;
  return linesOf(station.name, SIZE, most);
}

function downward(
  { stations, strips, assembly }: Subjects,
  strokes: Strokes,
  leaders: readonly DraftLeader[],
) {
  const last = Math.max(0, ...strips);
  const tracks = (strip: number, outer: boolean) => {
    const own = strokes.levels.filter((level) => {
      return level.strip === strip && level.is === 'trunk' && level.height >= OUTER === outer;
    });
    return [...new Set(own.map(({ height }) => height))].toSorted((a, b) => a - b);
  };
  const has = (strip: number, test: (station: Station) => boolean) =>
    stations.some((station) => test(station) && isIn(station, strip));
  const isIn = (station: Station, strip: number) => {
    if (station.kind === 'company') {
      const wheels = station.company.columns.map(({ sun, ring }) => sun?.body ?? ring?.body ?? 0);
      return [station.company.carrier, ...wheels].some((b) => b !== 0 && strips[b] === strip);
    }
    if (station.kind !== 'device') return false;
    const { first, second } = station.device;
    return [first, second].some((name) => {
      const body = assembly.bodyOf(name) ?? 0;
      return body !== 0 && strips[body] === strip;
    });
  };
  const rows = (strip: number, row: 'above' | 'below') =>
    leaders.some((leader) => leader.strip === strip && leader.row === row) ? ROW : 0;
  const strip = (index: number, top: number) => {
    const [inner, outer] = [tracks(index, false), tracks(index, true)];
    const caseY = top + rows(index, 'above');
    const brakes = has(index, (s) => s.kind === 'device' && holdsToCase(s.device)) ? BAND : 14;
    const outerTop = caseY + brakes;
    const middleTop = outerTop + outer.length * TRACK + 10;
    const middle = has(
      index,
      (s) => s.kind === 'company' || (s.kind === 'device' && !holdsToCase(s.device)),
    );
    const middleFoot = middleTop + (middle ? MIDDLE_HEIGHT : 10);
    const axis = middleFoot + 10 + (inner.length + 0.6) * TRACK;
    const below = axis + 14;
    // Pairs reach past the row of dials to the strip below.
    const foot = below + rows(index, 'below') + (index < last ? 32 : 0);
    const y = (height: number): number => {
      if (height <= BELOW) return foot;
      if (height >= ABOVE) return top;
      if (height >= CASE_BAND) return caseY + 20;
      if (height >= OUTER) return middleTop - 10 - outer.indexOf(height) * TRACK;
      if (height >= MIDDLE) return middleFoot - (height - MIDDLE);
      return axis - (inner.indexOf(height) + 1) * TRACK;
    };
    return { top, caseY, axis, below, foot, y };
  };
  const list: ReturnType<typeof strip>[] = [];
  let top = 12;
  for (let index = 0; index <= last; index++) {
    const placed = strip(index, top);
    list.push(placed);
    top = placed.foot;
  }
  const own = (index: number) => list[index] as ReturnType<typeof strip>;
  return {
    height: top + 12,
    caseY: own(0).caseY,
    caseOf: (index: number) => own(index).caseY,
    topOf: (index: number) => own(index).top,
    footOf: (index: number) => own(index).foot,
    axes: list.map(({ axis }) => axis),
    y: (index: number, height: number) => own(index).y(height),
    rowY: (index: number, row: 'above' | 'below') =>
      row === 'above' ? own(index).caseY - 8 : own(index).below,
  };
}
