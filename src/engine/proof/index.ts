export { doubtOf, prove } from './prove.ts';
