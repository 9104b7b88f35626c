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
export { type Outcome, type Sight, sightOf } from './outcome.ts';
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
export { readSeen, type SeenReading, seenText } from './seenfile.ts';
export { speedSight } from './speed.ts';
export { baseText, shiftText, type Test, testText } from './test.ts';
export type { Grip } from './way.ts';
export type { Part } from './next.ts';
export type { Said } from './observation.ts';
export type { Prediction } from './prediction.ts';
export type { Reason } from './tables.ts';
export type { EngineSpeed } from './test.ts';
export type { Gear } from './test.ts';
export type { Heat } from './test.ts';
export type { Load } from './test.ts';
export type { On } from './test.ts';
export type { UnitTest } from './test.ts';
export type { Way } from './way.ts';
export type { Weakness } from './way.ts';
