export { isCalm } from './calm.ts';
export { language, spoken, spokenOf, voiceNow } from './spoken.ts';
export { recalled, remember } from './recalled.ts';
export { seenFrom, stand } from './stand.ts';
