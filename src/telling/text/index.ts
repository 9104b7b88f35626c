export { width, wrap } from './lines.ts';
export { type Ink, type Page, paragraph, PLAIN, section } from './page.ts';
export { type Cell, type Head, table, numberCell } from './table.ts';
