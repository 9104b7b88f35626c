export { type Edited, put, type Refusal, remove, rename, type Renaming } from './edit.ts';
export { nearest } from './near.ts';
export type { Place } from './place.ts';
export type * from './problem.ts';
export { readTrain, type Reading } from './reading.ts';
export { ourWord } from './synonym.ts';
export { trainText, type Value } from './write.ts';
