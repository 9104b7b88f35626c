export { doubtFigures } from './figures.ts';
export type { FigureDoubt, FigureWarning } from './warning.ts';
