export { FIRST_START, type StartStep } from './firststart.ts';
