export { entryMeant } from './entry.ts';
export { entryMade, jobMade, type ToldOrStruck } from './made.ts';
export { asIfTold, jobIn, type JobNote, type OpenJob, openJob } from './openjob.ts';
export { type HowFar, howFar } from './howfar.ts';
export { faultsOf, type Found, partsIn, type PartStanding } from './parts.ts';
export { entryTold } from './told.ts';
