export { type LeverDiagram, leverDiagram } from './leverdiagram.ts';
export { mostOf, type LeverShown, speedAt, leverScene } from './leverscene.ts';
