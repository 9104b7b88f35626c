import type { LengthUnit } from '../../shop/length/index.ts';
import type { Stand } from '../../asking/request/index.ts';
import { visible, type Voice } from '../narrative/index.ts';
import { wrap } from './lines.ts';

/** What a text is written on: its language, its width, and how words may be dressed. */
export interface Page {
  readonly voice: Voice;
  readonly columns: number;
  readonly ink: Ink;
  /** Where the reader stands: at the input, where it is left out. */
  readonly stand?: Stand;
  /** The unit of lengths that stands first: mm, where it is left out. */
  readonly unit?: LengthUnit;
}

/** How a terminal dresses words. What it adds is never needed to understand them. */
export interface Ink {
  readonly strong: (text: string) => string;
  readonly faint: (text: string) => string;
  /** A refusal or a tie-up. */
  readonly bad: (text: string) => string;
  /** Worth a second look: neutral, free, a warning. */
  readonly odd: (text: string) => string;
}

const bare = (text: string) => text;

/** No dress: a file, a pipe, a monochrome screen. */
export const PLAIN: Ink = { strong: bare, faint: bare, bad: bare, odd: bare };

/** A text broken into lines that fit the page; lines after the first start with `hang`. */
export function paragraph(text: string, page: Page, hang = ''): string[] {
  return wrap(visible(text), page.columns, hang);
}

/** A headed part of a page; nothing at all where there are no lines. */
export function section(head: string, lines: readonly string[], page: Page): string[] {
  return lines.length === 0 ? [] : ['', page.ink.strong(head), ...lines];
}
