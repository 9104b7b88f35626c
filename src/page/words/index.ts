export { isCalm } from './calm.ts';
export { language, spoken } from './spoken.ts';
export { recalled, remember } from './recalled.ts';
export { ends, seenFrom, stand } from './stand.ts';
