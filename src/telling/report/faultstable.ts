import type {
  Changed,
  FaultCell,
  FaultClass,
  FaultMatrix,
  FaultRow,
  MatrixGear,
  Outcome,
} from '../../engine/faults/index.ts';
import { toNumber } from '../../engine/linear/index.ts';
import { faultName, gearName, type Voice } from '../narrative/index.ts';
import { width, wrap, type Page, paragraph } from '../text/index.ts';

/**
 * Classes of faults against gears: two lines a class, under power and on coast, a dot
 * for what is as in the healthy train. Faults that no road test parts stand in a bracket.
 * Gears that do not fit beside one another go into further blocks; none has its name cut.
 */
export function faultsTable(
  matrix: FaultMatrix,
  classes: readonly FaultClass[],
  page: Page,
): string[] {
  const { voice } = page;
  const named = matrix.gears.map((gear) => gearName(gear, voice));
  // Long names go below, each under a letter.
  const long = named.some((name) => width(name) > LONGEST_HEAD);
  const heads = long ? named.map((_, k) => letterOf(k)) : named;
  const sound = matrix.gears.map((gear) => soundMarks(gear, voice));
  const rows = classes.map((among): Row => {
    const members = among.rows.map((place) => matrix.rows[place] as FaultRow);
    const cells = members[0]?.cells ?? [];
    return {
      names: members.map(({ faults }) => nameOf(faults, page)),
      cells: cells.map((cell) => faultMarks(cell, voice)),
    };
  });
  const all = [{ names: [voice.say('faults.healthy')], cells: sound }, ...rows];
  const columns = heads.map((head, k) => {
    const cells = all.flatMap((row) => row.cells[k] ?? []);
    return Math.max(width(head), ...cells.map((cell) => width(cell)));
  });
  const longest = Math.max(...all.flatMap(({ names }) => names.map((name) => width(name))));
  const blocks = blocksOf(columns, Math.min(longest, WIDEST_NAME), page.columns);
  const legend = named.flatMap((name, k) => paragraph(`${letterOf(k)}  ${name}`, page, '   '));
  return [
    ...blocks.flatMap((block, b) => [...(b === 0 ? [] : ['']), ...lines(all, heads, block, page)]),
    ...(long ? ['', ...legend] : []),
  ];
}

/** How a gear of the healthy train is marked, under power and on coast. */
export function soundMarks(gear: MatrixGear, voice: Voice): readonly [string, string] {
  return [cellOf(gear.drive, voice), coastOf(gear, voice)];
}

/** How a cell is marked, under power and on coast: a dot for what is as in the healthy train. */
export function faultMarks(cell: FaultCell, voice: Voice): readonly [string, string] {
  const { drive, coast, inReverse } = cell;
  return [
    drive.is === 'same' ? '.' : changedOf(drive, voice),
    [coast, inReverse ?? coast].every(({ is }) => is === 'same')
      ? '.'
      : coastOf({ coast, ...(inReverse && { inReverse }) }, voice),
  ];
}

/** The names of faults that are there at once. */
export function nameOf(faults: FaultRow['faults'], { voice }: Page): string {
  return faults.map((fault) => faultName(fault, voice)).join(' + ');
}

const LONGEST_HEAD = 8;
const WIDEST_NAME = 31;
const NARROWEST_NAME = 16;

interface Row {
  readonly names: readonly string[];
  readonly cells: readonly (readonly string[])[];
}

// Some gears beside one another, and the room that is left for names.
interface Block {
  readonly from: number;
  readonly columns: readonly number[];
  readonly name: number;
  readonly gap: string;
}

// All in one block if the names can give way; else as many in each as leave them their room.
function blocksOf(columns: readonly number[], name: number, page: number): Block[] {
  for (const gap of ['  ', ' ']) {
    const room = page - MARK - columns.reduce((sum, column) => sum + gap.length + column, 0);
    if (room >= Math.min(name, NARROWEST_NAME)) {
      return [{ from: 0, columns, name: Math.min(room, name), gap }];
    }
  }
  const blocks: Block[] = [];
  for (let from = 0; from < columns.length;) {
    let [to, taken] = [from, MARK + name];
    while (to < columns.length && (to === from || taken + 2 + (columns[to] ?? 0) <= page)) {
      taken += 2 + (columns[to++] ?? 0);
    }
    blocks.push({ from, columns: columns.slice(from, to), name, gap: '  ' });
    from = to;
  }
  return blocks;
}

const MARK = 2;

function lines(rows: readonly Row[], heads: readonly string[], block: Block, page: Page): string[] {
  const head = { name: '', cells: heads.slice(block.from) };
  return [
    page.ink.faint(line('', head.name, head.cells, block)),
    ...rows.flatMap((row) => rowLines(row, block, page)),
  ];
}

// The first name beside the cells, the others below it over the whole width.
function rowLines({ names, cells }: Row, block: Block, page: Page): string[] {
  const [first = '', ...others] = names;
  const wrapped = wrap(first, block.name, ' ');
  const shown = cells.slice(block.from, block.from + block.columns.length);
  const height = Math.max(2, wrapped.length);
  const texts = Array.from({ length: height }, (_, k) => {
    const ends = k < 2 ? shown.map((cell) => cell[k] ?? '') : [];
    return [wrapped[k] ?? '', ends] as const;
  });
  if (others.length === 0) return texts.map(([name, ends]) => line('', name, ends, block));
  const below = [
    ...others.flatMap((name) => wrap(name, page.columns - MARK, ' ')),
    ...wrap(`(${page.voice.say('faults.apart')})`, page.columns - MARK, ' '),
  ];
  return [
    ...texts.map(([name, ends], k) => line(k === 0 ? '┌' : '│', name, ends, block)),
    ...below.map((name, k) => line(k === below.length - 1 ? '└' : '│', name, [], block)),
  ];
}

function line(mark: string, name: string, cells: readonly string[], block: Block): string {
  const padded = block.columns.map((column, k) => {
    const cell = cells[k] ?? '';
    return block.gap + ' '.repeat(Math.max(0, column - width(cell))) + cell;
  });
  const named = name + ' '.repeat(Math.max(0, block.name - width(name)));
  return `${mark.padEnd(MARK)}${named}${padded.join('')}`.trimEnd();
}

function changedOf(end: Changed | Outcome, voice: Voice): string {
  const slips = 'is' in end && end.is === 'slips';
  return slips ? voice.say('faults.cell', { state: 'slips' }) : cellOf(end, voice);
}

// Two decimals below 10: what a road test can tell apart.
function cellOf({ state, ratio }: Outcome, voice: Voice): string {
  if (!ratio) return voice.say('faults.cell', { state });
  const value = toNumber(ratio);
  const size = Math.abs(value);
  const text = value.toFixed(size < 10 ? 2 : size < 100 ? 1 : 0);
  return voice.written(text);
}

// Forward and in reverse, where nothing is driven and they differ.
function coastOf({ coast, inReverse }: Pick<MatrixGear, 'coast' | 'inReverse'>, voice: Voice) {
  const [forward, reverse] = [coast, inReverse ?? coast].map((end) => changedOf(end, voice));
  return forward === reverse ? `${forward}` : `${forward}/${reverse}`;
}

function letterOf(place: number): string {
  return place < 26
    ? String.fromCodePoint(65 + place)
    : `${letterOf(Math.floor(place / 26) - 1)}${letterOf(place % 26)}`;
}
