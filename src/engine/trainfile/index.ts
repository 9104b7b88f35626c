export type { Place } from './place.ts';
export { nearest } from './near.ts';
export type * from './problem.ts';
export { readTrain, type Reading } from './reading.ts';
