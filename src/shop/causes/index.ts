export { type Failure, failuresOf, type Root } from './failure.ts';
export { type Finding, findingsIn, type Sign, SIGNS_OF_THINGS, SIGNS_OF_UNITS } from './finding.ts';
