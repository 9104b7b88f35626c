export type { AllTold, Explanation } from './answering.ts';
export { beside } from './beside.ts';
