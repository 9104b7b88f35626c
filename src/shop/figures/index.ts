export { doubtFigures } from './figures.ts';
export type { FigureWarning } from './warning.ts';
export type { CountedIn } from './warning.ts';
export type { FigureDoubt } from './warning.ts';
