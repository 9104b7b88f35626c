export * from './answer.ts';
export { flowAt } from './at.ts';
export { barredBy } from './carried.ts';
export { type Efficiency, type MeshEfficiency, USUAL_EFFICIENCY } from './efficiency.ts';
export { elementsOf } from './element.ts';
export type * from './fact.ts';
export { coast, drive, flow, rollback } from './flow.ts';
export { beforeFinal, coasting, underPower, vehicleOf } from './vehicle.ts';
export {
  type BodyAccount,
  type Entry,
  type Ledger,
  ledgerOf,
  type MeshAccount,
  type Pushes,
  pushesOf,
} from './ledger.ts';
export { observe, poseOf } from './observed.ts';
export { freeFacts, labelOf, pathFacts } from './reasons.ts';
export { ratioOf, stateOf } from './working.ts';
export { isSpan, type Quantity, type Span } from '../reckon/index.ts';
export type { Course } from './vehicle.ts';
