export { Enquiry } from './enquiry.ts';
export { LooseSheet } from './sheet.ts';
export { troubleText } from './trouble.ts';
export { seenEntries, standingOf } from './told.ts';
