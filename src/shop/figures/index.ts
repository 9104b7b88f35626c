export { doubtFigures } from './figures.ts';
export type { FigureWarning } from './warning.ts';
