export { type Assembly, assemble, type Body } from './body.ts';
export type * from './gearset.ts';
export type { GeometryFinding, SpacingRule } from './fit.ts';
export { geometryOf } from './geometry.ts';
export { planetTeeth, setGearing } from './gearing.ts';
export type { Gearing, Mesh, Planet } from './mesh.ts';
export { companyOf, ownerOf } from './sharing.ts';
export {
  carriersOf,
  coversOf,
  halfBuilt,
  onePiece,
  ownName,
  type Part,
  piecesOf,
} from './teardown.ts';
export * from './train.ts';
