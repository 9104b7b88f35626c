export { newWord, ourWord } from './glossary.ts';
