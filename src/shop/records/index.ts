export { KINDS, readEntry } from './entry.ts';
export { foldJob, type FoldedEntry, type FoldedJob, standing } from './fold.ts';
export type { Job, JobEntry, Told } from './job.ts';
export { type JobReading, readJob } from './jobfile.ts';
export { flowText } from './line.ts';
export { limitMisfit, type Replaced, withLimitsOf } from './limits.ts';
export { type JobReadings, measuredNames, readingProblems, readingsIn } from './readings.ts';
export { seenIn } from './seen.ts';
export { entryText, newJobText } from './writing.ts';
