import type { Way } from '../../engine/train/index.ts';
import type { Language } from '../narrative/index.ts';

/** Sheets to be printed, as plain data: a writer lays them out (`typstOf`). Texts are text only. */
export interface Printing {
  readonly language: Language;
  readonly paper: Paper;
  readonly title: string;
  /** What stands on every page, so that a loose one is known again. */
  readonly stamp: Stamp;
  readonly sheets: readonly Sheet[];
}

export const PAPERS = ['a4', 'letter'] as const;
export type Paper = (typeof PAPERS)[number];

export interface Stamp {
  readonly train: string;
  /** Of the train file's bytes; whoever prints works it out. */
  readonly hash: string;
  /** "2026-11-25". */
  readonly date: string;
}

/** One kind of sheet; it begins on a page of its own. */
export interface Sheet {
  readonly title: string;
  /** Whether its pages lie on their long side. */
  readonly wide?: boolean;
  readonly blocks: readonly SheetBlock[];
}

export type SheetBlock =
  | { readonly block: 'heading'; readonly text: string }
  | { readonly block: 'paragraph'; readonly text: string; readonly look?: SheetLook }
  | Caution
  | SheetTable
  | Ticks
  | SheetFields
  | SheetLines
  | SheetFigure
  | Together;

/**
 * `quiet` is read once, `strong` must not be missed, `struck` holds no more and stays legible;
 * `warning` tells of what can hurt, by a sign, and at `stop` one stops before going on.
 */
export type SheetLook = 'strong' | 'quiet' | 'struck' | 'warning' | 'stop';

/** What can hurt, above the first step: a sign, a word, and a line each. */
export interface Caution {
  readonly block: 'caution';
  readonly title: string;
  readonly lines: readonly string[];
}

export interface SheetTable {
  readonly block: 'table';
  readonly columns: readonly SheetColumn[];
  readonly rows: readonly (readonly SheetCell[])[];
  /** The least height of a row, for what is written in by hand. */
  readonly rowMm?: number;
}

export interface SheetColumn {
  readonly head: string;
  /** In millimetres, or a share of what is left. */
  readonly width: { readonly mm: number } | { readonly share: number };
  readonly align?: 'start' | 'middle';
  /** The head stands on its end, for narrow columns. */
  readonly upright?: boolean;
}

/** Empty: a box to write in. */
export type SheetCell =
  | string
  | SheetWords
  /** Boxes to tick, one under the other; one without words is a box alone. */
  | { readonly ticks: readonly string[] };

export interface SheetWords {
  readonly text: string;
  readonly look?: SheetLook;
  /** Marked for the eye; a letter says the same. */
  readonly shaded?: boolean;
  /** An arrow beside the words, which say the same. */
  readonly turns?: Way;
}

/** Boxes to tick. */
export interface Ticks {
  readonly block: 'ticks';
  readonly lines: readonly string[];
}

/** Lines to write on, side by side, each with what goes there and, if known, what is there. */
export interface SheetFields {
  readonly block: 'fields';
  readonly fields: readonly SheetField[];
}

export interface SheetField {
  readonly label: string;
  readonly value?: string;
}

/** Empty lines, for as much as somebody has to say. */
export interface SheetLines {
  readonly block: 'lines';
  readonly count: number;
}

export interface SheetFigure {
  readonly block: 'figure';
  readonly svg: string;
  /** Height over width. */
  readonly aspect: number;
  /** What it shows, for whoever cannot see it. */
  readonly alt: string;
  readonly caption: string;
}

/** Blocks that stay on one page. */
export interface Together {
  readonly block: 'together';
  readonly blocks: readonly SheetBlock[];
}
