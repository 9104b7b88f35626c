export type { HandAnswer, HandCheck } from './answer.ts';
export { handChecks, turns } from './candidates.ts';
export { hand } from './hand.ts';
export { pull, type Pull, pulledTo, type Pulling, type PullWay, type Stop } from './pull.ts';
