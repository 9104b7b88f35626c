export { Describe } from './lazily.tsx';
export { type Doubt, doubtsOf } from './doubts.ts';
