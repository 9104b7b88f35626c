export type { Concept } from './concept.ts';
export { GLOSSARY, newWord, ourWord } from './glossary.ts';
export { type Language, LANGUAGES } from './language.ts';
export { wordMeant } from './meant.ts';
export { nameIn, otherNames } from './naming.ts';
export { inFileNames } from './ownwords.ts';
export { partKindSaid } from './partkind.ts';
