export type { HandAnswer, HandCheck } from './answer.ts';
export { hand } from './hand.ts';
