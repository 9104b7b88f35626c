import { isSpan, type Quantity } from '../../engine/flow/index.ts';
import type { Rational } from '../../engine/linear/index.ts';
import { visible, type Voice } from '../narrative/index.ts';
import { width, wrap } from './lines.ts';
import type { Page } from './page.ts';

/** The heads of columns that the languages have words for. */
export type Head =
  | ('device' | 'kind' | 'state' | 'slip' | 'torque' | 'member' | 'speed' | 'pin' | 'set' | 'power')
  | (
      | 'wheel'
      | 'meshing'
      | 'gear'
      | 'on'
      | 'ratio'
      | 'own'
      | 'holding'
      | 'braking'
      | 'coast'
      | 'step'
    )
  | ('release' | 'apply' | 'both' | 'neither' | 'turns' | 'part')
  | ('test' | 'seen' | 'sure' | 'chance' | 'leaves' | 'shows' | 'known')
  | ('way' | 'clearance' | 'spread' | 'worst' | 'rank' | 'size' | 'gives' | 'give' | 'likely')
  | ('then' | 'limit' | 'verdict' | 'stacks' | 'leave' | 'measure')
  | ('passes' | 'spare' | 'first' | 'must' | 'can')
  | ('mistake' | 'made' | 'felt' | 'instead' | 'until');

/** A head of its own, in the reader's language. */
export interface Said {
  readonly said: string;
}

/** A text, or a number whose fraction and decimal stand under those of its neighbours. */
export type Cell = string | Rational;

/**
 * A table no wider than the page: numbers keep their room, texts share what is left and
 * wrap, so that no name is ever cut.
 */
export function table(
  heads: readonly (Head | Said)[],
  rows: readonly (readonly Cell[])[],
  page: Page,
): string[] {
  const { voice } = page;
  const columns = heads.map((head, i) => {
    const cells = rows.map((row) => row[i] ?? '');
    return made(
      typeof head === 'string' ? voice.say('head', { head }) : head.said,
      cells.map((cell) => (typeof cell === 'string' ? visible(cell) : cell)),
      voice,
    );
  });
  share(columns, page.columns - GAP.length * (columns.length - 1));
  const lines = (row: number) => {
    const cells = columns.map((c) => {
      const text = c.cells[row] ?? '';
      return c.fixed[row] ? [text] : wrap(text, c.width, ' ');
    });
    const height = Math.max(...cells.map((cell) => cell.length));
    return Array.from({ length: height }, (_, line) => {
      const parts = columns.map((column, i) => {
        const text = cells[i]?.[line] ?? '';
        const dressed = row === 0 && text !== '' ? page.ink.faint(text) : text;
        return dressed + ' '.repeat(Math.max(0, column.width - width(text)));
      });
      return parts.join(GAP).trimEnd();
    });
  };
  return Array.from({ length: rows.length + 1 }, (_, row) => lines(row)).flat();
}

/** A settled number as it is, a range in words. */
export function numberCell(quantity: Quantity, voice: Voice): Cell {
  return isSpan(quantity) ? voice.quantity(quantity) : quantity;
}

const GAP = '  ';
const LONGEST_WORD = 14;

interface Made {
  readonly cells: readonly string[]; // the head first
  readonly fixed: readonly boolean[]; // a number, which does not wrap
  readonly least: number;
  width: number;
}

function made(head: string, cells: readonly Cell[], voice: Voice): Made {
  const numbers = aligned(cells, voice);
  const texts = [
    head,
    ...cells.map((cell, i) => (typeof cell === 'string' ? cell : (numbers[i] ?? ''))),
  ];
  const fixed = [false, ...cells.map((cell) => typeof cell !== 'string')];
  const widest = Math.max(...texts.map((text) => width(text)));
  // A text may give way down to its longest word, unless that is very long.
  const least = texts.map((text, i) => {
    if (fixed[i]) return width(text);
    return Math.min(LONGEST_WORD, Math.max(...text.split(' ').map((word) => width(word) + 1)));
  });
  return {
    cells: texts,
    fixed,
    least: Math.min(widest, Math.max(...least)),
    width: widest,
  };
}

// Takes a character at a time from the widest column that can still give one.
function share(all: readonly Made[], room: number): void {
  let excess = all.reduce((sum, c) => sum + c.width, 0) - room;
  while (excess-- > 0) {
    const giving = all.filter((c) => c.width > c.least);
    if (giving.length === 0) return;
    giving.reduce((a, b) => (b.width > a.width ? b : a)).width--;
  }
}

// "−121/135 = −0.896" over "      27 = ...": fractions end, and decimals stand, in one line.
function aligned(cells: readonly Cell[], voice: Voice): string[] {
  const parts = cells.map((cell) => {
    if (typeof cell === 'string') return { exact: '', sign: ' ', decimal: '' };
    const [, exact = '', sign = ' ', decimal = ''] =
      /^(?:([^\s≈]+) )?(?:([=≈]) )?(\S+)$/.exec(voice.number(cell)) ?? [];
    return { exact, sign, decimal };
  });
  const point = voice.say('decimal');
  const whole = (decimal: string) => decimal.split(point)[0]?.length ?? 0;
  const exacts = Math.max(...parts.map((p) => p.exact.length));
  const wholes = Math.max(...parts.map((p) => whole(p.decimal)));
  const signs = parts.some((p) => p.sign !== ' ');
  return parts.map(({ exact, sign, decimal }) => {
    const left = signs ? `${exact.padStart(exacts)}${exacts > 0 ? ' ' : ''}${sign} ` : '';
    return left + ' '.repeat(wholes - whole(decimal)) + decimal;
  });
}
