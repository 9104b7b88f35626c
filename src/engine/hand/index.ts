export type { HandAnswer, HandCheck } from './answer.ts';
export { handChecks, turns } from './candidates.ts';
export { hand } from './hand.ts';
