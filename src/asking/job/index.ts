export { entryMeant } from './entry.ts';
export { mustFit } from './fits.ts';
export { jobIn, type JobNote, type OpenJob, openJob } from './openjob.ts';
export { entryTold } from './told.ts';
