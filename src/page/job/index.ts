export { hashed } from './hashed.ts';
export { foldedOf, type Held, linesOf, pendingIds, textOf } from './held.ts';
export { AtJob, Begin, JobBar } from './jobbar.tsx';
export { JobDesk, jobsOf } from './jobdesk.ts';
export type { FileWord } from './jobfiles.ts';
export { idleKnown, keeping, knowIdle, nearlyFull } from './keeping.ts';
