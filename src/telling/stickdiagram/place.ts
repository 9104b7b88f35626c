import type { Arrangement } from './arrangement.ts';
import { across, type NameBox, roomAtCase } from './columns.ts';
import {
  ABOVE,
  BELOW,
  CASE_BAND,
  HUB_AT_CASE,
  MIDDLE,
  MIDDLE_HEIGHT,
  OUTER,
  UNDER,
} from './levels.ts';
import { stripOf } from './strips.ts';
import type { Drafting } from './strokes.ts';

/** Lengths for an arrangement, in sheet units. */
export interface Places {
  readonly width: number;
  readonly strips: readonly Strip[];
  readonly x: (column: number) => number;
  readonly y: (strip: number, height: number) => number;
  /** By station: its name in lines. */
  readonly names: readonly (NameBox | undefined)[];
}

/** What one axis takes of the sheet, from the top down. */
export interface Strip {
  readonly top: number;
  readonly caseY: number;
  readonly axis: number;
  /** Where its row of dials begins. */
  readonly foot: number;
}

const TRACK = 21;

/** The room that rows of dials take; `above` is the first strip's. */
export interface Rows {
  readonly above: number;
  readonly below: readonly number[];
}

export function placesOf(drafting: Drafting, arrangement: Arrangement, rows: Rows): Places {
  const strips = stripsDown(drafting, rows);
  const y = (strip: number, height: number) => heightOf(strips[strip], height);
  return { strips, y, ...across(drafting, arrangement, y) };
}

interface LaidStrip extends Strip {
  readonly next: number;
  readonly middleFoot: number;
  readonly drumFoot: number;
}

function heightOf(strip: LaidStrip | undefined, height: number): number {
  if (!strip) return 0;
  if (height <= BELOW) return strip.next;
  if (height <= UNDER) return strip.foot - 6;
  if (height >= ABOVE) return strip.top;
  if (height >= CASE_BAND) return strip.caseY + HUB_AT_CASE;
  if (height >= OUTER) return strip.drumFoot - (height - OUTER) * TRACK;
  if (height >= MIDDLE - 100) return strip.middleFoot - (height - MIDDLE);
  return strip.axis - (height + 0.1) * TRACK;
}

function stripsDown(drafting: Drafting, { above, below }: Rows): LaidStrip[] {
  const { stations, strips } = drafting.subjects;
  const laid: LaidStrip[] = [];
  let top = 10;
  for (let strip = 0; strip <= Math.max(0, ...strips); strip++) {
    const own = stations.filter((_, s) => stripOf(drafting.subjects, s) === strip);
    const trunks = drafting.levels
      .list()
      .filter((level) => level.trunk !== 0 && level.strip === strip);
    const shafts = Math.max(0, ...trunks.map(({ height }) => (height < OUTER ? height : 0)));
    const drums = Math.max(0, ...trunks.map(({ height }) => height - OUTER));
    const middle = own.some(({ kind }) => kind === 'company' || kind === 'device');
    const caseY = top + (strip === 0 ? above : 14);
    const drumFoot = caseY + roomAtCase(own, drafting.subjects.nameOf) + drums * TRACK;
    const middleFoot = drumFoot + (middle ? MIDDLE_HEIGHT : 6);
    const axis = middleFoot + (shafts + 0.5) * TRACK;
    const under = drafting.uprights.list().some((it) => it.strip === strip && it.low === UNDER);
    const foot = axis + (under ? 64 : 12);
    const next = foot + (below[strip] ?? 0);
    laid.push({ top, caseY, axis, foot, next, drumFoot, middleFoot });
    top = next;
  }
  return laid;
}
