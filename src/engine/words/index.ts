export type { Concept } from './concept.ts';
export { GLOSSARY, newWord, ourWord } from './glossary.ts';
export { wordMeant } from './meant.ts';
export { partKindSaid } from './partkind.ts';
