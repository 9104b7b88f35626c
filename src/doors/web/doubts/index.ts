export { doubtsOf } from './doubts.ts';
