export { type Doubt, doubtsOf } from './doubt.ts';
export { foreseen } from './foreseen.ts';
export {
  type Advice,
  awaits,
  expectedBits,
  type HeldBack,
  nextTest,
  type Proposal,
  proposalOf,
  type ProposalPart,
} from './next.ts';
export { type Account, accountsOf, type Observation, type Said } from './observation.ts';
export { pairsOf } from './pair.ts';
export { type Belief, posterior } from './posterior.ts';
export {
  type Bracket,
  type Evidence,
  rank,
  type Ranking,
  sidesOf,
  type Suspect,
} from './ranking.ts';
export { readSeen, saidText, type SeenReading, seenText } from './seenfile.ts';
export { speedSight } from './speed.ts';
