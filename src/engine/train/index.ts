export { appliedIn, gearsOf, trainInGear } from './gears.ts';
export { type Assembly, assemble } from './body.ts';
export type * from './gearset.ts';
export { meshMeasured, settersOf } from './gaps.ts';
export { planetTeeth, setGearing } from './gearing.ts';
export type { Mesh } from './mesh.ts';
export { companyOf, ownerOf } from './sharing.ts';
export type * from './capacity.ts';
export type * from './car.ts';
export * from './band.ts';
export * from './endplay.ts';
export { type OutputLoad, outputsOf, withLoads } from './outputs.ts';
export * from './pack.ts';
export * from './part.ts';
export {
  carriersOf,
  coversOf,
  coversPorts,
  halfBuilt,
  hidersOf,
  onePiece,
  ownName,
  piecesOf,
  reachAssumed,
  uncarried,
} from './teardown.ts';
export { MEASURED, MEASURED_KINDS, type MeasuredKind } from './measured.ts';
export * from './member.ts';
export { namesOf } from './names.ts';
export type * from './namesin.ts';
export { membersOf, partsOf } from './parts.ts';
export * from './train.ts';
export * from './preload.ts';
export * from './wear.ts';
export type { Body } from './body.ts';
export type { Gearing, Planet } from './mesh.ts';
