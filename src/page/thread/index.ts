export type { AllTold } from './answering.ts';
export { beside } from './beside.ts';
