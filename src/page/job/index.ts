export { foldedOf, type Held, linesOf, pendingIds, textOf } from './held.ts';
export { AtJob, Begin, JobBar } from './jobbar.tsx';
export { JobDesk, jobsOf } from './jobdesk.ts';
export type { FileWord, Remarks } from './jobfiles.ts';
export { TakePhotograph } from './takephotograph.tsx';
export { idleKnown, keeping, knowIdle } from './keeping.ts';
export { KeptHere } from './kepthere.tsx';
