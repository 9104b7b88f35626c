import { voiceOf } from '../narrative/index.ts';
import type { Block, Cell, Column, Figure, Printing, Sheet, Table } from './document.ts';
import { STYLE } from './style.ts';
import { array, call, quoted } from './typstcode.ts';

/**
 * The sheets as source text for the typesetter Typst, 0.14. Every text stands in it as a string
 * between quotes, so that no name is ever markup or code; it reads no file.
 */
export function typstOf(printing: Printing): string {
  const { language, paper, title } = printing;
  const named = [
    `paper: ${quoted(paper === 'a4' ? 'a4' : 'us-letter')}`,
    `lang: ${quoted(language)}`,
    `title: ${quoted(title)}`,
  ];
  return [
    STYLE,
    `#show: ${call('printing.with', ...named)}`,
    ...printing.sheets.map((sheet) => `#${sheetCode(sheet, printing)}`),
    '',
  ].join('\n');
}

function sheetCode({ title, wide, blocks }: Sheet, { language, stamp }: Printing): string {
  const voice = voiceOf(language);
  const mark = voice.say('sheet.stamp', { hash: stamp.hash, date: stamp.date });
  // The page's number is known to the typesetter only.
  const [before = '', between = '', after = ''] = voice
    .say('sheet.page', { page: '\n', pages: '\n' })
    .split('\n');
  const parts = [quoted(before), 'str(x)', quoted(between), 'str(y)', quoted(after)];
  return call(
    'sheet',
    quoted(title),
    quoted(stamp.train),
    quoted(mark),
    `(x, y) => ${parts.join(' + ')}`,
    `${wide ?? false}`,
    `{\n${blocks.map(blockCode).join('\n')}\n}`,
  );
}

function blockCode(block: Block): string {
  switch (block.block) {
    case 'heading':
      return call('heading', 'level: 2', quoted(block.text));
    case 'paragraph':
      return call('told', quoted(block.text), ...lookCode(block.look));
    case 'caution':
      return call('caution', quoted(block.title), array(block.lines.map(quoted)));
    case 'table':
      return tableCode(block);
    case 'ticks':
      return call('ticks', array(block.lines.map(quoted)));
    case 'fields': {
      const pairs = block.fields.map(({ label, value = '' }) => {
        return array([quoted(label), quoted(value)]);
      });
      return call('fields', array(pairs));
    }
    case 'figure':
      return figureCode(block);
    case 'together':
      return call('together', ...block.blocks.map(blockCode));
  }
}

function tableCode({ columns, rows, rowMm }: Table): string {
  const heads = columns.map(({ head, upright }) => {
    return upright ? call('upright', quoted(head)) : call('text', 'weight: "bold"', quoted(head));
  });
  return call(
    'table',
    `columns: ${array(columns.map(widthCode))}`,
    `align: ${array(columns.map(({ align }) => (align === 'middle' ? 'center + horizon' : 'left + horizon')))}`,
    ...(rowMm === undefined ? [] : [`rows: (auto, ${rowMm}mm)`]),
    call('table.header', ...heads.map((head) => call('table.cell', 'align: bottom', head))),
    ...rows.flatMap((row) => row.map((cell) => `\n${cellCode(cell)}`)),
  );
}

function widthCode({ width }: Column): string {
  if (width === 'auto') return 'auto';
  return 'mm' in width ? `${width.mm}mm` : `${width.share}fr`;
}

function cellCode(cell: Cell): string {
  if (typeof cell === 'string') return quoted(cell);
  const words = call('said', quoted(cell.text), ...lookCode(cell.look));
  return cell.shaded ? call('table.cell', 'fill: luma(86%)', words) : words;
}

function lookCode(look: string | undefined): string[] {
  return look === undefined ? [] : [`look: ${quoted(look)}`];
}

function figureCode({ svg, alt, caption }: Figure): string {
  return call('drawing', quoted(inInk(svg)), quoted(alt), quoted(caption));
}

// A printer has no variables, and no colours.
function inInk(svg: string): string {
  return svg
    .replaceAll(/var\(--load, [^)]+\)/gu, '#000')
    .replaceAll(/var\(--[a-z-]+, ([^)]+)\)/gu, '$1');
}
