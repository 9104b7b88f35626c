export { type Doubt, doubtsOf } from './doubts.ts';
