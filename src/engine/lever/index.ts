export { compoundLevers } from './compound.ts';
export { type Lever, type LeverNode, leversOf } from './lever.ts';
