import type { Pack } from '../../engine/train/index.ts';
import { type Length, lengthFrom } from '../../shop/length/index.ts';
import { type ClearanceWay, type Measured, type PackJudgement } from '../../shop/packs/index.ts';
import { type Bounds, boundsOf, type Selection } from '../../shop/limits/index.ts';
import {
  asFineAs,
  boundsText,
  clearanceWayText,
  keyOf,
  lengthText,
  type Remark,
  remarkText,
  visible,
  type Voice,
} from '../narrative/index.ts';
import type { SheetBlock, SheetCell, SheetColumn, SheetTable } from './document.ts';
import { fieldOf, headOf } from './filled.ts';

/** The limit in a sentence, with its source; where there is none, lines to write it on. */
export function limitBlocks(bounds: Bounds | undefined, voice: Voice): SheetBlock[] {
  if (bounds?.least || bounds?.most) {
    const limits = boundsText(bounds, voice);
    return [{ block: 'paragraph', text: voice.say('pack.limits', { limits, each: 'no' }) }];
  }
  return [
    { block: 'paragraph', text: voice.say('sheet.measure.no limit') },
    {
      block: 'fields',
      fields: ['limit', 'source', 'initials'].map((name) => fieldOf(name, voice)),
    },
  ];
}

interface Shelf {
  readonly part: string;
  readonly fitted: string;
  readonly sizes: readonly string[];
}

/** The sizes that can be had. */
export function shelfBlocks({ part, fitted, sizes }: Shelf, voice: Voice): SheetBlock[] {
  const text = voice.say('sheet.measure.shelf', {
    part: keyOf(part),
    sizes: sizes.map((size) => written(size, voice)).join(', '),
    fitted: written(fitted, voice),
  });
  return [{ block: 'paragraph', text }];
}

/**
 * A row a way to measure (`called` so, where there is one), a box a place; the ways that were
 * gone, or all while none was.
 */
export function readingsTable(
  ways: readonly ClearanceWay[],
  measured: readonly Measured[],
  pack: Pack | undefined,
  voice: Voice,
  called?: string,
): SheetTable {
  const places = Math.max(FEWEST, ...measured.map((its) => its.places.length));
  const most = Math.min(places, MOST);
  const numbered = Array.from({ length: most }, (_, i): SheetColumn => {
    return { head: `${i + 1}`, width: { share: 1 }, align: 'middle' };
  });
  const gone = ways.filter((way) => measured.some((one) => one.way === way));
  const rows = (gone.length > 0 ? gone : ways).map((way): SheetCell[] => {
    const its = measured.find((one) => one.way === way);
    const read = numbered.map((_, i) => told(its?.places[i], voice));
    const mean = its ? { text: told(its.clearance, voice), look: 'strong' as const } : '';
    return [called ?? wayText(way, its, pack, voice), ...read, mean];
  });
  const by: SheetColumn = { head: voice.say('head', { head: 'way' }), width: { mm: 38 } };
  const mean: SheetColumn = { head: headOf('mean', voice), width: { share: 1 }, align: 'middle' };
  return { block: 'table', columns: [by, ...numbered, mean], rows, rowMm: 10 };
}

// Places with room for a length in both units; more readings stand in the answer of the command.
const FEWEST = 4;
const MOST = 4;

function wayText(
  way: ClearanceWay,
  its: Measured | undefined,
  pack: Pack | undefined,
  voice: Voice,
): string {
  const at = pack?.plates.find(({ squash }) => squash !== undefined)?.at;
  const air = way === 'on air' ? visible(its?.pressure ?? at ?? '') : '';
  return voice.say('pack.way', {
    way: clearanceWayText(way, voice),
    has: air === '' ? 'no' : its?.squash ? 'squash' : 'air',
    air,
    squash: its?.squash ? told(its.squash, voice) : '',
  });
}

/** What to look at before the numbers are believed. */
export function remarkBlocks(remarks: readonly Remark[], voice: Voice): SheetBlock[] {
  const known = remarks.filter(({ remark }) => remark !== 'no limit');
  return known.map((remark) => {
    return { block: 'paragraph', text: remarkText(remark, voice), look: 'strong' };
  });
}

/** The part that somebody took, and the initials. */
export interface Chosen {
  readonly part: string;
  readonly who: string;
}

interface Choice {
  readonly before: Length | undefined;
  readonly after: Length | undefined;
  readonly fitted: string | undefined;
  readonly selection: Selection | undefined;
  readonly chosen: Chosen | undefined;
}

/** Before, the best part of the shelf and what it should give, the one that was taken, and after. */
export function choiceTable(
  { before, after, fitted, selection, chosen }: Choice,
  voice: Voice,
): SheetTable {
  const best = selection?.best;
  const tool = before ?? { um: { num: 0, den: 1 }, stepUm: { num: 10, den: 1 } };
  const cells: Readonly<Record<string, string>> = {
    before: told(before, voice),
    fitted: fitted === undefined ? '' : written(fitted, voice),
    best: told(best?.size, voice),
    predicted: best ? told(asFineAs(best.predicted.um, tool), voice) : '',
    chosen: chosen ? written(chosen.part, voice) : '',
    after: told(after, voice),
    initials: visible(chosen?.who ?? ''),
  };
  const heads = Object.keys(cells).map((name): SheetColumn => {
    return { head: headOf(name, voice), width: { share: 1 }, align: 'middle' };
  });
  return { block: 'table', columns: heads, rows: [Object.values(cells)], rowMm: 12 };
}

/** The plates themselves: the thinnest of each kind and the widest gap, against their limits. */
export function wearTable({ pack, wear }: PackJudgement, voice: Voice): SheetTable {
  const rows = (['friction', 'steel', 'cone'] as const).map((what): SheetCell[] => {
    const its = wear.find((one) => one.what === what);
    const limit = pack.limits?.[what];
    return [
      voice.say('pack.wear of', { what }),
      limit ? boundsText(boundsOf(limit), voice) : '',
      told(its?.worst, voice),
      its ? voice.say('verdict', { verdict: keyOf(its.verdict ?? 'none') }) : '',
    ];
  });
  const share = (head: string, of: number): SheetColumn => ({ head, width: { share: of } });
  const columns = [
    share(voice.called(pack.device), 3),
    share(voice.say('head', { head: 'limit' }), 5),
    share(headOf('reading', voice), 2),
    share(voice.say('head', { head: 'verdict' }), 2),
  ];
  return { block: 'table', columns, rows, rowMm: 10 };
}

/** A length where there is one, in both units. */
export function told(length: Length | undefined, voice: Voice): string {
  return length ? lengthText(length, voice) : '';
}

// As the train file has it, in both units.
function written(text: string, voice: Voice): string {
  const length = lengthFrom(text);
  return length ? lengthText(length, voice) : visible(text);
}
