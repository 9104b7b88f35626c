export * from './answer.ts';
export { type Carried, carriedBy, stateOf } from './carried.ts';
export { type MeshEfficiency, USUAL_EFFICIENCY } from './efficiency.ts';
export type * from './fact.ts';
export { freeFacts, labelOf, pathFacts } from './facts.ts';
export { coast, drive, flow, flowAt, rollback } from './flow.ts';
export {
  type BodyAccount,
  type LedgerEntry,
  type Ledger,
  ledgerOf,
  type MeshAccount,
  type Pushes,
  pushesOf,
} from './ledger.ts';
export { beforeFinal, type Course, coasting, underPower, vehicleOf } from './vehicle.ts';
export { deviceWork, ratioOf } from './work.ts';
export { isSpan, type Quantity, type Span } from '../reckon/index.ts';
