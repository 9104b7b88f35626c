export { type Assembly, assemble, type Body } from './body.ts';
export type * from './gearset.ts';
export { geometryOf, type GeometryFinding, type SpacingRule } from './geometry.ts';
export { companyOf, type Gearing, type Mesh, ownerOf, type Planet, planetTeeth, setGearing } from './mesh.ts';
export * from './train.ts';
