export { applyFault } from './apply.ts';
export type * from './fault.ts';
export { faultNamed, type NamedFault } from './name.ts';
