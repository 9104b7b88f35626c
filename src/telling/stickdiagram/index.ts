export { type StickDiagram, stickDiagram } from './stickdiagram.ts';
export { paintStickDiagram } from './paintstickdiagram.ts';
