export { type Cause } from './cause.ts';
export { type Doubt, doubtsOf } from './doubt.ts';
export { foreseen } from './foreseen.ts';
export { inquire, type Inquiry } from './inquiry.ts';
export {
  type Advice,
  awaits,
  expectedBits,
  type HeldBack,
  nextTest,
  type Proposal,
  proposalOf,
} from './next.ts';
export { type Account, accountsOf, type Observation } from './observation.ts';
export { type TestOutcome, type Sight, sightOf } from './outcome.ts';
export { pairsOf } from './pair.ts';
export { type Belief, posterior } from './posterior.ts';
export {
  type Bracket,
  type Evidence,
  rank,
  type Ranking,
  sideOf,
  type Suspect,
} from './ranking.ts';
export { sightMeant } from './saying.ts';
export { readSeen, saidText, type SeenReading, seenText } from './seenfile.ts';
export { speedSight } from './speed.ts';
export { baseText, shiftText, type Test, testText } from './test.ts';
export type { DeviceGrip } from './manner.ts';
export type { ProposalPart } from './next.ts';
export type { Said } from './observation.ts';
export type { Prediction } from './prediction.ts';
export type { Reason } from './tables.ts';
export type { EngineSpeed } from './test.ts';
export type { TestGear } from './test.ts';
export type { Heat } from './test.ts';
export type { TestLoad } from './test.ts';
export type { On } from './test.ts';
export type { UnitTest } from './test.ts';
export type { Manner } from './manner.ts';
export type { Weakness } from './manner.ts';
