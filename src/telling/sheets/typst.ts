import { voiceOf } from '../narrative/index.ts';
import type {
  SheetBlock,
  SheetCell,
  SheetColumn,
  SheetFigure,
  Printing,
  Sheet,
  SheetTable,
} from './document.ts';
import { STYLE } from './style.ts';
import { array, call, quoted, words } from './typstcode.ts';

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
  const parts = [words(before), 'str(x)', words(between), 'str(y)', words(after)];
  return call(
    'sheet',
    words(title),
    words(stamp.train),
    words(mark),
    `(x, y) => ${parts.join(' + ')}`,
    `${wide ?? false}`,
    `{\n${blocks.map(blockCode).join('\n')}\n}`,
  );
}

function blockCode(block: SheetBlock): string {
  switch (block.block) {
    case 'heading':
      return call('heading', 'level: 2', words(block.text));
    case 'paragraph':
      return call('told', words(block.text), ...lookCode(block.look));
    case 'caution':
      return call('caution', words(block.title), array(block.lines.map(words)));
    case 'table':
      return tableCode(block);
    case 'ticks':
      return call('ticks', array(block.lines.map(words)));
    case 'fields': {
      const pairs = block.fields.map(({ label, value = '' }) => {
        return array([words(label), words(value)]);
      });
      return call('fields', array(pairs));
    }
    case 'lines':
      return call('lines', `${block.count}`);
    case 'figure':
      return figureCode(block);
    case 'together':
      return call('together', ...block.blocks.map(blockCode));
  }
}

function tableCode({ columns, rows, rowMm }: SheetTable): string {
  const heads = columns.map(({ head, upright }) => {
    if (upright) return call('upright', words(head));
    return call('table.cell', 'align: bottom', call('text', 'weight: "bold"', words(head)));
  });
  return call(
    'table',
    `columns: ${array(columns.map(widthCode))}`,
    `align: ${array(columns.map(alignCode))}`,
    call('table.header', ...heads),
    ...rows.flatMap((row) => row.map((cell) => `\n${cellCode(cell, rowMm)}`)),
  );
}

function alignCode({ align }: SheetColumn): string {
  return align === 'middle' ? 'center + horizon' : 'left + horizon';
}

function widthCode({ width }: SheetColumn): string {
  return 'mm' in width ? `${width.mm}mm` : `${width.share}fr`;
}

function cellCode(cell: SheetCell, rowMm = 0): string {
  if (cell === '' && rowMm > 0) return call('room', `${rowMm}mm`);
  if (typeof cell === 'string') return words(cell);
  if ('ticks' in cell) return call('ticks', array(cell.ticks.map(words)));
  const text = call('said', words(cell.text), ...lookCode(cell.look));
  const said =
    cell.turns === undefined ? text : call('turning', `${cell.turns === 'clockwise'}`, text);
  return cell.shaded ? call('table.cell', 'fill: luma(86%)', said) : said;
}

function lookCode(look: string | undefined): string[] {
  return look === undefined ? [] : [`look: ${quoted(look)}`];
}

function figureCode({ svg, aspect, alt, caption }: SheetFigure): string {
  return call('drawing', quoted(inInk(svg)), `${aspect}`, quoted(alt), words(caption));
}

// A printer has no variables and no colours, and the sheet's own face.
function inInk(svg: string): string {
  return svg
    .replaceAll(/font-family: [^;]+;/gu, "font-family: 'Source Sans 3';")
    .replaceAll(/var\(--load, [^)]+\)/gu, '#000')
    .replaceAll(/var\(--[a-z-]+, ([^)]+)\)/gu, '$1');
}
