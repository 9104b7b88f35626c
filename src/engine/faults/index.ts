export { applyFault } from './apply.ts';
export { everyFault, faultText } from './every.ts';
export type * from './fault.ts';
export { faultNamed, type NamedFault } from './name.ts';
