export { lookAtFigures } from './figures.ts';
export type { FigureWarning } from './warning.ts';
export type { CountedIn } from './warning.ts';
export type { FigureOddity } from './warning.ts';
