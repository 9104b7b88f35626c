export { type StickDiagram, stickDiagram } from './stickdiagram.ts';
export { paintStickDiagram } from './paintstickdiagram.ts';
export type { Figure } from './figure.ts';
export type { Handle } from './handle.ts';
export type { LineBranch, Line, Piece } from './line.ts';
