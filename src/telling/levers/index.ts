export { type LeverDiagram, leverDiagram } from './leverdiagram.ts';
export { mostOf, type LeverShown, speedAt, leverScene } from './leverscene.ts';
export type { AxisName } from './axisnames.ts';
export type { LeverDevice } from './leverdiagram.ts';
export type { LeverNode } from './leverdiagram.ts';
