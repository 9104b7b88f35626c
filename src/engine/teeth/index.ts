export type { GeometryFinding, SpacingRule } from './fit.ts';
export { geometryOf } from './geometry.ts';
