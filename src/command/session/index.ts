export { jobAsked, noted, notesOf } from './jobsource.ts';
export { suggestion } from './names.ts';
export { patiently } from './patiently.ts';
export { printed, printedOn } from './printing.ts';
export { done, json, type Reply, type Session, type Options } from './session.ts';
export { trainOf, textOf, givenIn, hashOf, tellRenamed } from './source.ts';
export { lookingAt, speakingOf } from './stand.ts';
export { write, unwritable } from './written.ts';
