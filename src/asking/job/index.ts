export { jobIn, type JobNote, type OpenJob, openJob } from './openjob.ts';
