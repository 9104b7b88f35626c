import { spawnSync } from 'node:child_process';

/** A page as it was printed: its size and its words in the order of the document, in points. */
export interface Page {
  readonly width: number;
  readonly height: number;
  readonly words: readonly Word[];
}

export interface Word {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Reads a PDF with pdftotext, of Debian's poppler-utils; throws where that is not installed. */
export function pagesOf(pdf: Uint8Array): Page[] {
  const said = spawnSync('pdftotext', ['-raw', '-bbox', '-', '-'], {
    input: pdf,
    encoding: 'utf8',
  });
  if (said.error) throw new Error('the sheets are read with pdftotext: install poppler-utils');
  return said.stdout.split('<page ').slice(1).map(pageOf);
}

/** The page's words with a blank between, and the places to break that nobody sees taken out. */
export function textOf({ words }: Page): string {
  return words.map(({ text }) => text).join(' ');
}

function pageOf(page: string): Page {
  const [, width = '', height = ''] = /^width="([\d.]+)" height="([\d.]+)"/u.exec(page) ?? [];
  const words = [...page.matchAll(WORD)].map(([, left, top, right, bottom, text = '']) => ({
    text: plain(text),
    left: Number(left),
    top: Number(top),
    right: Number(right),
    bottom: Number(bottom),
  }));
  return { width: Number(width), height: Number(height), words };
}

const WORD = /<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">([^<]*)</gu;

function plain(text: string): string {
  return text
    .replaceAll('\u200B', '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&apos;', "'")
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&');
}
