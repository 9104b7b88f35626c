export {
  type LeverDiagram,
  leverDiagram,
  type LeverDevice,
  type DiagramNode,
} from './leverdiagram.ts';
export { mostOf, type LeverShown, speedAt, leverScene } from './leverscene.ts';
export type { AxisName } from './axisnames.ts';
