import { facingOf, type Train, upOf } from '../../engine/train/index.ts';
import { type Voice } from '../narrative/index.ts';
import { type Group, LINE, linesOf, type Mark, round, type Scene, SIZE } from '../scene/index.ts';
import { MARGIN, NAME_LINE, NAME_SIZE, NUMBER, type Placed, type Row, rowsOf } from './layout.ts';

/** How a part stands while a unit is stripped or built; absent: plain. */
export type PartState = 'off' | 'next' | 'refused';

export interface ExplodedShown {
  readonly voice: Voice;
  /** Sheet units; Infinity for one long row. */
  readonly width: number;
  /** By the name of the part. */
  readonly states?: ReadonlyMap<string, PartState>;
  /** Lines at its foot: what is drawn by rules of ours. Absent: none. */
  readonly key?: readonly string[];
  /** No scene is higher, unless one row alone is. Absent: all rows are one scene. */
  readonly most?: number;
}

/**
 * The parts of a teardown as they come off, each an outline of its kind on the axis of its row,
 * numbered from 1. Each part is a group of look "part" about it. No scene where there is no part.
 */
export function explodedScenes(train: Train, shown: ExplodedShown): Scene[] {
  const rows = rowsOf(train, shown.width, {
    nameOf: ({ name }) => shown.voice.called(name),
    upOf: (end) => shown.voice.say('drawn.exploded up', { end }),
  });
  const scenes: Scene[] = [];
  let waiting: Row[] = [];
  let high = 0;
  const close = () => {
    if (waiting.length > 0) scenes.push(sceneOf(train, waiting, shown, scenes.length));
    [waiting, high] = [[], 0];
  };
  for (const row of rows) {
    if (high + row.high > (shown.most ?? Infinity)) close();
    waiting.push(row);
    high += row.high;
  }
  close();
  return scenes;
}

function sceneOf(train: Train, rows: readonly Row[], shown: ExplodedShown, page: number): Scene {
  const right = Math.max(
    ...rows.flatMap(({ parts }) => parts.map(({ x, wide, over }) => x + wide / 2 + over + MARGIN)),
  );
  const width = Math.ceil(Number.isFinite(shown.width) ? Math.max(shown.width, right) : right);
  const marks: Mark[] = [];
  let top = 0;
  for (const row of rows) {
    marks.push({ mark: 'group', at: { x: 0, y: top }, marks: rowMarks(train, row, width, shown) });
    top += row.high;
  }
  const key = (shown.key ?? []).flatMap((line) => linesOf(line, SIZE, width - 2 * MARGIN));
  key.forEach((text, k) => {
    const y = top + (k + 1) * LINE;
    marks.push({ mark: 'words', look: 'key', text, x: MARGIN, y, anchor: 'start', size: SIZE });
  });
  const height = Math.ceil(top + (key.length > 0 ? (key.length + 0.6) * LINE : 0));
  const title = shown.voice.say('drawn.exploded', {
    train: shown.voice.train(train),
    page: page + 1,
  });
  return { width, height, title, marks };
}

function rowMarks(train: Train, row: Row, width: number, shown: ExplodedShown): Mark[] {
  const [last] = row.parts.slice(-1);
  const end = Math.min(width - MARGIN / 2, last ? last.x + last.wide / 2 + 24 : width);
  const axis = `M${MARGIN / 2} ${round(row.axis)}H${round(end)}`;
  return [
    { mark: 'path', look: 'exploded-axis', d: axis },
    ...row.parts.flatMap((placed) => turnedMarks(placed, row, shown)),
    ...row.parts.map((placed) => partGroup(train, placed, row, shown)),
  ];
}

// Which end is up from here on; where the unit is turned over within a row, a stroke before it.
function turnedMarks({ turned, x, wide }: Placed, row: Row, { voice }: ExplodedShown): Mark[] {
  if (!turned) return [];
  const left = round(x - wide / 2);
  const words: Mark = {
    mark: 'words',
    look: 'exploded-end',
    text: voice.say('drawn.exploded up', { end: turned }),
    x: left,
    y: 15,
    anchor: 'start',
    size: NAME_SIZE,
  };
  if (left <= MARGIN) return [words];
  const stroke = `M${left - 22} 6V${round(row.high - 14)}`;
  return [{ mark: 'path', look: 'exploded-turn', d: stroke }, words];
}

function partGroup(train: Train, placed: Placed, row: Row, { states }: ExplodedShown): Group {
  const { part, number, outline, names, x } = placed;
  const state = states?.get(part.name);
  const y = row.numbers;
  const middle = (outline.left + outline.right) / 2;
  return {
    mark: 'group',
    look: `part${state ? ` ${state}` : ''}`,
    about: { kind: 'part', name: part.name },
    marks: [
      { mark: 'group', at: { x: round(x - middle), y: round(row.axis) }, marks: outline.marks },
      { mark: 'path', look: 'part-number', d: ring(x, y) },
      ...facesMark(train, placed, y),
      ...(state === 'off' ? [beside(x, y, TICK)] : []),
      ...(state === 'refused' ? [beside(x, y, CROSS)] : []),
      {
        mark: 'words',
        look: 'part-figure',
        text: `${number}`,
        x,
        y: y + NAME_SIZE * 0.36,
        anchor: 'middle',
        size: NAME_SIZE,
      },
      ...names.map((text, k): Mark => {
        const at = y + NUMBER + NAME_LINE + k * NAME_LINE;
        return {
          mark: 'words',
          look: 'part-name',
          text,
          x,
          y: at,
          anchor: 'middle',
          size: NAME_SIZE,
        };
      }),
    ],
  };
}

function ring(x: number, y: number): string {
  const arc = (side: 1 | -1) =>
    `A${NUMBER} ${NUMBER} 0 0 1 ${round(x + side * NUMBER)} ${round(y)}`;
  return `M${round(x - NUMBER)} ${round(y)}${arc(1)}${arc(-1)}Z`;
}

// A point beside the number: to the side to which the face that is named looks.
function facesMark(train: Train, { part, x }: Placed, y: number): Mark[] {
  const up = upOf(train.teardown ?? [])(part);
  const facing = facingOf(part, up);
  const to = facing?.way ?? (facing?.end === (up ?? 'input') ? 'up' : facing && 'down');
  if (to === undefined) return [];
  const side = to === 'up' ? -1 : 1;
  const from = x + side * (NUMBER + 3);
  const tip = `${round(from + side * 9)} ${round(y)}`;
  const d = `M${round(from)} ${round(y - 6)}L${tip}L${round(from)} ${round(y + 6)}Z`;
  return [{ mark: 'path', look: 'part-faces', d }];
}

// Above the number, to the right: it is off, or may not come off yet.
function beside(x: number, y: number, d: string): Mark {
  const at = { x: round(x + NUMBER + 4), y: round(y - NUMBER + 1) };
  return { mark: 'group', at, marks: [{ mark: 'path', look: 'part-done', d }] };
}

const TICK = 'M-5 -1L0 5L8 -7';
const CROSS = 'M-4 -5L6 5M6 -5L-4 5';
