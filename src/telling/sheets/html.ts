import { voiceOf } from '../narrative/index.ts';
import type {
  Paper,
  Printing,
  Sheet,
  SheetBlock,
  SheetCell,
  SheetColumn,
  SheetFigure,
  SheetLook,
  SheetTable,
} from './document.ts';
import { arrow, sign } from './htmlsigns.ts';
import { drawn, element, type Markup, words } from './htmlcode.ts';

/**
 * The sheets as HTML, a section each, for a browser that has `HTML_STYLE`: one long page a sheet, which
 * whoever prints breaks into pages, and there fills in the number of each and how many there are. Every
 * text stands in it as text, so that no name is ever markup.
 */
export function htmlOf(printing: Printing): string {
  return printing.sheets.map((sheet) => sheetMarkup(sheet, printing)).join('');
}

/** The sides of a paper that stands, in millimetres. */
export const PAPER_MM: Readonly<Record<Paper, { readonly wide: number; readonly high: number }>> = {
  a4: { wide: 210, high: 297 },
  letter: { wide: 215.9, high: 279.4 },
};

// What is left white at both sides; at the head and at the foot stand the running lines.
const SIDES_MM = 34;
const ENDS_MM = 49;

interface Area {
  readonly wide: number;
  readonly high: number;
}

function sheetMarkup({ title, wide, blocks }: Sheet, { language, paper, stamp }: Printing): Markup {
  const voice = voiceOf(language);
  const { wide: short, high: long } = PAPER_MM[paper];
  const [across, down] = wide ? [long, short] : [short, long];
  const area = { wide: across - SIDES_MM, high: down - ENDS_MM };
  const mark = voice.say('sheet.stamp', { hash: stamp.hash, date: stamp.date });
  // Both are known when it is broken into pages.
  const [before = '', between = '', after = ''] = voice
    .say('sheet.page', { page: '\n', pages: '\n' })
    .split('\n');
  const number = element(
    'span',
    {},
    words(before),
    element('span', { class: 'sheet-page' }),
    words(between),
    element('span', { class: 'sheet-pages' }),
    words(after),
  );
  return element(
    'section',
    { class: wide ? 'sheet sheet-wide' : 'sheet', lang: language, 'aria-label': title },
    element(
      'div',
      { class: 'sheet-head' },
      element('b', {}, words(stamp.train)),
      element('span', {}, words(title)),
    ),
    element(
      'div',
      { class: 'sheet-body' },
      element('h2', {}, words(title)),
      ...blocks.map((block) => blockMarkup(block, area)),
    ),
    element('div', { class: 'sheet-foot' }, element('span', {}, words(mark)), number),
  );
}

function blockMarkup(block: SheetBlock, area: Area): Markup {
  switch (block.block) {
    case 'heading':
      return element('h3', {}, words(block.text));
    case 'paragraph':
      return element('p', { class: lookClass(block.look) }, ...saidMarkup(block.text, block.look));
    case 'caution': {
      const lines = block.lines.map((line) => element('li', {}, words(line)));
      const its = element('b', { class: 'caution-title' }, words(block.title));
      // A long list keeps to one page, with its last line on it.
      const many = block.lines.length > 12 ? 'caution caution-long' : 'caution';
      const list = element('ul', {}, ...lines);
      return element('div', { class: many }, sign('caution-sign'), element('div', {}, its, list));
    }
    case 'table':
      return tableMarkup(block, area);
    case 'ticks':
      return element('ul', { class: 'ticks' }, ...block.lines.map(tickMarkup));
    case 'fields': {
      const fields = block.fields.map(({ label, value = '' }) => {
        return element(
          'div',
          { class: 'field' },
          element('span', {}, words(label)),
          element('span', { class: 'field-line' }, words(value)),
        );
      });
      return element('div', { class: 'fields' }, ...fields);
    }
    case 'lines': {
      const lines = Array.from({ length: block.count }, () => element('div', {}));
      return element('div', { class: 'lines' }, ...lines);
    }
    case 'figure':
      return figureMarkup(block, area);
    case 'together': {
      const its = block.blocks.map((inner) => blockMarkup(inner, area));
      return element('div', { class: 'together' }, ...its);
    }
  }
}

function lookClass(look: SheetLook | undefined): string | undefined {
  return look && `look-${look}`;
}

function saidMarkup(text: string, look: SheetLook | undefined): Markup[] {
  return look === 'warning' ? [sign('sign'), words(text)] : [words(text)];
}

function tickMarkup(line: string): Markup {
  const box = element('span', { class: 'tick' });
  return element('li', {}, box, element('span', {}, words(line)));
}

function tableMarkup({ columns, rows, rowMm }: SheetTable, area: Area): Markup {
  const cols = widthsOf(columns, area).map((mm) => element('col', { style: `width: ${mm}mm` }));
  const heads = columns.map(({ head, upright, align }) => {
    // A head without words stands over boxes to tick.
    const its = upright
      ? element(
          'span',
          { class: 'upright', style: `max-block-size: ${uprightMm(head)}mm` },
          words(head),
        )
      : words(head);
    return element('th', { scope: 'col', class: align === 'middle' ? 'middle' : undefined }, its);
  });
  const height = rowMm === undefined ? undefined : `block-size: ${rowMm}mm`;
  const body = rows.map((row) => {
    const cells = row.map((cell, k) => cellMarkup(cell, columns[k]));
    const empty = row.includes('');
    return element('tr', { style: empty ? height : undefined }, ...cells);
  });
  return element(
    'table',
    {},
    element('colgroup', {}, ...cols),
    element('thead', {}, element('tr', {}, ...heads)),
    element('tbody', {}, ...body),
  );
}

// A share is of what the columns of fixed width leave.
function widthsOf(columns: readonly SheetColumn[], area: Area): number[] {
  const fixed = columns.reduce((sum, { width }) => sum + ('mm' in width ? width.mm : 0), 0);
  const shares = columns.reduce((sum, { width }) => sum + ('mm' in width ? 0 : width.share), 0);
  return columns.map(({ width }) => {
    const mm = 'mm' in width ? width.mm : ((area.wide - fixed) * width.share) / shares;
    return Math.round(mm * 100) / 100;
  });
}

// On one line, or on two: a column has no room for a third.
function uprightMm(head: string): number {
  return Math.max(46, Math.ceil(head.length * 1.5));
}

function cellMarkup(cell: SheetCell, column: SheetColumn | undefined): Markup {
  const middle = column?.align === 'middle' ? 'middle' : undefined;
  if (typeof cell === 'string') return element('td', { class: middle }, words(cell));
  if ('ticks' in cell) {
    const alone = cell.ticks.every((line) => line === '');
    const list = alone
      ? cell.ticks.map(() => element('span', { class: 'tick' }))
      : [element('ul', { class: 'ticks' }, ...cell.ticks.map(tickMarkup))];
    return element('td', { class: middle }, ...list);
  }
  const { text, look, shaded, turns } = cell;
  const said = element('span', { class: lookClass(look) }, ...saidMarkup(text, look));
  const its = [middle, shaded ? 'shaded' : undefined].filter((one) => one !== undefined).join(' ');
  if (turns === undefined) return element('td', { class: its || undefined }, said);
  const way = element('span', { class: 'turning' }, arrow(turns), said);
  return element('td', { class: its || undefined }, way);
}

// What is left beside the head of a sheet and the words below the picture.
const BESIDE_FIGURE_MM = 34;

function figureMarkup({ svg, aspect, alt, caption }: SheetFigure, area: Area): Markup {
  const high = Math.min(area.wide * aspect, area.high - BESIDE_FIGURE_MM);
  const size = `inline-size: ${(high / aspect).toFixed(2)}mm; block-size: ${high.toFixed(2)}mm`;
  const picture = element(
    'div',
    { role: 'img', 'aria-label': alt, style: size },
    drawn(svg.trim()),
  );
  const below = caption === '' ? [] : [element('figcaption', {}, words(caption))];
  return element('figure', {}, picture, ...below);
}
