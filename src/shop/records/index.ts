export { linesBeyond, partsOf, textOfParts } from './copies.ts';
export { KINDS, readEntry } from './entry.ts';
export {
  foldJob,
  type FoldedEntry,
  type FoldedJob,
  signerBefore,
  sinceRebuilt,
  standing,
} from './fold.ts';
export type { Job, JobEntry, Told } from './job.ts';
export { type JobReading, readJob } from './jobfile.ts';
export { hashOf } from './hash.ts';
export { flowText } from './line.ts';
export { fnv1a } from './id.ts';
export { limitMisfit, type Replaced, type WithLimits, withLimitsOf } from './limits.ts';
export { momentText } from './moment.ts';
export { type JobReadings, measuredNames, readingProblems, readingsIn } from './readings.ts';
export { seenIn, seenProblems } from './seen.ts';
export { entryText, newJobText } from './writing.ts';
export type { EntryDraft } from './writing.ts';
export { shelfMisfit, withShelvesOf } from './shelves.ts';
