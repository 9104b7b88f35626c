export type { HandAnswer, HandCheck } from './answer.ts';
